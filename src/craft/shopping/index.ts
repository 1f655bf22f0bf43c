export { type Change, type ChangesTask, type PurchaseChange, purchaseChanges } from './changes.ts';
export { strongestOf } from './strongest.ts';
