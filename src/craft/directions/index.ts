export {
  type ClothDirections,
  type CutEffort,
  type CutPart,
  type DirectionsTask,
  directionsFor,
  type HeightCut,
  type PatternCut,
} from './directions.ts';
export type { Remnant } from './remnants.ts';
export type { Offcut, PartRun, StripCut } from './strip-cuts.ts';
