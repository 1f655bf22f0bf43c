// One strip by itself, for a direction that it stands beside: its pieces with their marks, the order of its cuts above it.
import type { PatternCut } from '#craft/directions';
import type { Unit } from '#craft/measure';
import type { ClothSign } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { drawClothStrip } from './cloth-strip.ts';
import { stepsPt } from './cut-steps.ts';
import { lettering, softInk } from './ink.ts';
import { type Drawing, picture } from './svg.ts';

const notePt = 11;
/** Never larger than this many points an inch of cloth. */
const mostScale = { in: 12, cm: 12 / 2.54 } as const;

/** @param of `width` is the cloth's */
export const drawStripAlone = (of: {
  readonly pattern: PatternCut;
  readonly width: number;
  readonly sign: ClothSign;
  readonly unit: Unit;
  readonly fitPt: readonly [width: number, height: number];
  readonly hand: Hand;
  readonly alt: string;
}): Drawing => {
  const { pattern, width, fitPt } = of;
  const top = stepsPt(pattern) + 1;
  const scale = Math.min((fitPt[0] - 2) / width, (fitPt[1] - top - notePt) / pattern.strip.height, mostScale[of.unit]);
  const { parts, unmarked } = drawClothStrip({ ...of, scale, y: top });
  const below = top + pattern.strip.height * scale + 1;
  return picture({
    widthPt: width * scale + 2,
    heightPt: below + (unmarked === '' ? 0 : notePt),
    alt: of.alt,
    parts: [
      ...parts,
      unmarked === ''
        ? ''
        : lettering({ text: unmarked, x: 1, y: below + notePt / 2, sizePt: 7, anchor: 'start', fill: softInk }),
    ],
  });
};
