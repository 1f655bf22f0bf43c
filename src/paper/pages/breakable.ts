// Words too long for a column get places to break, so that no name a maker chooses runs over its edge.

/** Longer than any word of ours, and than most words that people write. */
const longWord = /\S{20,}/gu;
const everyFewSigns = /.{12}/gu;
const placeToBreak = '\u200b';

/** Every string in plain JSON values, with invisible places to break in its longest words. */
export const withBreaks = <T>(value: T): T => walked(value) as T;

/** Its name is a file's, and its words are heard. */
const isPicture = (part: object): boolean => 'alt' in part && 'widthPt' in part;

const walked = (part: unknown): unknown => {
  if (typeof part === 'string') {
    return part.replace(longWord, (word) => word.replace(everyFewSigns, (signs) => signs + placeToBreak));
  }
  if (Array.isArray(part)) return part.map(walked);
  if (part !== null && typeof part === 'object' && !isPicture(part)) {
    return Object.fromEntries(Object.entries(part).map(([key, inner]) => [key, walked(inner)]));
  }
  return part;
};
