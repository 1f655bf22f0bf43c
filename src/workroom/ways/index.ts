// Ways to make: which choices of them are worth it, seen beside each other before one is taken.
export { waysPlace } from './ways-place.ts';
export { WaysView } from './ways-view.tsx';
