export {
  type ClothDirections,
  type CutPart,
  type DirectionsTask,
  directionsFor,
  type HeightCut,
  type PatternCut,
} from './directions.ts';
export { patternsBy } from './patterns-by.ts';
export type { Remnant } from './remnants.ts';
export type { Offcut, PartRun, RightEnd, StripCut } from './strip-cuts.ts';
export { type CutEffort, workOf } from './work.ts';
