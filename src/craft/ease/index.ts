export { inCuttingOrder } from './cutting-order.ts';
export { type EaseTask, eased, easeLadder, type Rung } from './eased.ts';
export { compareEase, compareEffort, type Effort, effortOf, partsToNarrow } from './effort.ts';
