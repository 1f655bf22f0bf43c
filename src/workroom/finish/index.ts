// Finish: borders, backing, batting, binding, sleeve.
export { FinishView } from './finish-view.tsx';
