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
export { givenBy, type Offcut, type PartRun, type StripCut } from './strip-cuts.ts';
