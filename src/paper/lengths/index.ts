export { figureOnPaper, lengthOnPaper, sizeOnPaper, withTrueFractions } from './fractions.ts';
