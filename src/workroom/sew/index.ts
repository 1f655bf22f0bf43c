// Sew: the steps of each block and of the top, one after another.
export { SewView } from './sew-view.tsx';
