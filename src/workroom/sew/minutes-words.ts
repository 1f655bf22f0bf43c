// What the table of minutes knows, in the words of the trade.
import type { MinutesKey } from './minutes-edits.ts';

interface MinutesPart {
  readonly title: string;
  readonly lines: readonly (readonly [key: MinutesKey, words: string])[];
}

export const minuteParts: readonly MinutesPart[] = [
  {
    title: 'Cutting',
    lines: [
      ['fold', 'Fold and square a strip'],
      ['cut', 'Cut one piece'],
    ],
  },
  {
    title: 'Sewing',
    lines: [
      ['lay', 'Lay two parts together'],
      ['chain', 'Begin a chain and cut it apart'],
      ['seam', 'Put one seam under the foot'],
      ['inch', 'Sew an inch of seam'],
      ['press', 'Press one seam'],
      ['match', 'Match one meeting of seams'],
      ['curve', 'Pin and ease a curved seam'],
    ],
  },
  {
    title: 'Units made together',
    lines: [
      ['draw', 'Draw one line'],
      ['part', 'Cut one unit apart'],
      ['trim', 'Trim one unit to size'],
    ],
  },
  {
    title: 'Finishing',
    lines: [
      ['baste', 'Pin a square foot of three layers'],
      ['quilt', 'Quilt an inch by machine'],
      ['hand', 'Sew an inch by hand'],
    ],
  },
  {
    title: 'Lessons',
    lines: [
      ['begin', 'Begin a lesson'],
      ['show', 'Show one step'],
      ['showInch', 'Show an inch of its seam'],
    ],
  },
];
