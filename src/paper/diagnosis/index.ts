export { toDiagnosisFile, toSeamTestFile } from './file.ts';
export { type Advice, adviceOn, rescueTexts } from './sentences.ts';
export { diagnosisText, likelyRows, seamTestText } from './text.ts';
