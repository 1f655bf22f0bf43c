export type { StripHeights } from './lies.ts';
export { searchThreeStages, type ThreeStages } from './search.ts';
