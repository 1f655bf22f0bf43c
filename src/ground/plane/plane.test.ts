import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Clipper, EndType, FillRule, JoinType, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import {
  at,
  boxOf,
  centroid,
  grown,
  hullOf,
  isConvex,
  offLine,
  type Point,
  type Polygon,
  perimeter,
  quarterTurned,
  signedArea,
  turned,
  withoutStraightCorners,
} from './index.ts';

const near = (found: number, expected: number, tolerance: number): void =>
  assert.ok(Math.abs(found - expected) <= tolerance, `found ${found}, expected ${expected}`);

/** Decimal places that the other library keeps. */
const precision = 6;
const pathsOf = (...polygons: readonly Polygon[]): PathsD =>
  polygons.map((polygon) => polygon.map(({ x, y }) => ({ x, y })));
const unionArea = (...polygons: readonly Polygon[]): number =>
  Clipper.areaPathsD(Clipper.unionD(pathsOf(...polygons), [], FillRule.NonZero, precision));
const differing = (a: PathsD, b: PathsD): number =>
  Math.abs(Clipper.areaPathsD(Clipper.xorD(a, b, FillRule.NonZero, precision)));

const square: Polygon = [at(0, 0), at(2, 0), at(2, 2), at(0, 2)];
/** 3 × 3 without its lower right 1 × 1... an L, clockwise on screen. */
const bent: Polygon = [at(0, 0), at(3, 0), at(3, 2), at(2, 2), at(2, 3), at(0, 3)];

const coordinate = fc.integer({ min: -40, max: 40 }).map((n) => n / 4);
const point = fc.tuple(coordinate, coordinate).map(([x, y]) => at(x, y));
/** Convex, clockwise, no thin ones: the hull of a few random points. */
const convex = fc
  .array(point, { minLength: 3, maxLength: 7 })
  .map((points) => hullOf(points, 1e-9))
  .filter((hull) => hull.length >= 3 && signedArea(hull) > 1);

test('area is positive clockwise on screen and negative the other way round', () => {
  // by hand: 2 · 2; 3 · 3 − 1
  assert.equal(signedArea(square), 4);
  assert.equal(signedArea(square.toReversed()), -4);
  assert.equal(signedArea(bent), 8);
});

test('perimeter, box and centre of an L are those by hand', () => {
  assert.equal(perimeter(bent), 12);
  assert.deepEqual(boxOf(bent), { x: 0, y: 0, width: 3, height: 3 });
  // by hand: the 3 × 3 about 1.5 less the missing 1 × 1 about 2.5: (9 · 1.5 − 2.5) / 8
  const centre = centroid(bent);
  near(centre.x, 1.375, 1e-12);
  near(centre.y, 1.375, 1e-12);
});

test('a quarter turn brings right to below, and four are none', () => {
  assert.deepEqual(quarterTurned(at(1, 0), 1), { x: -0, y: 1 });
  assert.deepEqual(quarterTurned(at(1, 0), -1), { x: 0, y: -1 });
  fc.assert(
    fc.property(point, fc.integer({ min: -9, max: 9 }), (p, quarters) => {
      const q = quarterTurned(p, quarters);
      const slow = turned(p, (quarters * Math.PI) / 2);
      near(q.x, slow.x, 1e-12);
      near(q.y, slow.y, 1e-12);
      const back = quarterTurned(q, 4 - quarters);
      assert.ok(back.x === p.x && back.y === p.y);
    }),
    { seed: 31, numRuns: 100 },
  );
});

test('what lies right of a line walked upward is positive, by its distance', () => {
  // by hand, y down: walking up from 0,4 to 0,0, the right hand is x > 0
  assert.equal(offLine(at(0, 4), at(0, 0), at(3, 1)), 3);
  assert.equal(offLine(at(0, 4), at(0, 0), at(-2, 1)), -2);
});

test('corners on a straight side go, and only those', () => {
  const drawn: Polygon = [at(0, 0), at(1, 0), at(2, 0), at(2, 2), at(0, 2), at(0, 1)];
  assert.deepEqual(withoutStraightCorners(drawn, 1e-9), square);
  assert.deepEqual(withoutStraightCorners(bent, 1e-9), bent);
});

test('a square is convex and an L is not', () => {
  assert.ok(isConvex(square, 1e-9));
  assert.ok(!isConvex(bent, 1e-9));
});

test('area agrees with a general-purpose library on random outlines', () => {
  fc.assert(
    fc.property(convex, (polygon) => near(signedArea(polygon), Clipper.areaD(pathsOf(polygon)[0] ?? []), 1e-9)),
    { seed: 32, numRuns: 200 },
  );
});

test('points one above another but for rounding give a hull without a spike', () => {
  // a right-angled strip of which the left edge is off by the last bit of a double (seen in sets on point)
  const points = [at(0, 5), at(0, 10), at(1e-15, 0), at(4, 0), at(4, 10), at(4 + 1e-15, 5)];
  assert.deepEqual(
    hullOf(points, 1e-9).map((p) => [Math.round(p.x), p.y]),
    [
      [0, 0],
      [4, 0],
      [4, 10],
      [0, 10],
    ],
  );
});

test('the hull of points is as large as all triangles of them together', () => {
  // a general-purpose library joins the triangles, so it knows nothing of hulls
  fc.assert(
    fc.property(fc.array(point, { minLength: 3, maxLength: 7 }), (points) => {
      const hull = hullOf(points, 1e-9);
      const triangles = points.flatMap((a, i) =>
        points.slice(i + 1).flatMap((b, j) => points.slice(i + j + 2).map((c): Polygon => clockwise([a, b, c]))),
      );
      near(hull.length < 3 ? 0 : signedArea(hull), unionArea(...triangles), 1e-4);
      assert.ok(hull.length < 3 || isConvex(hull, 1e-9));
    }),
    { seed: 33, numRuns: 200 },
  );
});

const clockwise = (polygon: Polygon): Polygon => (signedArea(polygon) < 0 ? polygon.toReversed() : polygon);

test('an outline grown by an allowance is the mitred offset of a general-purpose library', () => {
  const triangle = fc
    .tuple(point, point, point)
    .map((corners): Polygon => clockwise(corners))
    .filter((corners) => signedArea(corners) > 1);
  fc.assert(
    fc.property(fc.oneof(triangle, convex, fc.constant(bent)), fc.constantFrom(0.25, 0.375, 0.75), (outline, by) => {
      const other = Clipper.inflatePathsD(pathsOf(outline), by, JoinType.Miter, EndType.Polygon, 1e4, precision);
      assert.ok(differing(pathsOf(grown(outline, by)), other) < 1e-4 * perimeter(outline));
      near(signedArea(grown(outline, by)), Math.abs(Clipper.areaPathsD(other)), 1e-4 * perimeter(outline));
    }),
    { seed: 34, numRuns: 300 },
  );
});

test('every side of a grown outline lies one allowance outside its own', () => {
  fc.assert(
    fc.property(convex, (outline) => {
      const wide = grown(outline, 0.25);
      outline.forEach((a, i) => {
        const b = outline[(i + 1) % outline.length] as Point;
        near(offLine(a, b, wide[i] as Point), -0.25, 1e-9);
        near(offLine(a, b, wide[(i + 1) % wide.length] as Point), -0.25, 1e-9);
      });
    }),
    { seed: 35, numRuns: 200 },
  );
});
