// The top of a document, by the way it is set: straight, on point or in sections, with borders round it.

import { largestTop, limits } from '#craft/limits';
import { compare } from '#ground/exact';
import type { WrittenBlock, WrittenTop } from './document.ts';
import type { NamedFabrics } from './named-fabrics.ts';
import type { BlockDesign, TopDesign } from './quilt.ts';
import { readBorders } from './read-borders.ts';
import { colouringsById, type TopReading } from './read-cells.ts';
import { readOnPoint } from './read-on-point.ts';
import { readSection } from './read-sections.ts';
import { readStraight } from './read-straight.ts';
import type { Reading } from './reading.ts';
import { topExtent } from './top-extent.ts';

interface Around {
  readonly reading: Reading;
  readonly fabrics: NamedFabrics;
  /** As written: ids are known even where a shape could not be read. */
  readonly written: readonly WrittenBlock[];
  readonly blocks: readonly BlockDesign[];
}

/** Null where it could not be read; that is in the report. */
export const readTop = (written: WrittenTop, around: Around): TopDesign | null => {
  const at: TopReading = { ...around, colourings: colouringsById(around.written) };
  checkKeys(written, at);
  const borders = readBorders(written.borders ?? [], at);
  const middle = readMiddle(written, at);
  if (middle === null) return null;
  const top: TopDesign = { ...middle, borders };
  checkExtent(top, at);
  return top;
};

type Middle = TopDesign extends infer T ? (T extends TopDesign ? Omit<T, 'borders'> : never) : never;

const readMiddle = (written: WrittenTop, at: TopReading): Middle | null => {
  switch (written.set ?? 'straight') {
    case 'straight':
      return readStraight(written, at);
    case 'on-point':
      return readOnPoint(written, at);
    case 'sections': {
      if (written.sections === undefined) {
        at.reading.report({ code: 'design/missing-key', path: '/top/sections', key: 'sections' });
        return null;
      }
      const sections = readSection(written.sections, { ...at, path: '/top/sections' });
      return sections && { set: 'sections', sections };
    }
  }
};

const keysOf = {
  straight: ['rows', 'arrangement', 'sashing'],
  'on-point': ['rows', 'between', 'sashing', 'settingFabric', 'float'],
  sections: ['sections'],
} as const;

/** A key that another way of setting reads would be passed over. */
const checkKeys = (written: WrittenTop, { reading }: TopReading): void => {
  const set = written.set ?? 'straight';
  const own: readonly string[] = keysOf[set];
  for (const key of new Set(Object.values(keysOf).flat())) {
    if (written[key] === undefined || own.includes(key)) continue;
    reading.report({ code: 'design/not-for-set', path: `/top/${key}`, key, set });
  }
};

const checkExtent = (top: TopDesign, { reading, blocks }: TopReading): void => {
  const { report, unit } = reading;
  const { size, pieces } = topExtent(top, blocks);
  if (pieces > limits.pieces) {
    const path = top.set === 'sections' ? '/top/sections' : '/top/rows';
    report({ code: 'design/too-many', path, what: 'pieces', found: pieces, most: limits.pieces });
  }
  const most = largestTop[unit];
  if (size.some((side) => compare(side, most) > 0)) {
    report({ code: 'design/top-too-large', path: '/top', found: size, most, unit });
  }
};
