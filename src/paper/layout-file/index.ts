export {
  type LaidInstance,
  type LayoutFile,
  type LayoutReport,
  layoutFileText,
  layoutSummary,
  type SheetLaid,
  type StockEntry,
  toLayoutFile,
} from './layout-file.ts';
export type { CutNode, CutPart } from './nested-cuts.ts';
