export {
  type Front,
  type FrontPoint,
  type FrontTask,
  figuresOf,
  methodsFor,
  searchFront,
  usualFrontSteps,
} from './front.ts';
export { type UnitGroup, unitGroups, type WayOption } from './groups.ts';
export type { Choice } from './likely.ts';
export { toldPoints } from './told.ts';
