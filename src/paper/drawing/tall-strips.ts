// Strips longer than their cloth is wide, side by side, each under its number: below one another they would fill page after page.
import type { PatternCut } from '#craft/directions';
import type { Unit } from '#craft/measure';
import type { ClothSign } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { drawClothStrip } from './cloth-strip.ts';
import { mostStepsPt } from './cut-steps.ts';
import { lettering, softInk } from './ink.ts';
import { group, numberText } from './svg.ts';

const mostAbreast = 3;
const gapPt = 16;
const captionPt = 12;
/** Below a strip: its pieces that are too small for a mark. */
const notePt = 10;

export interface TallLines {
  readonly lines: readonly (readonly PatternCut[])[];
  /** Points a unit of cloth. */
  readonly scale: number;
  /** Height of one line. */
  readonly linePt: number;
}

/** How tall strips stand: as large as fits, none higher than is wished. */
export const tallLines = (of: {
  readonly patterns: readonly PatternCut[];
  /** Of the cloth. */
  readonly width: number;
  readonly fitPt: readonly [width: number, height: number];
  readonly wishedHighPt: number;
  readonly mostScale: number;
}): TallLines => {
  const abreast = Math.min(mostAbreast, of.patterns.length);
  const tallest = Math.max(...of.patterns.map(({ strip }) => strip.height));
  const wordsPt = captionPt + mostStepsPt + notePt;
  const scale = Math.min(
    (of.fitPt[0] - 2 - (abreast - 1) * gapPt) / (abreast * of.width),
    Math.min(of.wishedHighPt, of.fitPt[1] - wordsPt) / tallest,
    of.mostScale,
  );
  const lines = Array.from({ length: Math.ceil(of.patterns.length / abreast) }, (_, line) =>
    of.patterns.slice(line * abreast, (line + 1) * abreast),
  );
  return { lines, scale, linePt: wordsPt + tallest * scale };
};

/** @param of `y` is the top of the first line in the picture */
export const drawTallStrips = (of: {
  readonly lines: readonly (readonly PatternCut[])[];
  readonly width: number;
  readonly sign: ClothSign;
  readonly unit: Unit;
  readonly scale: number;
  readonly y: number;
  readonly hand: Hand;
}): { readonly parts: readonly string[]; readonly widthPt: number; readonly heightPt: number } => {
  const column = of.width * of.scale + gapPt;
  const parts: string[] = [];
  let top = of.y;
  for (const line of of.lines) {
    const stripY = top + captionPt + mostStepsPt;
    line.forEach((pattern, at) => {
      const { parts: drawn, note, unmarked } = drawClothStrip({ ...of, pattern, y: stripY });
      const below = stripY + pattern.strip.height * of.scale + notePt / 2 + 1;
      const words = { anchor: 'start', sizePt: 8, y: top + captionPt / 2, weight: 600 } as const;
      parts.push(
        group({ transform: `translate(${numberText(at * column)} 0)` }, [
          lettering({ ...words, text: String(pattern.number), x: 1 }),
          lettering({ ...words, text: note, x: 14 }),
          ...drawn,
          unmarked === ''
            ? ''
            : lettering({ text: unmarked, x: 1, y: below, sizePt: 7, anchor: 'start', fill: softInk }),
        ]),
      );
    });
    const tallest = Math.max(...line.map(({ strip }) => strip.height));
    top = stripY + tallest * of.scale + notePt;
  }
  const most = Math.max(...of.lines.map((line) => line.length));
  return { parts, widthPt: most * column - gapPt + 2, heightPt: top - of.y };
};
