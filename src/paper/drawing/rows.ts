// The middle of the top by rows: the rows pulled apart and numbered, each block as it is turned, a small
// pointer at the block's own top where any block is turned, and the way a row's seams are pressed. On point the
// rows slant, and the four corners stand off.

import type { QuiltPlan } from '#craft';
import { type TopRow, type TopThing, thingsOf } from '#craft/setting';
import { dot, type Point, type Polygon } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { arrow } from './arrow.ts';
import { hairlinePt, ink, lettering } from './ink.ts';
import { blockDefinitions } from './quilt.ts';
import { isSlanted, rowStepsOf } from './row-steps.ts';
import type { Drawing } from './svg.ts';
import { group, numberText, picture } from './svg.ts';
import { drawThing, outlineInTop, penFor, type ThingPen } from './things.ts';

export interface RowsPicture {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}

const numbersPt = 24;
const arrowsPt = 26;

export const drawRows = (of: RowsPicture): Drawing => (isSlanted(of.plan) ? drawSlanted(of) : drawLevel(of));

const drawLevel = (of: RowsPicture): Drawing => {
  const { set } = of.plan.top;
  const apart = Math.min(9, (of.fitPt[1] * 0.25) / set.rows.length);
  const scale = Math.min(
    (of.fitPt[0] - numbersPt - arrowsPt) / set.middle.width,
    (of.fitPt[1] - apart * set.rows.length) / set.middle.height,
  );
  const pen = penFor({ ...of, scale });
  const origin = { x: numbersPt - set.middle.x * scale, y: 1 - set.middle.y * scale };
  return picture({
    widthPt: set.middle.width * scale + numbersPt + arrowsPt,
    heightPt: set.middle.height * scale + apart * Math.max(0, set.rows.length - 1) + 2,
    alt: of.alt,
    parts: [
      blockDefinitions({ blocks: of.plan.blocks, signs: of.signs, scale }),
      ...set.rows.map((row, index) =>
        drawRow({ pen, row, index, axes: level, move: { x: origin.x, y: origin.y + index * apart } }),
      ),
    ],
  });
};

/** How far the two corners at the rows' ends stand off, clear of the numbers and of the arrows. */
const standOff = { start: 22, end: 30 } as const;
const slantedEdgePt = 24;

const drawSlanted = (of: RowsPicture): Drawing => {
  const { plan } = of;
  const { set } = plan.top;
  const apart = Math.min(10, (Math.min(...of.fitPt) * 0.3) / set.rows.length);
  const spread = (apart * (set.rows.length + 1)) / Math.SQRT2;
  const edges = 2 * slantedEdgePt;
  const scale = Math.min(
    (of.fitPt[0] - spread - edges) / set.middle.width,
    (of.fitPt[1] - spread - edges) / set.middle.height,
  );
  const pen = penFor({ ...of, scale });
  const origin = {
    x: slantedEdgePt + apart / Math.SQRT2 - set.middle.x * scale,
    y: slantedEdgePt + apart / Math.SQRT2 - set.middle.y * scale,
  };
  const moved = (by: { readonly rows: number; readonly along: number }): Point => ({
    x: origin.x + slanted.next.x * by.rows * apart + slanted.along.x * by.along,
    y: origin.y + slanted.next.y * by.rows * apart + slanted.along.y * by.along,
  });
  const corners = cornersOf(plan).map((thing) =>
    drawGroup({ pen, things: [thing], move: moved(cornerMove(plan, thing)), marks: [] }),
  );
  return picture({
    widthPt: set.middle.width * scale + spread + edges,
    heightPt: set.middle.height * scale + spread + edges,
    alt: of.alt,
    parts: [
      blockDefinitions({ blocks: plan.blocks, signs: of.signs, scale }),
      ...corners,
      ...set.rows.map((row, index) =>
        drawRow({ pen, row, index, axes: slanted, move: moved({ rows: index, along: 0 }) }),
      ),
    ],
  });
};

/** Unit vectors along a row and to the next one, in the top's frame. */
interface Axes {
  readonly along: Point;
  readonly next: Point;
}

const level: Axes = { along: { x: 1, y: 0 }, next: { x: 0, y: 1 } };
const slanted: Axes = {
  along: { x: Math.SQRT1_2, y: -Math.SQRT1_2 },
  next: { x: Math.SQRT1_2, y: Math.SQRT1_2 },
};

interface Span {
  readonly from: number;
  readonly to: number;
}

const spanOf = (points: readonly Point[], way: Point): Span => {
  const at = points.map((p) => dot(p, way));
  return { from: Math.min(...at), to: Math.max(...at) };
};

