// Minutes: how long cutting, sewing and showing take, by one table that a shop can change.
export { matchesOn, type SewnSeam, seamWork } from './seam-work.ts';
export { type MinutesTable, minutesWith, usualMinutes } from './table.ts';
export { allWork, minutesOf, partOf, type Work } from './work.ts';
