export { summaryText } from './summary.ts';
