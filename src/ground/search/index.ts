export { drained } from './drained.ts';
export { type LinearProgram, type LpStatus, linearProgramFor } from './lp.ts';
export { type RankedItem, type RankedKnapsack, rankedKnapsackFor } from './ranked-knapsack.ts';
