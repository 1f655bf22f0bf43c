export { amountText, lengthText, numberText, sizeText } from './length-text.ts';
export { noteText } from './note-text.ts';
export { type ProblemText, problemText } from './problem-text.ts';
