export type { Face, Line, Shown } from './face.ts';
export { madeWork } from './labour.ts';
export { outlinesOf } from './outlines.ts';
export { type Joined, joinsOf, layingsOf, type Stage, setsOf, stageFor } from './stages.ts';
export { type Trueness, truenessOf } from './trueness.ts';
export type { Laid, Unit } from './unit.ts';
export { unitKey, unitsIn } from './units.ts';
export { rowsIn, type StripRoom, type Way, type WayRefusal, wayFor, wholeIn } from './ways.ts';
