// Accuracy: how near the sewn block, and the top of blocks, comes to its drawing.

export { type Care, type Habit, trueHabit, unknownHabit, usualCare } from './care.ts';
export { type BlockDrift, blockDrift } from './drift.ts';
export { partsOf } from './parts.ts';
export { type BlockSize, type RulerSizes, rulerSizes } from './ruler-sizes.ts';
export { scaled } from './scaled.ts';
export type { SewnBlock, SewnStep } from './sewn-block.ts';
export { anywhere, atLimits, type Sewer, sewByChance, simulate } from './simulated.ts';
export {
  type CutTerm,
  type SeamTerm,
  type SewnIn,
  type SizeModel,
  seamsCrossed,
  sensitivity,
  sideAlong,
  sizeModels,
  type Way,
} from './size-model.ts';
export { type Crossed, sizePath } from './size-path.ts';
export { type Spread, spreadOf } from './spread.ts';
export { bestTrimming, type Trimming } from './trimming.ts';
