export { type AtHand, type Cupboard, type CupboardProblem, readCupboard, type WrittenAmount } from './at-hand.ts';
export { type Change, type ChangesTask, type PurchaseChange, purchaseChanges } from './changes.ts';
export { type ClothFit, clothFits, isEnough } from './fit.ts';
export { type LargestFound, type LargestTask, type SizedQuilt, searchLargest } from './largest.ts';
export type { Continuation, Counts } from './other-sizes.ts';
export { strongestOf } from './strongest.ts';
