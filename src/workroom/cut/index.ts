// Cut: what is cut from each cloth, and how.
export { CutView } from './cut-view.tsx';
