// Setting: drafted blocks placed in a top, every patch in its place.
export { pointInTop } from './place.ts';
export { setStraight, sizeAsTurned } from './straight.ts';
export type { PlacedBlock, PlacedStrip, Rect, SetTop, StripRole, TopRow } from './top.ts';
export { touchingPairs } from './touching.ts';
