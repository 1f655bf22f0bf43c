import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Clipper, EndType, FillRule, JoinType, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import { at, boxOf, hullOf, isConvex, type Polygon, perimeter, quarterTurned, signedArea, turned } from '#ground/plane';
import { cutFor } from './cut.ts';
import type { CutRule } from './rule.ts';

const rule: CutRule = { seam: length(0.25), ruler: rational(1, 8) };
const precision = 6;

const near = (found: number, expected: number, tolerance = 1e-9): void =>
  assert.ok(Math.abs(found - expected) <= tolerance, `found ${found}, expected ${expected}`);

const pathsOf = (polygon: Polygon): PathsD => [polygon.map(({ x, y }) => ({ x, y }))];
const offset = (outline: Polygon, join: JoinType): PathsD =>
  Clipper.inflatePathsD(pathsOf(outline), rule.seam, join, EndType.Polygon, 1e4, precision);
const outside = (inner: PathsD, outer: PathsD): number =>
  Math.abs(Clipper.areaPathsD(Clipper.differenceD(inner, outer, FillRule.NonZero, precision)));

const coordinate = fc.integer({ min: 0, max: 48 }).map((n) => n / 4);
const point = fc.tuple(coordinate, coordinate).map(([x, y]) => at(x, y));
const clockwise = (polygon: Polygon): Polygon => (signedArea(polygon) < 0 ? polygon.toReversed() : polygon);
const triangle = fc
  .tuple(point, point, point)
  .map((corners): Polygon => clockwise(corners))
  .filter((corners) => signedArea(corners) > 0.5);
const quad = fc
  .tuple(point, point, point, point)
  .map((corners) => hullOf(corners, 1e-9))
  .filter((corners) => corners.length === 4 && signedArea(corners) > 0.5);

/** A right isosceles triangle with legs of 4, its right angle upper left. */
const corner: Polygon = [at(0, 0), at(4, 0), at(0, 4)];

test('a right isosceles triangle is a half-square where its legs follow the block, a quarter-square where its long side does', () => {
  // the grain rule: straight grain along the sides of the block
  for (const quarters of [0, 1, 2, 3]) {
    const cut = cutFor(
      corner.map((p) => quarterTurned(p, quarters)),
      rule,
    );
    assert.deepEqual([cut.shape, cut.gives, cut.size], ['half-square', 2, [4.875, 4.875]]);
    const onEdge = cutFor(
      [at(0, 0), at(4, 0), at(2, 2)].map((p) => quarterTurned(p, quarters)),
      rule,
    );
    assert.deepEqual([onEdge.shape, onEdge.gives, onEdge.size], ['quarter-square', 4, [5.25, 5.25]]);
  }
});

test('a right isosceles triangle that lies slanted, and one of unequal legs, are templates', () => {
  assert.equal(
    cutFor(
      corner.map((p) => turned(p, 0.3)),
      rule,
    ).shape,
    'template',
  );
  assert.equal(cutFor([at(0, 0), at(4, 0), at(0, 3)], rule).shape, 'template');
});

test('the triangles that squares give are those of a general-purpose library’s mitred offset', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 60 }), fc.boolean(), (n, onEdge) => {
      const side = n / 4;
      const outline = onEdge ? [at(0, 0), at(side, 0), at(side / 2, side / 2)] : [at(0, 0), at(side, 0), at(0, side)];
      const cut = cutFor(outline, rule);
      const area = Math.abs(Clipper.areaPathsD(offset(outline, JoinType.Miter)));
      near((cut.exact[0] * cut.exact[1]) / cut.gives, area, 1e-4 * side);
      // on marks it is never smaller, and by less than a mark
      assert.ok(cut.size[0] >= cut.exact[0] - 1e-9 && cut.size[0] < cut.exact[0] + 0.125);
    }),
    { seed: 51, numRuns: 150 },
  );
});

test('a rectangle grows by two allowances each way and falls on the nearest mark', () => {
  // by hand: 2.06 + 0.5 = 2.56, nearest eighth 2.5; 3.08 + 0.5 = 3.58, nearest 3.625
  const cut = cutFor([at(0, 0), at(2.06, 0), at(2.06, 3.08), at(0, 3.08)], rule);
  assert.deepEqual([cut.shape, cut.size], ['rectangle', [2.5, 3.625]]);
  near(cut.exact[0], 2.56);
  near(cut.exact[1], 3.58);
});

test('a square on its point is cut as a square', () => {
  // by hand: the diagonal of 4 gives a side of 2√2
  const cut = cutFor([at(2, 0), at(4, 2), at(2, 4), at(0, 2)], rule);
  assert.equal(cut.shape, 'square');
  near(cut.exact[0], 2 * Math.SQRT2 + 0.5);
});

test('a template leaves a whole allowance everywhere, is no larger than the mitred offset, and fits its box', () => {
  fc.assert(
    fc.property(fc.oneof(triangle, quad), (outline) => {
      const cut = cutFor(outline, rule);
      fc.pre(cut.template !== null);
      const { points, seamLine } = cut.template as NonNullable<typeof cut.template>;
      const slack = 1e-4 * perimeter(outline);
      near(signedArea(seamLine), signedArea(outline));
      // every point within an allowance of the seam line is in; arcs of the library are chords, inside the true ones
      assert.ok(outside(offset(seamLine, JoinType.Round), pathsOf(points)) < slack);
      assert.ok(outside(pathsOf(points), offset(seamLine, JoinType.Miter)) < slack);
      assert.ok(isConvex(points, 1e-9) && signedArea(points) > 0);
      const box = boxOf(points);
      near(box.x, 0);
      near(box.y, 0);
      near(box.width, cut.exact[0]);
      near(box.height, cut.exact[1]);
    }),
    { seed: 52, numRuns: 300 },
  );
});

test('the sharp tip of a template is cut off square, one allowance beyond the seam’s corner', () => {
  // by hand: legs 12 and 1; the sharp corner at 12, 0 has the angle atan(1/12); both new corners lie on a line square to
  // its middle, one allowance away
  const { template } = cutFor([at(0, 0), at(12, 0), at(0, 1)], rule);
  assert.ok(template);
  assert.equal(template.points.length, 5); // a right angle stays, two sharp corners get two points each
  const seamTip = template.seamLine.reduce((a, b) => (b.x > a.x ? b : a));
  const cuts = template.points.toSorted((a, b) => b.x - a.x).slice(0, 2);
  const half = Math.atan2(1, 12) / 2;
  // the middle line runs from the corner outward: right and, since the triangle lies below its upper side, up
  for (const p of cuts) near((p.x - seamTip.x) * Math.cos(half) - (p.y - seamTip.y) * Math.sin(half), 0.25);
});
