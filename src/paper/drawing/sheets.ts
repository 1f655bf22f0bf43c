// Sheets of cloth laid out for cutting, to scale, side by side: sheets that are cut alike once with their number, their strips
// apart where the order of the cuts stands over them.
import type { Strip } from '#craft/cutting';
import { type ClothDirections, type CutPart, type PatternCut, patternsBy } from '#craft/directions';
import type { Unit } from '#craft/measure';
import type { ClothSign } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { marksIn, pieceRect } from './cut-marks.ts';
import { drawCutSteps, stepsPt } from './cut-steps.ts';
import { cutEdgePt, hairlinePt, hush, inkOn, lettering, softInk } from './ink.ts';
import { drawRemnant, drawRemnants } from './offcuts.ts';
import type { PrintWay } from './print-arrow.ts';
import { printArrow } from './print-arrow.ts';
import type { Drawing } from './svg.ts';
import { element, group, numberText, picture } from './svg.ts';

export interface SheetsPicture {
  readonly directions: ClothDirections;
  readonly sign: ClothSign;
  readonly unit: Unit;
  readonly print: PrintWay | null;
  /** For which the sheets are laid out. */
  readonly hand: Hand;
  readonly fitPt: readonly [width: number, height: number];
  /** "Sheet", "Length", and its size where there are several; by kind. */
  readonly caption: (kind: number) => { readonly noun: string; readonly size: string };
  readonly alt: (part: number, parts: number) => string;
}

const mostScale = { in: 9, cm: 9 / 2.54 } as const;
const mostAbreast = 3;
const gapPt = 16;
const captionPt = 13;
const notePt = 10;

export const drawSheets = (of: SheetsPicture): readonly Drawing[] => {
  const kinds = of.directions.parts;
  if (kinds.length === 0) return [];
  // sheets of several sizes are drawn to one scale
  const largest = {
    width: Math.max(...kinds.map(({ layout }) => layout.width)),
    length: Math.max(...kinds.map(({ layout }) => layout.length)),
  };
  const abreast = Math.min(mostAbreast, kinds.length);
  const betweenPt = Math.max(...kinds.map(gapsPt));
  const scale = Math.min(
    mostScale[of.unit],
    (of.fitPt[0] - 2 - stripNumberPt - (abreast - 1) * gapPt) / (abreast * largest.width),
    (of.fitPt[1] - captionPt - notePt - printPt - betweenPt) / largest.length,
  );
  const rowPt = captionPt + largest.length * scale + betweenPt + notePt;
  const onePage = abreast * Math.max(1, Math.floor((of.fitPt[1] - printPt) / rowPt));
  const pages = Array.from({ length: Math.ceil(kinds.length / onePage) }, (_, page) =>
    kinds.slice(page * onePage, (page + 1) * onePage),
  );
  return pages.map((page, index) => {
    const column = largest.width * scale + gapPt;
    const head = of.print === null ? 0 : printPt;
    return picture({
      widthPt: Math.min(abreast, page.length) * column - gapPt + 2 + stripNumberPt,
      heightPt: Math.ceil(page.length / abreast) * rowPt + head,
      alt: of.alt(index + 1, pages.length),
      parts: [
        of.print === null ? '' : printArrow(of.print, { x: 1, y: 11 }),
        ...page.map((kind, at) => {
          const x = (at % abreast) * column;
          const y = Math.floor(at / abreast) * rowPt + head;
          return group({ transform: `translate(${numberText(x)} ${numberText(y)})` }, [
            ...drawSheet(of, { kind, number: index * onePage + at + 1, scale }),
          ]);
        }),
      ],
    });
  });
};

/** Beside each strip its number, as the directions count. */
const stripNumberPt = 12;

/** Above the sheets, where there is one. */
const printPt = 22;

