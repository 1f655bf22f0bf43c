export { listedPoints, toWaysFile, waysText } from './ways-file.ts';
export {
  closedTexts,
  clothHeading,
  differenceTexts,
  groupText,
  hoursText,
  optionText,
  trueText,
  wholeText,
} from './words.ts';
