// The chapters of a pattern at a glance: the first page of each, side by side.

import sharp from 'sharp';
import type { QuiltPlan } from '#craft';
import { type Chapter, handoutPages, lessonsOf, patternPages } from '#paper';
import { fewColours, rastered } from './rastered.ts';

const shown: readonly Chapter[] = [
  'cover',
  'quilt',
  'cloth',
  'cutting',
  'pieces',
  'blocks',
  'top',
  'finishing',
  'boards',
  'colouring',
  'labels',
  'glossary',
  'cautions',
  'run-sheet',
];

const columns = 5;
const gapPx = 14;

export const pageSheet = async (plan: QuiltPlan): Promise<Uint8Array> => {
  const [block = ''] = lessonsOf(plan);
  const handout = handoutPages({ plan, block, search: { steps: 0, solver: null } });
  const prints = [
    ...shown.map((chapter) => patternPages(plan, { chapters: [chapter] })),
    ...(handout === null ? [] : [handout]),
  ];
  const firsts: Uint8Array[] = [];
  for (const pages of prints) {
    const [first] = await rastered(pages, { dotsPerInch: 32 });
    if (first !== undefined) firsts.push(first);
  }
  const { width, height } = await sharp(firsts[0]).metadata();
  const at = (place: number, size: number): number => gapPx + place * (size + gapPx);
  const whole = await sharp({
    create: {
      width: at(columns, width),
      height: at(Math.ceil(firsts.length / columns), height),
      channels: 3,
      background: '#d9d2c3',
    },
  })
    .composite(
      firsts.map((input, i) => ({
        input: Buffer.from(input),
        left: at(i % columns, width),
        top: at(Math.floor(i / columns), height),
      })),
    )
    .png()
    .toBuffer();
  return fewColours(whole);
};
