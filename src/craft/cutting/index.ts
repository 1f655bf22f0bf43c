export { amountToBuy, type Purchase, type PurchaseTask } from './buy.ts';
export { type CheckTask, checkLayout, type LayoutFault } from './check-layout.ts';
export type * from './cloth.ts';
export { type CutRule, cutFor, halfSquareFor, rectangleCut } from './cut.ts';
export { defaultBudget, type LayoutBudget, type LayoutTask, planLayout } from './layout.ts';
export { type ClothLedger, type ClothLine, demandsOf, ledgerOf, type Wanted } from './ledger.ts';
export { joinedOnCloth, joinedStrip } from './lengths.ts';
export type { CuttingProblem } from './problems.ts';
export { planSheets, type SheetTask } from './sheets.ts';
export {
  costOf,
  type IntegerProgram,
  type IntegerRow,
  type IntegerSolver,
  isSolution,
  type SolverAnswer,
  type SolverLimits,
} from './solver.ts';
export { type SquareTask, type Standing, squaresFor } from './squares.ts';
