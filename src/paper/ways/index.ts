export { listedPoints, toWaysFile, waysText } from './ways-file.ts';
export { closedTexts, differenceTexts, groupText, hoursText, optionText, trueText, wholeText } from './words.ts';
