// Draft: the blocks of a quilt.
export { blankBlock } from './block-edits.ts';
export { carriedFrom, quiltOf } from './carried.ts';
export { DraftView } from './draft-view.tsx';
