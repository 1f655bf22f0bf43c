export type { Ruler } from './checked.ts';
export { checkLength, checkSize } from './checked.ts';
export { figureOnPaper, lengthOnPaper, sizeOnPaper, withTrueFractions } from './fractions.ts';
