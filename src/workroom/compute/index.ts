// Compute: what follows from a document, worked out beside the page.
export type * from '#workroom/asking';
export type { PhotoCrop, PhotoFault, TakenPhoto } from './photo.ts';
export { openPlanner, type Planner, type PlannerState } from './planner.ts';
export { withoutPhotos } from './without-photos.ts';
