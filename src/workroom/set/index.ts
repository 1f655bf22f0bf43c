// Set: where every block lies.
export { SetView } from './set-view.tsx';
