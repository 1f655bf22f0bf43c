// Asking: what a document answers, worked out by the one road from design to plan. Pure; only a worker and tests come in by this
// door as more than types.
export type { ValuesNear } from '#craft';
export type * from './answer.ts';
export { askBlock, askQuilt, askText } from './asking.ts';
export { askCollection, type BlockFamily, type CollectedBlock, type PatchShape } from './collected.ts';
export { askDrawn } from './drawn.ts';
export { askMeasures, type Measured, type MeasuredBlock } from './measured.ts';
