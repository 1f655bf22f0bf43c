// How do the directions fill a strip of a layout?
import type { Strip } from '#craft/cutting';
import type { CutPart, PatternCut } from './directions.ts';

/** Of strips of this part alone. */
export const patternsBy = ({ heights }: CutPart): ((strip: Strip) => PatternCut) => {
  const keyOf = ({ height, parts }: Strip): string => JSON.stringify([height, parts]);
  const known = new Map(heights.flatMap(({ patterns }) => patterns.map((pattern) => [keyOf(pattern.strip), pattern])));
  return (strip) => {
    const pattern = known.get(keyOf(strip));
    if (pattern === undefined) throw new Error('the directions lack a strip of their cloth');
    return pattern;
  };
};
