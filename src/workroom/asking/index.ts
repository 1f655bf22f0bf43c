// Asking: what a document answers, worked out by the one road from design to plan. Pure; only a worker and tests come in by this
// door as more than types.
export type { ValuesNear } from '#craft';
export type * from './answer.ts';
export { answerFor, askBlock, askQuilt, askText, foundIn, planBest, planFirst } from './asking.ts';
export { askCollection, type BlockFamily, type CollectedBlock, type PatchShape } from './collected.ts';
export { askDrawn } from './drawn.ts';
export {
  askFinishWays,
  type ClothMore,
  type FinishPrices,
  type FinishWay,
  type WayPrice,
} from './finish-ways.ts';
export { type Look, type LookName, lookAt, type Seen } from './looks.ts';
export { askMeasures, type Measured, type MeasuredBlock } from './measured.ts';
export type { BatchLine, ChainStepSeen, ChainsSeen, MemberLine, RoundLine } from './seen-chains.ts';
export type { CutLead, CutStep, CutStepsSeen, CutStrip } from './seen-cut-steps.ts';
export type {
  Box,
  ClothLine,
  ClothUnrolled,
  CuttingLook,
  CuttingSeen,
  Panel,
  PanelEdge,
  PanelPiece,
  PieceSeen,
} from './seen-cutting.ts';
export type { FinishFigures, FinishPart, FinishSeen, FinishTopic } from './seen-finish.ts';
export type { PressingSeen } from './seen-pressing.ts';
export type { EntryLine, EntryPart, EntrySeen, StepLine, StepSeen, StepShown } from './seen-sewing.ts';
export type { SizesSeen, SizesTold, WrittenSize } from './seen-sizes.ts';
export type { VersionCloth, VersionSeen } from './seen-version.ts';
export { seeWays, type WaysGroup, type WaysPoint, type WaysSeen } from './seen-ways.ts';
export { standIn } from './stand-in.ts';
export { type Variant, type Weighed, type Weighing, weigh } from './weighed.ts';
