// A drawing larger than a page, over several sheets at its own scale: each shows its part of the whole and a strip of its
// neighbours', with lines and diamonds that lie on each other when the sheets are put together.
import type { Box, Point, Polygon } from '#ground/plane';
import { lettering, softInk, textWidthPt, thread } from './ink.ts';
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
  /** Whether a label may step aside from a join, or says something of the mark beside it. */
  readonly labelsAre: 'free' | 'at-marks';
  /** What two sheets share, the join in its middle. */
  readonly overlapPt: number;
  /** What an upright join keeps clear of besides labels, where it can. */
  readonly clear?: readonly Stretch[];
  /** Where the diamonds stand on a join, as shares of the side of a sheet; a quarter from either end where it does not say. */
  readonly diamondsAt?: readonly [number, number];
  /** What must be on some sheet: sheets that none of these reach are left out. */
  readonly outlines: readonly Polygon[];
}

/** From one place to another, in points. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface SheetPlace {
  /** 1-based, in reading order; sheets that would be empty are left out. */
  readonly number: number;
  readonly row: number;
  readonly column: number;
}

export interface Tile {
  readonly sheet: SheetPlace;
  readonly drawing: Drawing;
}

/** Half an inch: what two sheets share of a drawing that has room for it. */
export const wideOverlapPt = 36;
const framePt = 0.4;

export const drawTiles = (of: {
  readonly whole: WholeDrawing;
  /** Room for one sheet's part. */
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: (sheet: SheetPlace) => string;
}): readonly Tile[] => {
  const { whole } = of;
  const { overlapPt } = whole;
  const columns = spansOf(whole.widthPt, {
    room: of.fitPt[0],
    overlapPt,
    clear: [...whole.labels.map(acrossOf), ...(whole.clear ?? [])],
  });
  const rows = spansOf(whole.heightPt, { room: of.fitPt[1], overlapPt, clear: whole.labels.map(downOf) });
  const windows = rows.flatMap((down, row) =>
    columns.map((across, column) => ({
      row: row + 1,
      column: column + 1,
      box: { x: across.from, y: down.from, width: across.to - across.from, height: down.to - down.from },
    })),
  );
  const marks = joinMarks({
    columns,
    rows,
    overlapPt,
    whole: [whole.widthPt, whole.heightPt],
    diamondsAt: whole.diamondsAt ?? [0.25, 0.75],
  });
  const joins = { upright: middlesOf(columns, overlapPt), level: middlesOf(rows, overlapPt) };
  const lettersOn = lettersBy({
    labels: whole.labelsAre === 'free' ? whole.labels.map((label) => besideJoins(label, joins)) : whole.labels,
    boxes: windows.map(({ box }) => box),
    joins,
  });
  return windows
    .filter(({ box }) => whole.outlines.some((outline) => reaches(outline, box)))
    .map(({ row, column, box }, index) => {
      const sheet: SheetPlace = { number: index + 1, row, column };
      const parts = [...whole.parts, ...marks, ...lettersOn(box)];
      return { sheet, drawing: drawWindow({ box, parts, alt: of.alt(sheet) }) };
    });
};

/** Where two sheets are laid on each other. */
interface Joins {
  readonly upright: readonly number[];
  readonly level: readonly number[];
}

/** A label that would lie on a join stands right of it, or below it. */
const besideJoins = (label: Lettered, joins: Joins): Lettered => {
  const half = textWidthPt(label.text, label.sizePt) / 2;
  const upright = joins.upright.find((x) => Math.abs(label.x - x) < half + 1);
  const level = joins.level.find((y) => Math.abs(label.y - y) < label.sizePt);
  return {
    ...label,
    x: upright === undefined ? label.x : upright + half + 6,
    y: level === undefined ? label.y : level + label.sizePt + 3,
  };
};

