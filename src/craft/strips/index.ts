export { attainableFrom, attainableUp, attainableWithin } from './attainable.ts';
export { lowerBoundFor } from './bound.ts';
export { gcdOf } from './divisor.ts';
export { type DualFeasible, dualFeasibleFor } from './dual-feasible.ts';
export type { Cutting, Job, Kind, ShopStep } from './job.ts';
export {
  type LevelChoice,
  type LevelRule,
  type Lie,
  levelChoicesFor,
  levelsFor,
  liesTurned,
  ownStripsFor,
} from './levels.ts';
export {
  alikeTogether,
  countsOf,
  heightOf,
  lengthOf,
  partsWith,
  patternKey,
  patternOf,
  type Run,
  renamedIn,
  type Stack,
  type StackUse,
  type StripPattern,
  type StripUse,
  stackKey,
  stackOf,
  widthOf,
} from './pattern.ts';
export type { BoundKind, StripSearch, StripsFound } from './search.ts';
export { isPurchaseOpen, lengthSoldBelow, stepsFor } from './shop.ts';
export {
  costOf,
  type IntegerProgram,
  type IntegerRow,
  type IntegerSolver,
  isSolution,
  type SolverAnswer,
  type SolverLimits,
  type SolverWork,
} from './solver.ts';
export { withoutSurplus } from './surplus.ts';
