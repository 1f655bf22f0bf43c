// The blocks of a plan: their pieces, units and steps, and what is hard in them.
export { type BlockPlans, planBlocks, unitsAmong } from './block-plan.ts';
export { motifNotes } from './motif-notes.ts';
export { entryName, pieceEntries } from './pieced-entries.ts';
export { thinPieces } from './thin-pieces.ts';
export { tightCurves } from './tight-curves.ts';
export { entriesToPress } from './to-press.ts';
export { turnsAlike } from './turns-alike.ts';
export { toldCloths, wayOf } from './unit-ways.ts';
