// The store: quilts kept in the browser, and the desk on which one of them is edited.
export { type Desk, type DeskState, type Keeping, openDesk, titleOf } from './desk.ts';
export { openStore } from './open-store.ts';
export { openPoints, type PointBook, type PointsState } from './point-book.ts';
export type { KeptQuilt, PointLine, QuiltLine, RestorePoint, Store } from './store.ts';
