// A cloth laid out for cutting, to scale: each kind of strip once with its number, the pieces in it with
// their marks, what is left over pale. A long cloth goes on over several pictures of one scale.

import type { FabricPlan } from '#craft';
import type { Unit } from '#craft/measure';
import type { ClothSign } from '#paper/cloth';
import type { StripKind } from '#paper/cutting';
import { stripKindsOf } from '#paper/cutting';
import { lengthOnPaper } from '#paper/lengths';
import { dimension } from './arrow.ts';
import { marksIn, pieceRect } from './cut-marks.ts';
import { cutEdgePt, hairlinePt, hush, inkOn, lettering, softInk } from './ink.ts';
import type { PrintWay } from './print-arrow.ts';
import { printArrow } from './print-arrow.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

export interface ClothPicture {
  readonly fabric: FabricPlan;
  readonly sign: ClothSign;
  readonly unit: Unit;
  readonly print: PrintWay | null;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: (part: number, parts: number) => string;
}

const notesPt = 104;
const headPt = 16;
/** More head where an arrow stands in it. */
const printPt = 6;
const betweenPt = 5;
const leastRowPt = 10;
const twoLinesPt = 20;
/** A long cloth is drawn smaller, so that it does not fill page after page; but never narrower than this. */
const wishedHeightPt = 340;
const leastWidthPt = 100;
/** Never larger than this many points an inch of cloth, or a small cloth would fill its page. */
const mostScale = { in: 9, cm: 9 / 2.54 } as const;

export const drawCloth = (of: ClothPicture): readonly Drawing[] => {
  const { layout } = of.fabric.laid;
  const kinds = stripKindsOf(layout);
  const tallest = Math.max(...kinds.map(({ strip }) => strip.height));
  const all = kinds.reduce((sum, { strip }) => sum + strip.height, 0);
  const scale = Math.min(
    (of.fitPt[0] - notesPt - 2) / layout.width,
    (of.fitPt[1] - headPt - betweenPt) / tallest,
    Math.max(wishedHeightPt / all, leastWidthPt / layout.width),
    mostScale[of.unit],
  );
  const pages = inPages(of, { kinds, scale, room: of.fitPt[1] - headPt - printPt });
  return pages.map((page, index) => drawPage(of, { kinds: page, scale, alt: of.alt(index + 1, pages.length) }));
};

const rowPt = (of: ClothPicture, kind: StripKind, scale: number): number => {
  const { unmarked } = marksIn({ kind, scale, y: 0, sign: of.sign });
  return Math.max(kind.strip.height * scale, unmarked === '' ? leastRowPt : twoLinesPt) + betweenPt;
};

const inPages = (
  of: ClothPicture,
  { kinds, scale, room }: { readonly kinds: readonly StripKind[]; readonly scale: number; readonly room: number },
): readonly (readonly StripKind[])[] => {
  const pages: StripKind[][] = [];
  let left = 0;
  for (const kind of kinds) {
    const takes = rowPt(of, kind, scale);
    if (pages.length === 0 || takes > left + 1e-9) {
      pages.push([]);
      left = room;
    }
    pages.at(-1)?.push(kind);
    left -= takes;
  }
  return pages;
};

const drawPage = (
  of: ClothPicture,
  page: { readonly kinds: readonly StripKind[]; readonly scale: number; readonly alt: string },
): Drawing => {
  const { scale } = page;
  const widthPt = of.fabric.laid.layout.width * scale;
  const parts: string[] = [
    dimension({
      from: { x: 1, y: 3.5 },
      to: { x: 1 + widthPt, y: 3.5 },
      text: `${lengthOnPaper(of.fabric.laid.layout.width, of.unit)} usable width`,
      sizePt: 7,
    }),
  ];
  // beside the cloth's head, where the notes leave room
  if (of.print !== null) parts.push(printArrow(of.print, { x: widthPt + 40, y: 10 }));
  let y = of.print === null ? headPt : headPt + printPt;
  for (const kind of page.kinds) {
    parts.push(...drawStrip(of, { kind, scale, y }));
    y += rowPt(of, kind, scale);
  }
  return picture({ widthPt: widthPt + 2 + notesPt, heightPt: y, alt: page.alt, parts });
};

const drawStrip = (
  of: ClothPicture,
  row: { readonly kind: StripKind; readonly scale: number; readonly y: number },
): readonly string[] => {
  const { kind, scale, y } = row;
  const { sign } = of;
  const widthPt = of.fabric.laid.layout.width * scale;
  const heightPt = kind.strip.height * scale;
  const pieces = kind.strip.parts.flatMap((part) =>
    part.pieces.map((piece) => ({ piece, rect: pieceRect({ part, piece, scale, y }) })),
  );
  const marks = marksIn({ kind, scale, y, sign });
  // two lines of notes hang from a low strip, and stand in the middle of a high one
  const noteY = marks.unmarked === '' ? y + heightPt / 2 : y + Math.max(4, heightPt / 2 - 4.5);
  const note = `${kind.count} ${kind.count === 1 ? 'strip' : 'strips'} ${lengthOnPaper(kind.strip.height, of.unit)}`;
  return [
    element('rect', {
      x: 1,
      y,
      width: widthPt,
      height: heightPt,
      fill: hush,
      stroke: softInk,
      'stroke-width': hairlinePt,
      'stroke-dasharray': '2 1',
    }),
    ...pieces.map(({ rect }) =>
      element('rect', { ...rect, fill: sign.colour, stroke: inkOn(sign.colour), 'stroke-width': cutEdgePt }),
    ),
    ...marks.labels,
    lettering({ text: note, x: widthPt + 9, y: noteY, sizePt: 8, anchor: 'start', weight: 600 }),
    marks.unmarked === ''
      ? ''
      : lettering({ text: marks.unmarked, x: widthPt + 9, y: noteY + 9, sizePt: 7, anchor: 'start', fill: softInk }),
  ];
};
