// The top of a plan: its own pieces, its borders, and the order of joining.
export { chooseBorderLie } from './border-lie.ts';
export { topMarkNotes } from './top-marks.ts';
export { topPlanner } from './top-plan.ts';
