// The store: quilts kept in the browser, and the desk on which one of them is edited.
export { type Desk, type DeskState, type Keeping, openDesk, titleOf } from './desk.ts';
export { openStore } from './open-store.ts';
export type { KeptQuilt, QuiltLine, Store } from './store.ts';
