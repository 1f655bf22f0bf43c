export { toDiagnosisFile, toSeamTestFile } from './file.ts';
export { type Advice, adviceOn, rescueTexts, seamTestAdvice } from './sentences.ts';
export { diagnosisText, seamTestText } from './text.ts';
