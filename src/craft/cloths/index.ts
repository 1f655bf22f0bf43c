// The cloths of a plan: what is cut from each, how it is laid out and bought, and what the maker's wishes cost in cloth.
export { withStrips } from './angled-plan.ts';
export { withBetterCloth } from './better-cloth.ts';
export { endsNotes } from './cloth-ends.ts';
export { foldNotes } from './cloth-fold.ts';
export {
  type ClothSearch,
  type ClothWatch,
  clothBought,
  clothsBySteps,
  laidFor,
  planCloths,
  planCost,
} from './cloth-plan.ts';
export { type Natures, naturesOf } from './natures.ts';
export { nestedWell } from './nested-well.ts';
export { printCostNotes } from './print-cost.ts';
export { printSlantNotes } from './print-slant.ts';
export { leastLength, quickLength } from './quick-length.ts';
export { blockPieces, finishPieces, topPieces, type WantedPiece } from './wanted-pieces.ts';
