export type { Face, Line, Shown } from './face.ts';
export { madeMinutes } from './labour.ts';
export { outlinesOf } from './outlines.ts';
export { type Joined, joinsOf, type Stage, stageFor } from './stages.ts';
export { deviationOf } from './trueness.ts';
export { type Laid, type Unit, unitKey, unitsIn } from './units.ts';
export { type Way, type WayRefusal, wayFor, wholeIn } from './ways.ts';
