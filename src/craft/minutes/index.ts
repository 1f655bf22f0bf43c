// Minutes: how long cutting and sewing take, by a small table that a shop can change.
export { cuttingMinutes } from './cutting-minutes.ts';
export { matchesOn, type SewnSeam, seamMinutes } from './seam-minutes.ts';
export { type MinutesTable, minutesWith } from './table.ts';
