// Advice: the fewest lines to add to a drawing so that straight seams alone join it; with curves, those and curves in one run.
export { type AddedLine, type Advice, adviceFor } from './advice.ts';
export { adviceForCurves, type CurvedAdvice } from './curved.ts';
