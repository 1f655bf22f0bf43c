export { toDiagnosisFile, toSeamTestFile } from './file.ts';
export { type Advice, adviceOn, rescueTexts, topInstead } from './sentences.ts';
export { diagnosisText, likelyRows, seamTestText } from './text.ts';
