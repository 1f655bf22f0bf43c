// Draft: the blocks of a quilt.
export { DraftView } from './draft-view.tsx';
