// The top of a plan: its own pieces, its borders, and the order of joining.
export { borderLies, chooseBorderLie, isBorderLie, type LieLayout } from './border-lie.ts';
export { topMarkNotes } from './top-marks.ts';
export { type BorderLie, topPlanner } from './top-plan.ts';
