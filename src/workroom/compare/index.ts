// Compare: versions of a quilt side by side, and restore points.
export { CompareView } from './compare-view.tsx';
