// The outlines of patches: their sides, what lies on them, which together are convex, and what is wrong with one. Plane geometry that knows a slack.
export { convexOutlines } from './convexity.ts';
export { type OutlineFault, outlineFault } from './fault.ts';
export { clockwise, isNear, isOnOutline, isOnSide, type Side, sidesOf, splitAt } from './near.ts';