const middleOf = ({ from, to }: Span): number => (from + to) / 2;

const cornersOf = (plan: QuiltPlan): readonly TopThing[] => {
  const { assembly } = plan.top.set;
  return 'core' in assembly ? assembly.round.parts.flatMap((part) => thingsOf(part.assembly)) : [];
};

/** Across the rows a corner goes with the rows that it touches; those at the rows' ends also stand off along them. */
const cornerMove = (plan: QuiltPlan, thing: TopThing): { readonly rows: number; readonly along: number } => {
  const { rows, middle } = plan.top.set;
  const outline = outlineInTop(plan, thing);
  const across = (row: TopRow | undefined): number =>
    middleOf(spanOf(row?.parts.flatMap((part) => outlineInTop(plan, part)) ?? outline, slanted.next));
  const [first, last] = [across(rows[0]), across(rows.at(-1))];
  const at = middleOf(spanOf(outline, slanted.next));
  const rowAt = last > first ? ((rows.length - 1) * (at - first)) / (last - first) : 0;
  if (at < first) return { rows: -1, along: 0 };
  if (at > last) return { rows: rows.length, along: 0 };
  const isStart =
    middleOf(spanOf(outline, slanted.along)) <
    dot({ x: middle.x + middle.width / 2, y: middle.y + middle.height / 2 }, slanted.along);
  return { rows: rowAt, along: isStart ? -standOff.start : standOff.end };
};

interface RowPlace {
  readonly pen: ThingPen;
  readonly row: TopRow;
  readonly index: number;
  readonly axes: Axes;
  readonly move: Point;
}

const drawRow = ({ pen, row, index, axes, move }: RowPlace): string => {
  const { plan, scale } = pen;
  const outlines = row.parts.map((part) => outlineInTop(plan, part));
  const across = spanOf(outlines.flat(), axes.next);
  const along = crossing(outlines, axes, middleOf(across));
  const at = (u: number): Point => {
    const v = middleOf(across) * scale;
    return { x: axes.along.x * u + axes.next.x * v, y: axes.along.y * u + axes.next.y * v };
  };
  const start = along.from * scale;
  const end = along.to * scale;
  const direction = rowPressOf(plan, index);
  const sizePt = (across.to - across.from) * scale < 9 ? 6.5 : 10;
  const number = at(start - (axes === level ? 8 : 10));
  return drawGroup({
    pen,
    things: row.parts,
    move,
    marks: [
      lettering({
        text: String(index + 1),
        x: number.x,
        y: number.y,
        sizePt,
        anchor: axes === level ? 'end' : 'middle',
        weight: 600,
      }),
      direction === 'left' ? arrow({ from: at(end + 23), to: at(end + 7), heads: 'one' }) : '',
      direction === 'right' ? arrow({ from: at(end + 7), to: at(end + 23), heads: 'one' }) : '',
    ],
  });
};

/** From where to where the middle line of a row lies in its parts: a triangle's edge is met half-way. */
const crossing = (outlines: readonly Polygon[], axes: Axes, line: number): Span => {
  const met = outlines.flatMap((outline) =>
    outline.flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length] ?? a;
      const [above, below] = [dot(a, axes.next) - line, dot(b, axes.next) - line];
      if (above > 0 === below > 0) return [];
      const share = above / (above - below);
      return [dot(a, axes.along) * (1 - share) + dot(b, axes.along) * share];
    }),
  );
  return { from: Math.min(...met), to: Math.max(...met) };
};

const drawGroup = (of: {
  readonly pen: ThingPen;
  readonly things: readonly TopThing[];
  readonly move: Point;
  readonly marks: readonly string[];
}): string =>
  group({ transform: `translate(${numberText(of.move.x)} ${numberText(of.move.y)})` }, [
    group(
      { stroke: ink, 'stroke-width': hairlinePt, 'stroke-linejoin': 'round' },
      of.things.flatMap((thing) => drawThing(of.pen, thing)),
    ),
    ...of.marks,
  ]);

/** Left or right, seen along the row, where every seam of it is pressed one way; null where they differ or there are none. */
export const rowPressOf = (plan: QuiltPlan, row: number): 'left' | 'right' | null => {
  const ways = new Set(
    rowStepsOf(plan, row).map(({ pressTo, side }) =>
      pressTo === 'open' ? 'open' : (pressTo === 1) === (side === 'right') ? 'right' : 'left',
    ),
  );
  const [way] = ways;
  return ways.size === 1 && (way === 'left' || way === 'right') ? way : null;
};
