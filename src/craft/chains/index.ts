// Chains: the same unit sewn for all blocks at once, and the units to sew before a demonstration.
export { type ChainBatch, type ChainMember, type ChainRound, chainsOf } from './chains.ts';
export { type Sample, sampleCloths, samplePieces, samplesFor } from './samples.ts';
