// Accuracy: how near the sewn block comes to its drawing.

export { type BlockDrift, blockDrift } from './drift.ts';
export { type BlockSize, type RulerSizes, rulerSizes } from './ruler-sizes.ts';
export { scaled } from './scaled.ts';