/** A label that no sheet has room for stands on the one where its middle lies, moved in from the edge. */
const lettersBy = (of: {
  readonly labels: readonly Lettered[];
  readonly boxes: readonly Box[];
  readonly joins: Joins;
}): ((box: Box) => readonly string[]) => {
  const { labels, boxes, joins } = of;
  const edgePt = 2;
  const written = (label: Lettered, x: number): string => {
    const width = textWidthPt(label.text, label.sizePt);
    const box = { x: x - width / 2, y: label.y - label.sizePt / 2, width, height: label.sizePt };
    // white behind it, where the lines on which sheets join run through
    const isCrossed =
      joins.upright.some((join) => join > box.x && join < box.x + box.width) ||
      joins.level.some((join) => join > box.y && join < box.y + box.height);
    return (isCrossed ? element('rect', { ...box, fill: '#ffffff' }) : '') + lettering({ ...label, x });
  };
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

/** Where a label stands, with a little room. */
const acrossOf = ({ text, x, sizePt }: Lettered): Stretch => {
  const half = textWidthPt(text, sizePt) / 2 + 2;
  return { from: x - half, to: x + half };
};

const downOf = ({ y, sizePt }: Lettered): Stretch => ({ from: y - sizePt * 0.7, to: y + sizePt * 0.7 });

/** Stretches that overlap, as few as fit: of about equal length, the strips that they share clear of labels where that can be. */
const spansOf = (
  whole: number,
  of: { readonly room: number; readonly overlapPt: number; readonly clear: readonly Stretch[] },
): readonly Stretch[] => {
  const { overlapPt } = of;
  if (whole <= of.room) return [{ from: 0, to: whole }];
  const count = Math.ceil((whole - overlapPt) / (of.room - overlapPt));
  const step = (whole - overlapPt) / count;
  const spans: Stretch[] = [];
  for (let i = 0, from = 0; i < count; i++) {
    const isLast = i === count - 1;
    // what is left after this one must fit into the others
    const least = whole - (count - i - 1) * (of.room - overlapPt);
    const wished = (i + 1) * step + overlapPt;
    const to = isLast ? whole : clearEnd({ ...of, wished, least, most: from + of.room });
    spans.push({ from, to });
    from = to - overlapPt;
  }
  return spans;
};

/** The end near the wished one, in whole points from it, where the strip that is shared covers least of the labels. */
const clearEnd = (of: {
  readonly wished: number;
  readonly least: number;
  readonly most: number;
  readonly overlapPt: number;
  readonly clear: readonly Stretch[];
}): number => {
  const wished = Math.min(Math.max(of.wished, of.least), of.most);
  const far = Math.ceil(of.most - of.least);
  const ends = Array.from({ length: 2 * far + 1 }, (_, k) => wished + (k % 2 === 0 ? k / 2 : -(k + 1) / 2))
    .filter((to) => to >= of.least && to <= of.most)
    .map((to) => ({ to, covers: coveredBy({ from: to - of.overlapPt, to }, of.clear) }));
  const fewest = Math.min(...ends.map(({ covers }) => covers));
  return ends.find(({ covers }) => covers <= fewest + 1e-6)?.to ?? wished;
};

const coveredBy = (strip: Stretch, spans: readonly Stretch[]): number =>
  spans.reduce((sum, { from, to }) => sum + Math.max(0, Math.min(to, strip.to) - Math.max(from, strip.from)), 0);

const middlesOf = (spans: readonly Stretch[], overlapPt: number): readonly number[] =>
  spans.slice(1).map(({ from }) => from + overlapPt / 2);

const joinMarks = (of: {
  readonly columns: readonly Stretch[];
  readonly rows: readonly Stretch[];
  readonly overlapPt: number;
  readonly whole: readonly [number, number];
  readonly diamondsAt: readonly [number, number];
}): readonly string[] => {
  const places = (spans: readonly Stretch[]): readonly number[] =>
    spans.flatMap(({ from, to }) => of.diamondsAt.map((share) => from + (to - from) * share));
  return [
    ...middlesOf(of.columns, of.overlapPt).flatMap((x) => [
      joinLine({ x, y: 0 }, { x, y: of.whole[1] }),
      ...places(of.rows).map((y) => diamond({ x, y })),
    ]),
    ...middlesOf(of.rows, of.overlapPt).flatMap((y) => [
      joinLine({ x: 0, y }, { x: of.whole[0], y }),
      ...places(of.columns).map((x) => diamond({ x, y })),
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

const drawWindow = (of: { readonly box: Box; readonly parts: readonly string[]; readonly alt: string }): Drawing => {
  const { box } = of;
  const id = 'sheet';
  const edge = { x: box.x, y: box.y, width: box.width, height: box.height };
  const inset = framePt / 2;
  const frame = { x: box.x + inset, y: box.y + inset, width: box.width - 2 * inset, height: box.height - 2 * inset };
  return picture({
    widthPt: box.width,
    heightPt: box.height,
    alt: of.alt,
    parts: [
      element('defs', {}, element('clipPath', { id }, element('rect', edge))),
      group({ transform: `translate(${numberText(-box.x)} ${numberText(-box.y)})` }, [
        group({ 'clip-path': `url(#${id})` }, [
          ...of.parts,
          element('rect', { ...frame, fill: 'none', stroke: softInk, 'stroke-width': framePt }),
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
