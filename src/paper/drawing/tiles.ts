// A drawing larger than a page, over several sheets at its own scale: each shows its part of the whole and a strip of its
// neighbours', with lines and diamonds that lie on each other when the sheets are put together.
import type { Box, Point, Polygon } from '#ground/plane';
import { hairlinePt, lettering, softInk, textWidthPt, thread } from './ink.ts';
import type { Lettered } from './label.ts';
import type { Drawing } from './svg.ts';
import { element, group, numberText, picture } from './svg.ts';

export interface WholeDrawing {
  readonly widthPt: number;
  readonly heightPt: number;
  /** Drawn from 0, 0. */
  readonly parts: readonly string[];
  /** Drawn whole, on each sheet that has room for all of it. */
  readonly labels: readonly Lettered[];
  /** What must be on some sheet: sheets that none of these reach are left out. */
  readonly outlines: readonly Polygon[];
}

export interface SheetName {
  /** 1-based, in reading order; sheets that would be empty are left out. */
  readonly number: number;
  readonly row: number;
  readonly column: number;
}

export interface Tile {
  readonly sheet: SheetName;
  readonly drawing: Drawing;
}

/** Half an inch: what two sheets share, the line in its middle. */
const overlapPt = 36;
const captionPt = 12;

export const drawTiles = (of: {
  readonly whole: WholeDrawing;
  /** Room for one sheet's part. */
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: (sheet: SheetName) => string;
}): readonly Tile[] => {
  const { whole } = of;
  const room = [of.fitPt[0], of.fitPt[1] - captionPt] as const;
  const columns = spansOf(whole.widthPt, room[0]);
  const rows = spansOf(whole.heightPt, room[1]);
  const windows = rows.flatMap((down, row) =>
    columns.map((across, column) => ({
      row: row + 1,
      column: column + 1,
      box: { x: across.from, y: down.from, width: across.to - across.from, height: down.to - down.from },
    })),
  );
  const marks = joinMarks({ columns, rows, whole: [whole.widthPt, whole.heightPt] });
  const lettersOn = lettersBy(
    whole.labels,
    windows.map(({ box }) => box),
  );
  return windows
    .filter(({ box }) => whole.outlines.some((outline) => reaches(outline, box)))
    .map(({ row, column, box }, index) => {
      const sheet: SheetName = { number: index + 1, row, column };
      const parts = [...whole.parts, ...marks, ...lettersOn(box)];
      return { sheet, drawing: drawWindow({ sheet, box, parts, alt: of.alt(sheet) }) };
    });
};

/** A label that no sheet has room for stands on the one where its middle lies, moved in from the edge. */
const lettersBy = (labels: readonly Lettered[], boxes: readonly Box[]): ((box: Box) => readonly string[]) => {
  const edgePt = 2;
  const written = (label: Lettered, x: number): string => lettering({ ...label, x });
  const halfOf = ({ text, sizePt }: Lettered): number => textWidthPt(text, sizePt) / 2 + edgePt;
  const isHeld = (label: Lettered, box: Box): boolean =>
    label.x - halfOf(label) >= box.x &&
    label.x + halfOf(label) <= box.x + box.width &&
    label.y - label.sizePt >= box.y &&
    label.y + label.sizePt <= box.y + box.height;
  const isOn = (label: Lettered, box: Box): boolean =>
    label.x >= box.x && label.x < box.x + box.width && label.y >= box.y && label.y < box.y + box.height;
  return (box) =>
    labels.flatMap((label) => {
      if (isHeld(label, box)) return [written(label, label.x)];
      if (boxes.some((other) => isHeld(label, other)) || boxes.find((other) => isOn(label, other)) !== box) return [];
      const half = halfOf(label);
      return [written(label, Math.min(Math.max(label.x, box.x + half), box.x + box.width - half))];
    });
};

interface Span {
  readonly from: number;
  readonly to: number;
}

