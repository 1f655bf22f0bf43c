export { toDiagnosisFile, toSeamTestFile } from './file.ts';
export { blockPartNames, type PartNames, topPartNames } from './part-names.ts';
export { type Advice, adviceOn, rescueTexts } from './sentences.ts';
export { diagnosisText, likelyRows, seamTestText } from './text.ts';
