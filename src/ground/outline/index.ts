// The outlines of patches: their sides, what lies on them, and what is wrong with one. Plane geometry that knows a slack.
export { type OutlineFault, outlineFault } from './fault.ts';
export { clockwise, isNear, isOnOutline, isOnSide, type Side, sidesOf, splitAt } from './near.ts';