/** Equal stretches that overlap, as few as fit. */
const spansOf = (whole: number, room: number): readonly Span[] => {
  if (whole <= room) return [{ from: 0, to: whole }];
  const count = Math.ceil((whole - overlapPt) / (room - overlapPt));
  const step = (whole - overlapPt) / count;
  return Array.from({ length: count }, (_, i) => ({ from: i * step, to: (i + 1) * step + overlapPt }));
};

const joinMarks = (of: {
  readonly columns: readonly Span[];
  readonly rows: readonly Span[];
  readonly whole: readonly [number, number];
}): readonly string[] => {
  const middles = (spans: readonly Span[]): readonly number[] => spans.slice(1).map(({ from }) => from + overlapPt / 2);
  const quarters = (spans: readonly Span[]): readonly number[] =>
    spans.flatMap(({ from, to }) => [0.25, 0.75].map((share) => from + (to - from) * share));
  return [
    ...middles(of.columns).flatMap((x) => [
      joinLine({ x, y: 0 }, { x, y: of.whole[1] }),
      ...quarters(of.rows).map((y) => diamond({ x, y })),
    ]),
    ...middles(of.rows).flatMap((y) => [
      joinLine({ x: 0, y }, { x: of.whole[0], y }),
      ...quarters(of.columns).map((x) => diamond({ x, y })),
    ]),
  ];
};

const joinLine = (from: Point, to: Point): string =>
  element('path', {
    d: `M${numberText(from.x)} ${numberText(from.y)}L${numberText(to.x)} ${numberText(to.y)}`,
    stroke: thread,
    'stroke-width': 0.5,
    'stroke-dasharray': '1 2',
    fill: 'none',
  });

const diamond = ({ x, y }: Point): string =>
  element('path', {
    d: `M${numberText(x)} ${numberText(y - 5)}L${numberText(x + 5)} ${numberText(y)}L${numberText(x)} ${numberText(y + 5)}L${numberText(x - 5)} ${numberText(y)}Z`,
    stroke: thread,
    'stroke-width': 0.5,
    fill: 'none',
  });

const drawWindow = (of: {
  readonly sheet: SheetName;
  readonly box: Box;
  readonly parts: readonly string[];
  readonly alt: string;
}): Drawing => {
  const { box, sheet } = of;
  const id = 'sheet';
  const edge = { x: box.x, y: box.y, width: box.width, height: box.height };
  return picture({
    widthPt: box.width,
    heightPt: box.height + captionPt,
    alt: of.alt,
    parts: [
      element('defs', {}, element('clipPath', { id }, element('rect', edge))),
      lettering({
        text: `Sheet ${sheet.number}: row ${sheet.row}, place ${sheet.column}`,
        x: 0,
        y: captionPt / 2 - 1,
        sizePt: 8,
        anchor: 'start',
        weight: 600,
      }),
      group({ transform: `translate(${numberText(-box.x)} ${numberText(captionPt - box.y)})` }, [
        group({ 'clip-path': `url(#${id})` }, [
          ...of.parts,
          element('rect', { ...edge, fill: 'none', stroke: softInk, 'stroke-width': hairlinePt }),
        ]),
      ]),
    ],
  });
};

/** Whether anything of an outline lies in a box: what is left of it, cut along the box's four sides, has corners. */
const reaches = (outline: Polygon, box: Box): boolean => {
  const sides: readonly ((p: Point) => number)[] = [
    (p) => p.x - box.x,
    (p) => box.x + box.width - p.x,
    (p) => p.y - box.y,
    (p) => box.y + box.height - p.y,
  ];
  return sides.reduce<Polygon>(cutAlong, outline).length > 0;
};

/** The part of an outline where `inside` is above zero. */
const cutAlong = (outline: Polygon, inside: (p: Point) => number): Polygon =>
  outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    const [da, db] = [inside(a), inside(b)];
    const here = da > 0 ? [a] : [];
    if (da > 0 === db > 0) return here;
    const share = da / (da - db);
    return [...here, { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share }];
  });