const drawSheet = (
  of: SheetsPicture,
  at: { readonly kind: CutPart; readonly number: number; readonly scale: number },
): readonly string[] => {
  const { layout: sheet, count } = at.kind;
  const { scale } = at;
  const { noun, size } = of.caption(at.kind.sheet ?? 0);
  const rows = rowsIn(at.kind, scale);
  const strips = rows.map((row) => drawStrip({ of, row, scale, width: sheet.width }));
  const endAt = captionPt + sheet.length * scale + gapsPt(at.kind);
  const unmarked = strips.map((strip) => strip.unmarked).filter((text) => text !== '');
  return [
    lettering({
      text: `${noun} ${at.number}${count === 1 ? '' : ` × ${count}`}${size === '' ? '' : ` · ${size}`}`,
      x: 1,
      y: captionPt / 2 - 1,
      sizePt: 8,
      anchor: 'start',
      weight: 600,
    }),
    ...strips.flatMap(({ parts }) => parts),
    ...drawSheetEnd(at.kind, { scale, endAt }),
    unmarked.length === 0
      ? ''
      : lettering({
          text: unmarked.join(', '),
          x: 1,
          y: endAt + notePt / 2,
          sizePt: 7,
          anchor: 'start',
          fill: softInk,
        }),
  ];
};

interface Row {
  readonly strip: Strip;
  readonly pattern: PatternCut;
  /** Of those filled alike in a sheet the first alone has the order of its cuts over it. */
  readonly isFirst: boolean;
  /** Top of the strip under the sheet's caption. */
  readonly y: number;
}

const rowsIn = (kind: CutPart, scale: number): readonly Row[] => {
  const patternOf = patternsBy(kind);
  const known = new Set<number>();
  let gaps = 0;
  return kind.layout.strips.map((strip) => {
    const pattern = patternOf(strip);
    const isFirst = !known.has(pattern.number);
    known.add(pattern.number);
    if (isFirst) gaps += stepsPt(pattern);
    return { strip, pattern, isFirst, y: captionPt + strip.at * scale + gaps };
  });
};

/** Between the strips of a sheet, all together. */
const gapsPt = ({ heights }: CutPart): number =>
  heights.reduce((sum, { patterns }) => patterns.reduce((all, pattern) => all + stepsPt(pattern), sum), 0);

const drawStrip = ({
  of,
  row,
  scale,
  width,
}: {
  readonly of: SheetsPicture;
  readonly row: Row;
  readonly scale: number;
  /** Of the sheet. */
  readonly width: number;
}): { readonly parts: readonly string[]; readonly unmarked: string } => {
  const { sign } = of;
  const { strip, pattern, isFirst, y } = row;
  const marks = marksIn({ kind: { strip }, scale, y, sign });
  const pieces = strip.parts.flatMap((part) =>
    part.pieces.map((piece) =>
      element('rect', {
        ...pieceRect({ part, piece, scale, y }),
        fill: sign.colour,
        stroke: inkOn(sign.colour),
        'stroke-width': cutEdgePt,
      }),
    ),
  );
  const number = lettering({
    text: String(pattern.number),
    x: width * scale + 4,
    y: y + (strip.height * scale) / 2,
    sizePt: 8,
    anchor: 'start',
    weight: 600,
  });
  return {
    parts: [
      cloth({ y, width: width * scale, height: strip.height * scale }),
      ...drawRemnants({ offcuts: pattern.offcuts, scale, x: 1, y }),
      ...pieces,
      ...marks.labels,
      ...(isFirst ? drawCutSteps({ pattern, scale, y, hand: of.hand }) : []),
      number,
    ],
    unmarked: marks.unmarked,
  };
};

/** What lies under the pieces: waste, where none of it has a name. */
const cloth = (box: { readonly y: number; readonly width: number; readonly height: number }): string =>
  element('rect', {
    x: 1,
    ...box,
    fill: hush,
    stroke: softInk,
    'stroke-width': hairlinePt,
    'stroke-dasharray': '2 1',
  });

/** What is left of the sheet below its strips. */
const drawSheetEnd = (
  { end }: CutPart,
  { scale, endAt }: { readonly scale: number; readonly endAt: number },
): readonly string[] => {
  if (end === null) return [];
  const [width, height] = [end.size[0] * scale, end.size[1] * scale];
  const y = endAt - height;
  return [
    cloth({ y, width, height }),
    ...(end.remnant === null ? [] : drawRemnant(end.remnant, { x: 1, y, width, height })),
  ];
};
