export { toDiagnosisFile, toSeamTestFile } from './file.ts';
export { type Advice, adviceOn, rescueTexts } from './sentences.ts';
export { diagnosisText, likelyRows, measuredRows, seamTestText } from './text.ts';
