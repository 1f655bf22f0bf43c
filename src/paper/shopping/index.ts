export { toLargestFile } from './largest-file.ts';
export { largestText, rowsText } from './largest-text.ts';
