// A cloth laid out for cutting, to scale: each kind of strip once with its number, its cuts in their order, the pieces in
// it with their marks, what is worth keeping with its name, waste pale. A long cloth goes on over several pictures.

import type { FabricPlan } from '#craft';
import type { CutPart, PatternCut } from '#craft/directions';
import type { Unit } from '#craft/measure';
import type { ClothSign } from '#paper/cloth';
import { lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import { dimension } from './arrow.ts';
import { marksIn, pieceRect } from './cut-marks.ts';
import { drawCutSteps, mostStepsPt, stepsPt } from './cut-steps.ts';
import { cutEdgePt, hairlinePt, hush, inkOn, lettering, softInk } from './ink.ts';
import { drawRemnant, drawRemnants } from './offcuts.ts';
import type { PrintWay } from './print-arrow.ts';
import { printArrow } from './print-arrow.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

export interface ClothPicture {
  readonly fabric: FabricPlan;
  /** What its width is. */
  readonly across?: string;
  readonly sign: ClothSign;
  readonly unit: Unit;
  readonly print: PrintWay | null;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: (part: number, parts: number) => string;
}

const notesPt = 112;
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

type Row = PatternCut | Keeping;

/** The end of the cloth, where it is worth keeping. */
interface Keeping {
  readonly name: string;
  readonly size: NonNullable<CutPart['end']>['size'];
}

const isStrip = (row: Row): row is PatternCut => 'strip' in row;

const highOf = (row: Row): number => (isStrip(row) ? row.strip.height : row.size[1]);

const rowsOf = ({ directions }: FabricPlan): readonly Row[] =>
  directions.parts.flatMap(({ heights, end }): readonly Row[] => [
    ...heights.flatMap(({ patterns }) => patterns),
    ...(end === null || end.remnant === null ? [] : [{ name: end.remnant, size: end.size }]),
  ]);

export const drawCloth = (of: ClothPicture): readonly Drawing[] => {
  const pages = apart(rowsOf(of.fabric), of.fabric.laid.layout.width).flatMap((rows) => pagesOf(of, rows));
  return pages.map((page, index) => drawPage(of, { ...page, alt: of.alt(index + 1, pages.length) }));
};

interface Page {
  readonly rows: readonly Row[];
  readonly scale: number;
}

/** Strips longer than the cloth is wide would make all others tiny: they have pictures of their own. */
const apart = (rows: readonly Row[], width: number): readonly (readonly Row[])[] => {
  const tall = rows.filter((row) => highOf(row) > width);
  const low = rows.filter((row) => highOf(row) <= width);
  // the end of the cloth alone is no reason for another picture
  return tall.length > 0 && low.some(isStrip) ? [tall, low] : [rows];
};

const pagesOf = (of: ClothPicture, rows: readonly Row[]): readonly Page[] => {
  const { layout } = of.fabric.laid;
  const tallest = Math.max(...rows.map(highOf));
  const all = rows.reduce((sum, row) => sum + highOf(row), 0);
  const scale = Math.min(
    (of.fitPt[0] - notesPt - 2) / layout.width,
    (of.fitPt[1] - headPt - printPt - mostStepsPt - betweenPt) / tallest,
    Math.max(wishedHeightPt / all, leastWidthPt / layout.width),
    mostScale[of.unit],
  );
  const pages = inPages(of, { rows, scale, room: of.fitPt[1] - headPt - printPt });
  return pages.map((page) => ({ rows: page, scale }));
};

const rowPt = (of: ClothPicture, row: Row, scale: number): number => {
  if (!isStrip(row)) return Math.max(highOf(row) * scale, leastRowPt) + betweenPt;
  const { unmarked } = marksIn({ kind: row, scale, y: 0, sign: of.sign });
  const least = unmarked === '' ? leastRowPt : twoLinesPt;
  return stepsPt(row) + Math.max(row.strip.height * scale, least) + betweenPt;
};

const inPages = (
  of: ClothPicture,
  { rows, scale, room }: { readonly rows: readonly Row[]; readonly scale: number; readonly room: number },
): readonly (readonly Row[])[] => {
  const pages: Row[][] = [];
  let left = 0;
  for (const row of rows) {
    const takes = rowPt(of, row, scale);
    if (pages.length === 0 || takes > left + 1e-9) {
      pages.push([]);
      left = room;
    }
    pages.at(-1)?.push(row);
    left -= takes;
  }
  return pages;
};

const drawPage = (of: ClothPicture, page: Page & { readonly alt: string }): Drawing => {
  const { scale } = page;
  const widthPt = of.fabric.laid.layout.width * scale;
  const parts: string[] = [
    dimension({
      from: { x: 1, y: 3.5 },
      to: { x: 1 + widthPt, y: 3.5 },
      text: `${lengthOnPaper(of.fabric.laid.layout.width, of.unit)} ${of.across ?? 'usable width'}`,
      sizePt: 7,
    }),
  ];
  // beside the cloth's head, where the notes leave room
  if (of.print !== null) parts.push(printArrow(of.print, { x: widthPt + 40, y: 10 }));
  let y = of.print === null ? headPt : headPt + printPt;
  for (const row of page.rows) {
    parts.push(...(isStrip(row) ? drawStrip(of, { row, scale, y: y + stepsPt(row) }) : drawEnd(of, { row, scale, y })));
    y += rowPt(of, row, scale);
  }
  return picture({ widthPt: widthPt + 2 + notesPt, heightPt: y, alt: page.alt, parts });
};

const drawStrip = (
  of: ClothPicture,
  at: { readonly row: PatternCut; readonly scale: number; readonly y: number },
): readonly string[] => {
  const { row, scale, y } = at;
  const { sign } = of;
  const widthPt = of.fabric.laid.layout.width * scale;
  const heightPt = row.strip.height * scale;
  const pieces = row.strip.parts.flatMap((part) =>
    part.pieces.map((piece) => ({ piece, rect: pieceRect({ part, piece, scale, y }) })),
  );
  const marks = marksIn({ kind: row, scale, y, sign });
  // two lines of notes hang from a low strip, and stand in the middle of a high one
  const noteY = marks.unmarked === '' ? y + heightPt / 2 : y + Math.max(4, heightPt / 2 - 4.5);
  const note = `${row.count} ${row.count === 1 ? 'strip' : 'strips'} ${lengthOnPaper(row.strip.height, of.unit)}`;
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
    ...drawRemnants({ offcuts: row.offcuts, scale, x: 1, y }),
    ...pieces.map(({ rect }) =>
      element('rect', { ...rect, fill: sign.colour, stroke: inkOn(sign.colour), 'stroke-width': cutEdgePt }),
    ),
    ...marks.labels,
    ...drawCutSteps({ pattern: row, scale, y }),
    lettering({ text: String(row.number), x: widthPt + 9, y: noteY, sizePt: 8, anchor: 'start', weight: 600 }),
    lettering({ text: note, x: widthPt + numberPt, y: noteY, sizePt: 8, anchor: 'start', weight: 600 }),
    marks.unmarked === ''
      ? ''
      : lettering({
          text: marks.unmarked,
          x: widthPt + numberPt,
          y: noteY + 9,
          sizePt: 7,
          anchor: 'start',
          fill: softInk,
        }),
  ];
};

/** Where notes begin, right of the number of their strip. */
const numberPt = 22;

const drawEnd = (
  of: ClothPicture,
  at: { readonly row: Keeping; readonly scale: number; readonly y: number },
): readonly string[] => {
  const { row, scale, y } = at;
  const box = { x: 1, y, width: row.size[0] * scale, height: row.size[1] * scale };
  return [
    ...drawRemnant(row.name, box),
    lettering({
      text: `${row.name}: ${sizeOnPaper(row.size, of.unit)} left`,
      x: box.width + numberPt,
      y: y + Math.max(4, box.height / 2),
      sizePt: 7,
      anchor: 'start',
      fill: softInk,
    }),
  ];
};
