// Ways to make a quilt's units: which choices of them are worth it.
export type { Front, FrontEnd } from './found.ts';
export { type FrontTask, searchFront, usualFront } from './front.ts';
export { type UnitGroup, unitGroups, type WayOption } from './groups.ts';
export type { Choice } from './likely.ts';
export { methodsFor } from './methods-for.ts';
export { mostTold, toldPoints } from './told.ts';
export { type FrontPoint, figuresOf } from './weighing.ts';
