// A cloth laid out for cutting, to scale: each kind of strip once with its number, its cuts in their order, the pieces in
// it with their marks, what is worth keeping with its name, waste pale. A long cloth goes on over several pictures; strips
// longer than it is wide stand side by side.

import type { FabricPlan } from '#craft';
import type { CutPart, PatternCut } from '#craft/directions';
import type { Unit } from '#craft/measure';
import type { ClothSign } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import { dimension } from './arrow.ts';
import { drawClothStrip } from './cloth-strip.ts';
import { marksIn } from './cut-marks.ts';
import { mostStepsPt, stepsPt } from './cut-steps.ts';
import { lettering, softInk } from './ink.ts';
import { drawRemnant } from './offcuts.ts';
import type { PrintWay } from './print-arrow.ts';
import { printArrow } from './print-arrow.ts';
import type { Drawing } from './svg.ts';
import { picture } from './svg.ts';
import { drawTallStrips, tallLines } from './tall-strips.ts';

export interface ClothPicture {
  readonly fabric: FabricPlan;
  /** What its width is. */
  readonly across?: string;
  readonly sign: ClothSign;
  readonly unit: Unit;
  readonly print: PrintWay | null;
  /** For which the cloth is laid out. */
  readonly hand: Hand;
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
/** Of strips side by side. */
const wishedTallPt = 270;
/** Never larger than this many points an inch of cloth, or a small cloth would fill its page. */
const mostScale = { in: 9, cm: 9 / 2.54 } as const;

type Row = PatternCut | Keeping;

/** The end of the cloth, where it is worth keeping. */
interface Keeping {
  readonly name: string;
  readonly size: NonNullable<CutPart['end']>['size'];
}

const isStrip = (row: Row): row is PatternCut => 'strip' in row;

const isEnd = (row: Row): row is Keeping => !isStrip(row);

const highOf = (row: Row): number => (isStrip(row) ? row.strip.height : row.size[1]);

const rowsOf = ({ directions }: FabricPlan): readonly Row[] =>
  directions.parts.flatMap(({ heights, end }): readonly Row[] => [
    ...heights.flatMap(({ patterns }) => patterns),
    ...(end === null || end.remnant === null ? [] : [{ name: end.remnant, size: end.size }]),
  ]);

export const drawCloth = (of: ClothPicture): readonly Drawing[] => {
  const { tall, low } = apart(rowsOf(of.fabric), of.fabric.laid.layout.width);
  const tallPages = tallPagesOf(of, tall);
  // the end of the cloth alone is no reason for another picture
  const joined = low.some(isStrip) ? null : withEnds(of, tallPages, low.filter(isEnd));
  const pages = joined === null ? pagesOf(of, low) : [];
  const parts = tallPages.length + pages.length;
  return [
    ...(joined ?? tallPages).map((page, index) => drawTallPage(of, { ...page, alt: of.alt(index + 1, parts) })),
    ...pages.map((page, index) => drawPage(of, { ...page, alt: of.alt(tallPages.length + index + 1, parts) })),
  ];
};

interface Page {
  readonly rows: readonly Row[];
  readonly scale: number;
}

/** Strips longer than the cloth is wide would make all others tiny: they have a picture of their own, side by side. */
const apart = (
  rows: readonly Row[],
  width: number,
): { readonly tall: readonly PatternCut[]; readonly low: readonly Row[] } => {
  const tall = rows.filter(isStrip).filter(({ strip }) => strip.height > width);
  const low = rows.filter((row) => !isStrip(row) || row.strip.height <= width);
  return tall.length > 1 || (tall.length === 1 && low.some(isStrip)) ? { tall, low } : { tall: [], low: rows };
};

/** Lines of tall strips, as many as a picture has room for. */
const tallPagesOf = (of: ClothPicture, patterns: readonly PatternCut[]): readonly TallPage[] => {
  if (patterns.length === 0) return [];
  const room = of.fitPt[1] - headPt - printPt;
  const { lines, scale, linePt } = tallLines({
    patterns,
    width: of.fabric.laid.layout.width,
    fitPt: [of.fitPt[0], room],
    wishedHighPt: wishedTallPt,
    mostScale: mostScale[of.unit],
  });
  const onePage = Math.max(1, Math.floor(room / linePt));
  return Array.from({ length: Math.ceil(lines.length / onePage) }, (_, page) => {
    const shown = lines.slice(page * onePage, (page + 1) * onePage);
    return { lines: shown, ends: [], scale, heightPt: headPt + printPt + shown.length * linePt };
  });
};

/** The end of the cloth below the last tall strips; null where it has no room there. */
const withEnds = (
  of: ClothPicture,
  pages: readonly TallPage[],
  ends: readonly Keeping[],
): readonly TallPage[] | null => {
  const last = pages.at(-1);
  if (last === undefined) return null;
  const takes = ends.reduce((sum, end) => sum + rowPt(of, end, last.scale), 0);
  return last.heightPt + takes > of.fitPt[1] ? null : [...pages.slice(0, -1), { ...last, ends }];
};

interface TallPage {
  readonly lines: readonly (readonly PatternCut[])[];
  readonly ends: readonly Keeping[];
  readonly scale: number;
  /** Without the ends. */
  readonly heightPt: number;
}

const drawTallPage = (of: ClothPicture, { lines, ends, scale, alt }: TallPage & { readonly alt: string }): Drawing => {
  const head = of.print === null ? headPt : headPt + printPt;
  const { width } = of.fabric.laid.layout;
  const tall = drawTallStrips({ ...of, lines, width, scale, y: head });
  const arrow = of.print === null ? '' : printArrow(of.print, { x: width * scale + 24, y: 10 });
  let y = head + tall.heightPt;
  const below: string[] = [];
  for (const row of ends) {
    below.push(...drawEnd(of, { row, scale, y }));
    y += rowPt(of, row, scale);
  }
  return picture({
    widthPt: Math.max(tall.widthPt, width * scale + notesPt),
    heightPt: y,
    alt,
    parts: [widthLine(of, scale), arrow, ...tall.parts, ...below],
  });
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

const widthLine = (of: ClothPicture, scale: number): string =>
  dimension({
    from: { x: 1, y: 3.5 },
    to: { x: 1 + of.fabric.laid.layout.width * scale, y: 3.5 },
    text: `${lengthOnPaper(of.fabric.laid.layout.width, of.unit)} ${of.across ?? 'usable width'}`,
    sizePt: 7,
  });

const drawPage = (of: ClothPicture, page: Page & { readonly alt: string }): Drawing => {
  const { scale } = page;
  const widthPt = of.fabric.laid.layout.width * scale;
  const parts: string[] = [widthLine(of, scale)];
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
  { row, scale, y }: { readonly row: PatternCut; readonly scale: number; readonly y: number },
): readonly string[] => {
  const { parts, note, unmarked } = drawClothStrip({ ...of, ...of.fabric.laid.layout, pattern: row, scale, y });
  const widthPt = of.fabric.laid.layout.width * scale;
  const heightPt = row.strip.height * scale;
  // two lines of notes hang from a low strip, and stand in the middle of a high one
  const noteY = unmarked === '' ? y + heightPt / 2 : y + Math.max(4, heightPt / 2 - 4.5);
  const beside = { x: widthPt + numberPt, anchor: 'start' } as const;
  return [
    ...parts,
    lettering({ ...beside, text: String(row.number), x: widthPt + 9, y: noteY, sizePt: 8, weight: 600 }),
    lettering({ ...beside, text: note, y: noteY, sizePt: 8, weight: 600 }),
    unmarked === '' ? '' : lettering({ ...beside, text: unmarked, y: noteY + 9, sizePt: 7, fill: softInk }),
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
