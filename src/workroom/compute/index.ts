// Compute: what follows from a document, worked out beside the page.
export type * from '#workroom/asking';
export { openPlanner, type Planner, type PlannerState } from './planner.ts';
