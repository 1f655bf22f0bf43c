// Seams and cut sizes out of plans of whole quilts; templates measured off their cut outline.

import assert from 'node:assert/strict';
import type { BlockPlan, PlannedPiece, TopPlan } from '#craft';
import { type Cut, cutFor } from '#craft/cutting';
import { length, toNearestMark } from '#craft/measure';
import { rational } from '#ground/exact';
import { at, boxOf, distance, grown, offLine, type Point, type Polygon } from '#ground/plane';
import {
  cloths,
  near,
  only,
  plainBlock,
  planned,
  quilt,
  rails,
  setOf,
  type Written,
} from '../../documents/documents.ts';
import { drawnBlock } from '../../documents/drawn.ts';
import { agrees, type Checks, checkOf } from './case.ts';

const blockOf = (block: Written, more: Written = {}): BlockPlan =>
  only(planned(quilt({ ...more, blocks: [block], top: setOf(block.id as string) })).blocks);

/** Strips cut this wide, sewn with this seam. */
const sewn = ({ strips, cut, seam }: { readonly strips: number; readonly cut: number; readonly seam: number }) => {
  const block = blockOf(rails('rails', { count: strips, width: 6, height: cut - 2 * seam }), { seam, ruler: '1/32' });
  for (const piece of block.pieces) assert.equal(piece.cut.size[1], cut);
  const middle = boxOf(block.patches[1]?.points ?? []).height;
  return { middle, total: block.steps.at(-1)?.unfinished[1] as number };
};

const ofShape = (pieces: readonly PlannedPiece[], shape: Cut['shape']): Cut => {
  const piece = pieces.find(({ cut }) => cut.shape === shape);
  assert.ok(piece, `no ${shape}`);
  return piece.cut;
};

interface Ruled {
  readonly seam: number;
  /** Finest mark of the ruler. */
  readonly step: number;
}

/** What a document says of sewing and cutting. */
const ruled = ({ seam, step }: Ruled): Written => ({ seam, ruler: step });

/** The pieces of one unit that fills its block. */
const unit = (of: {
  readonly kind: string;
  readonly size: readonly [number, number];
  readonly ruled: Ruled;
  /** Singly where missing. */
  readonly way?: string;
}) => {
  const span = of.size[0] === of.size[1] ? [1, 1] : [2, 1];
  const filled = { at: [0, 0], span, unit: of.kind, turn: 0, tones: tonesOf[of.kind] };
  const block = { id: 'unit', size: of.size, recipe: { kind: 'units', grid: span, units: [filled] } };
  const methods = of.way === undefined ? [] : [{ unit: of.kind, way: of.way }];
  return blockOf(block, { ...ruled(of.ruled), methods }).pieces;
};

/** The cut of one cloth of a unit, and how many of it a set takes. */
const cutOf = (pieces: readonly PlannedPiece[], tone: string): Cut => {
  const piece = pieces.find((one) => one.tone === tone);
  assert.ok(piece, `nothing of ${tone}`);
  return piece.cut;
};

const tonesOf: Readonly<Record<string, readonly string[]>> = {
  'half-square': ['light', 'dark'],
  'quarter-square': ['light', 'dark', 'light', 'dark'],
  'flying-geese': ['dark', 'light'],
};

/** Squares of one size on point, and the triangles round them. */
const onPoint = (of: { readonly count: number; readonly side: number } & Ruled): TopPlan => {
  const { count, side } = of;
  const grid = (n: number) => Array.from({ length: n }, () => Array.from({ length: n }, () => ({ block: 'b' })));
  return planned(
    quilt({
      ...ruled(of),
      fabrics: cloths(110),
      blocks: [plainBlock('b', side, side)],
      top: { set: 'on-point', rows: grid(count), between: grid(count - 1), settingFabric: 'light' },
    }),
  ).top;
};

const triangle = (top: TopPlan, role: string): number =>
  top.pieces.find((piece) => piece.role === role)?.cut.size[0] as number;

const eighths = rational(1, 8);

const outlineFrom = (points: Polygon, seam: number) => {
  const { template } = cutFor(points, { seam: length(seam), ruler: eighths });
  assert.ok(template);
  return template;
};

