// Advice: the fewest lines to add to a drawing so that straight seams alone join it.
export { type AddedLine, type Advice, adviceFor } from './advice.ts';
