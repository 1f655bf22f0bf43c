export { inCuttingOrder } from './cutting-order.ts';
export { type EaseTask, eased, easeLadder, type Rung } from './eased.ts';
export { compareEase, compareEffort, cutsIn, type Effort, effortOf, type StripCuts } from './effort.ts';
