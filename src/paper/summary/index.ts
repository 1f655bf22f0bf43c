export { columns, heading, wrapped } from './lines.ts';
export { summaryText } from './summary.ts';
