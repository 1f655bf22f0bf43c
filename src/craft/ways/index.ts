export type { Face, Line, Shown } from './face.ts';
export { outlinesOf } from './outlines.ts';
export { type Stage, stageFor } from './stages.ts';
export { type Laid, type Unit, unitKey, unitsIn } from './units.ts';
export { type Way, type WayRefusal, wayFor, wholeIn } from './ways.ts';
