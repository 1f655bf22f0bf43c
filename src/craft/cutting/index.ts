export type { StripWay } from './angled.ts';
export { type ChosenWay, chooseWays, stripsFor } from './angled-choice.ts';
export { straightOnEdge } from './angled-grain.ts';
export { type Row, rowOutlines } from './angled-row.ts';
export { amountToBuy, lengthHeld, neededFor, type Purchase, type PurchaseTask, shopStepFor, unitsIn } from './buy.ts';
export { type CheckTask, checkLayout, type LayoutFault } from './check-layout.ts';
export type * from './cloth.ts';
export { cutEdge, tightestHollow } from './curved.ts';
export { cutFor, halfSquareFor, patchCut, quarterSquareFor, rectangleCut } from './cut.ts';
export type { Easing } from './eased-layout.ts';
export { type EndsTask, type LaidWithEnds, planWithEnds } from './ends.ts';
export { type FoldedWay, type FoldTask, foldedWays } from './fold.ts';
export { type ScaledJob, scaledJobFor } from './kinds.ts';
export { defaultBudget, type LayoutBudget, type LayoutTask, layoutBySteps, planLayout } from './layout.ts';
export { type ClothLedger, type ClothLine, demandsOf, ledgerOf, twinsOf, type Wanted } from './ledger.ts';
export { joinedAnyWay, joinedOnCloth, joinedStrip, joiningRun } from './lengths.ts';
export { type MotifTask, planOnMotifs } from './motif-layout.ts';
export { type OpenLayout, openLayout } from './open-layout.ts';
export type { CuttingProblem } from './problems.ts';
export {
  type Allowances,
  allowancesFor,
  asTaken,
  type ClothPurchase,
  type PurchaseOf,
  purchaseFor,
} from './purchase.ts';
export type { CutRule } from './rule.ts';
export { planSheets, type SheetTask, sheetsBySteps } from './sheets.ts';
export { onSmallerSheets } from './smaller-sheets.ts';
export { type SquareTask, type Standing, squaresFor } from './squares.ts';