/** Distance between the nearest two parallel sides. */
const betweenParallels = (outline: Polygon): number => {
  const side = (i: number) => [outline[i], outline[(i + 1) % outline.length]] as [Point, Point];
  const apart = outline.flatMap((_, i) =>
    outline.flatMap((_, j) => {
      const [[a, b], [c, d]] = [side(i), side(j)];
      const [near, far] = [offLine(a, b, c), offLine(a, b, d)];
      return i !== j && Math.abs(near - far) < 1e-9 && near > 1e-9 ? [near] : [];
    }),
  );
  return Math.min(...apart);
};

const onMark = (size: number): number => toNearestMark(length(size), eighths).size;

const regular = (corners: number, radius: number): Polygon =>
  Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners - Math.PI / 2;
    return at(radius * Math.cos(angle), radius * Math.sin(angle));
  });

interface Sized extends Ruled {
  readonly f: number;
}

export const cutSizes: Checks = {
  strip_test: checkOf<{ strips: number; cut: number; seam: number }, object>((of) => agrees(sewn(of.inputs), of)),

  seam_error_systematic: checkOf<{ seams: number; error: number }, object>((of) => {
    const { seams, error } = of.inputs;
    const total = (seam: number) => sewn({ strips: seams + 1, cut: 1.5, seam }).total;
    agrees({ change: total(0.25 + error) - total(0.25) }, of);
  }),

  rect_cut: checkOf<{ w: number; h: number; seam: number }, object>((of) => {
    const { w, h, seam } = of.inputs;
    const [width, height] = only(blockOf(plainBlock('b', w, h), { seam }).pieces).cut.size;
    agrees({ w: width, h: height }, of);
  }),

  hst_square: checkOf<Sized, object>((of) => {
    const { f } = of.inputs;
    const { exact, size, gives } = ofShape(
      unit({ kind: 'half-square', size: [f, f], ruled: of.inputs }),
      'half-square',
    );
    assert.equal(gives, 2);
    const pair = unit({ kind: 'half-square', size: [f, f], ruled: of.inputs, way: 'two-at-a-time' });
    for (const { cut } of pair) assert.deepEqual([cut.size[0], cut.gives, cut.perSet], [size[0], 2, 1]);
    agrees({ exact: exact[0], cut: size[0] }, of);
  }),

  qst_square: checkOf<Sized, object>((of) => {
    const { f } = of.inputs;
    const { exact, size, gives } = ofShape(
      unit({ kind: 'quarter-square', size: [f, f], ruled: of.inputs }),
      'quarter-square',
    );
    assert.equal(gives, 4);
    const pair = unit({ kind: 'quarter-square', size: [f, f], ruled: of.inputs, way: 'from-half-squares' });
    for (const { cut } of pair) assert.deepEqual([cut.size[0], cut.gives, cut.perSet], [size[0], 4, 1]);
    agrees({ exact: exact[0], cut: size[0] }, of);
  }),

  hst_eight_at_once: checkOf<Sized, object>((of) => {
    const { f } = of.inputs;
    const pieces = unit({ kind: 'half-square', size: [f, f], ruled: of.inputs, way: 'eight-at-a-time' });
    const { exact, size, gives, perSet } = cutOf(pieces, 'light');
    assert.deepEqual([gives, perSet], [8, 1]);
    assert.deepEqual(cutOf(pieces, 'dark').size, size);
    agrees({ exact: exact[0], cut: size[0] }, of);
  }),

  // one large square and four small ones give four
  geese_no_waste: checkOf<Ruled & { w: number }, object>((of) => {
    const { w } = of.inputs;
    const asked = { kind: 'flying-geese', size: [w, w / 2], ruled: of.inputs } as const;
    const pieces = unit({ ...asked, way: 'four-at-a-time' });
    const [large, small] = [cutOf(pieces, 'dark'), cutOf(pieces, 'light')];
    assert.deepEqual([large.gives, large.perSet, small.gives, small.perSet], [4, 1, 2, 4]);
    // cut as triangles they come from the same squares
    const singly = unit(asked);
    assert.equal(ofShape(singly, 'quarter-square').size[0], large.size[0]);
    assert.equal(ofShape(singly, 'half-square').size[0], small.size[0]);
    agrees({ large: large.size[0], small: small.size[0] }, of);
  }),

  geese_flip: checkOf<{ w: number; seam: number }, object>((of) => {
    const { w, seam } = of.inputs;
    const ruled = { seam, step: 0.125 };
    const pieces = unit({ kind: 'flying-geese', size: [w, w / 2], ruled, way: 'sew-and-flip' });
    const [base, square] = [cutOf(pieces, 'dark'), cutOf(pieces, 'light')];
    assert.deepEqual([base.perSet, square.perSet], [1, 2]);
    agrees({ rect_w: base.size[0], rect_h: base.size[1], square: square.size[0] }, of);
  }),

  // one square on point with its four corners
  square_in_square: checkOf<Ruled & { centre: number }, object>((of) => {
    const top = onPoint({ ...of.inputs, count: 1, side: of.inputs.centre });
    agrees({ corner_cut: triangle(top, 'corner-triangle'), finished: top.set.width }, of);
  }),

  on_point_triangles: checkOf<Ruled & { block: number }, object>((of) => {
    const top = onPoint({ ...of.inputs, count: 2, side: of.inputs.block });
    agrees({ corner: triangle(top, 'corner-triangle'), side: triangle(top, 'side-triangle') }, of);
  }),

  turned_twice: checkOf<{ block: number }, object>((of) => {
    const sideOf = (side: number) => onPoint({ count: 1, side, seam: 0.25, step: 0.125 }).set.width;
    const once = sideOf(of.inputs.block);
    agrees({ once, twice: sideOf(Number(once.toFixed(6))) }, of);
  }),

  triangle60_strip: checkOf<{ height: number; seam: number }, object>((of) => {
    const { height, seam } = of.inputs;
    const { points, seamLine } = outlineFrom(regular(3, (2 * height) / 3), seam);
    const level = [...points].sort((a, b) => a.y - b.y);
    const [left, right] = level as [Point, Point];
    assert.ok(Math.abs(left.y - right.y) < 1e-9);
    const pointed = boxOf(grown(seamLine, seam)).height;
    const [way] = cutFor(seamLine, { seam: length(seam), ruler: rational(1, 1_000_000) }).ways ?? [];
    assert.ok(way);
    near(way.exact[0], boxOf(points).height);
    near(way.row.top, distance(left, right), 1e-5);
    agrees({ pointed, blunt: way.exact[0], tip: way.row.top }, of);
  }),

  diamond45_strip: checkOf<{ side: number; seam: number }, object>((of) => {
    const { side, seam } = of.inputs;
    const slant = side * Math.SQRT1_2;
    const diamond = [at(slant, 0), at(slant + side, 0), at(side, slant), at(0, slant)];
    const [way] = cutFor(diamond, { seam: length(seam), ruler: eighths }).ways ?? [];
    assert.ok(way);
    near(way.exact[0], betweenParallels(outlineFrom(diamond, seam).points));
    agrees({ exact: way.exact[0], cut: way.size[0] }, of);
  }),

  hexagon_strip: checkOf<{ side: number; seam: number }, object>((of) => {
    const { points } = outlineFrom(regular(6, of.inputs.side), of.inputs.seam);
    const exact = betweenParallels(points);
    agrees({ exact, cut: onMark(exact), cut_side: distance(points[0] as Point, points[1] as Point) }, of);
  }),

  // the corner square must match the diamonds untrimmed, so both go to the nearest mark; the edge triangle goes up
  lemoyne_parts: checkOf<Ruled & { block: number }, object>((of) => {
    const { pieces } = blockOf(drawnBlock('lemoyne_star', of.inputs.block), ruled(of.inputs));
    const diamond = ofShape(pieces, 'angled');
    agrees(
      {
        side: diamond.finished[0] * Math.SQRT2,
        strip: diamond.size[0],
        corner: ofShape(pieces, 'square').size[0],
        edge: ofShape(pieces, 'quarter-square').size[0],
      },
      of,
    );
  }),
};
