// Draft: the blocks of a quilt.
export { carriedFrom, quiltOf } from './carried.ts';
export { DraftView } from './draft-view.tsx';
