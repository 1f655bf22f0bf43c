export { changeText } from './change-text.ts';
export { chapterTitles } from './chapter-titles.ts';
export { readingProblemText, seamTestProblemText } from './diagnosis-text.ts';
export {
  type DirectionText,
  directionTexts,
  easierTexts,
  effortText,
  type Figures,
  remnantsText,
  type SheetName,
  stripsText,
  type Writing,
} from './directions-text.ts';
export { inWords } from './in-words.ts';
export { instanceText } from './instance-text.ts';
export { amountText, lengthText, nearSizeText, nearText, numberText, sizeText } from './length-text.ts';
export { makersNames } from './makers-names.ts';
export { estimateText, longTimeText, timeParts } from './minutes-text.ts';
export { missingSignsText } from './missing-signs-text.ts';
export { capital, counted, instead } from './named.ts';
export { driftText, noteText, type OffMarks, offMarksText } from './note-text.ts';
export { type ProblemText, problemText } from './problem-text.ts';
export { plural, roleNouns } from './role-nouns.ts';
export { cupboardProblemText } from './shopping-text.ts';
export { reasonText, unitsText, unitText, wayText } from './ways-text.ts';
