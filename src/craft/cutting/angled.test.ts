import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Clipper, FillRule, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import { at, boxOf, distance, grown, type Point, type Polygon, perimeter, signedArea, turned } from '#ground/plane';
import { type StripWay, stripWaysFor } from './angled.ts';
import { mostInRow, rowLength, rowOutlines } from './angled-row.ts';

const seam = length(0.25);
const eighths = { seam, ruler: rational(1, 8) };
/** So fine that nothing is rounded that shows here. */
const exactly = { seam, ruler: rational(1, 10_000_000) };

const near = (found: number, expected: number, tolerance = 1e-6): void =>
  assert.ok(Math.abs(found - expected) <= tolerance, `found ${found}, expected ${expected}`);

const waysOf = (outline: Polygon, rule = eighths): readonly StripWay[] =>
  stripWaysFor(outline, rule).map(({ way }) => way);
const first = (outline: Polygon): StripWay => {
  const [way] = waysOf(outline);
  assert.ok(way);
  return way;
};

/** Clockwise on screen. */
const clockwise = (polygon: Polygon): Polygon => (signedArea(polygon) < 0 ? polygon.toReversed() : polygon);
const trapezoid = (of: { bottom: number; top: number; height: number; lean: number }): Polygon => [
  at(of.lean, 0),
  at(of.lean + of.top, 0),
  at(of.bottom, of.height),
  at(0, of.height),
];
const diamond = (side: number, degrees: number): Polygon => {
  const angle = (degrees * Math.PI) / 180;
  return trapezoid({ bottom: side, top: side, height: side * Math.sin(angle), lean: side * Math.cos(angle) });
};

const third = Math.sqrt(3);
/** Level base of 2·height/√3, tip on top. */
const equilateral = (height: number): Polygon => [
  at(height / third, 0),
  at((2 * height) / third, height),
  at(0, height),
];

test('a diamond of 45 degrees with sides of 4 in comes from a strip of 3.328427 in, up to the mark 3 3/8, by a template', () => {
  // derived: f/√2 + 2s, and a rhombus is as high on each of its sides; by hand: no mark is within 1/32
  const way = first(diamond(4, 45));
  near(way.exact[0], 3.328427);
  // in the plan's words "up": the template itself keeps its outline
  assert.deepEqual([way.size[0], way.cuts, way.angles, way.cutBy], [3.375, 'parallel', [45, 135], 'template']);
});

test('the diamonds of an eight-pointed star of 12 in come from strips of 3 in, cut every 3 in by the ruler', () => {
  // derived: side 12/(2 + √2), strip side/√2 + 2s = 2.985281, 0.0147 off the mark and so under 1/32
  const way = first(diamond(12 / (2 + Math.SQRT2), 45));
  near(way.exact[0], 2.985281);
  assert.deepEqual([...way.size, way.cutBy], [3, 3, 'ruler']);
});

test('a diamond of 60 degrees with sides of 2 in comes from a strip of f√3/2 + 2s', () => {
  // derived: 1.732051 + 0.5
  near(first(diamond(2, 60)).exact[0], 2.232051);
});

test('an equilateral triangle is blunted at its tip: height + 2s, with a flat tip of 2s/√3', () => {
  // derived: f + 2s; the triangle grown by s stands 2s above the seam’s tip, of which s is cut off, so 2·s·tan 30°
  for (const way of waysOf(equilateral(3), exactly)) {
    near(way.exact[0], 3.5);
    near(way.row.top, 0.5 / third);
    // long side f·2/√3 grown by 2s√3
    near(way.row.bottom, 6 / third + 0.5 * third);
    assert.deepEqual([way.cuts, way.angles], ['alternate', [60, 60]]);
  }
});

test('half a hexagon with sides of 2 in is cut 4 + 2s√3 on its long side and 2 + 2s/√3 on its short one', () => {
  // derived: long 2f + 2s√3, short f + 2s/√3, strip f√3/2 + 2s
  const way = first(trapezoid({ bottom: 4, top: 2, height: third, lean: 1 }));
  near(way.exact[0], third + 0.5);
  near(way.exact[1], 4 + 0.5 * third);
  const [exact] = waysOf(trapezoid({ bottom: 4, top: 2, height: third, lean: 1 }), exactly);
  near(exact?.row.top as number, 2 + 0.5 / third);
  assert.deepEqual(way.angles, [60, 60]);
});

test('a piece is cut by a template where the ruler lacks its angle, or its marks are off by more than 1/32 in', () => {
  // by hand: an angle of 50 degrees; a diamond of 60 degrees with a strip of 2 1/2 in exactly and one of 2.56, 0.06 off
  const high = (strip: number): Polygon => diamond((strip - 0.5) / Math.sin(Math.PI / 3), 60);
  assert.equal(first(diamond(3, 50)).cutBy, 'template');
  assert.equal(first(high(2.5)).cutBy, 'ruler');
  assert.equal(first(high(2.56)).cutBy, 'template');
  // a strip for templates is never narrower than they are
  assert.equal(first(high(2.56)).size[0], 2.625);
});

test('mirror images have ways of their own, half turns and pieces that are their own mirror image have not', () => {
  const mirrored = (outline: Polygon): Polygon => outline.map((p) => at(-p.x, p.y)).toReversed();
  const keys = (outline: Polygon) =>
    waysOf(outline)
      .map(({ key }) => key)
      .sort();
  const mirrorKeys = (outline: Polygon) =>
    waysOf(outline)
      .map(({ mirrorKey }) => mirrorKey)
      .sort();
  const leaning = trapezoid({ bottom: 4, top: 4, height: 1, lean: 1 });
  const uneven = trapezoid({ bottom: 4, top: 2, height: 1, lean: 0 });
  for (const outline of [leaning, uneven]) {
    assert.notDeepEqual(keys(outline), keys(mirrored(outline)));
    assert.deepEqual(mirrorKeys(outline), keys(mirrored(outline)));
    assert.deepEqual(keys(outline), keys(outline.map((p) => turned(p, 2.1))));
  }
  for (const outline of [diamond(3, 45), equilateral(2), trapezoid({ bottom: 4, top: 2, height: 1, lean: 1 })])
    assert.deepEqual(keys(outline), keys(mirrored(outline)));
});

test('shapes without parallel sides and bent ones have no way', () => {
  assert.deepEqual(waysOf([at(0, 0), at(4, 1), at(5, 5), at(0, 3)]), []);
  assert.deepEqual(waysOf([at(0, 0), at(4, 0), at(1, 1), at(0, 4)]), []);
});

const side = fc.integer({ min: 2, max: 40 }).map((n) => n / 4);
const slope = fc.integer({ min: -24, max: 24 }).map((n) => n / 4);
const inStrip = fc
  .oneof(
    fc.record({ bottom: side, top: side, height: side, lean: slope }).map(trapezoid),
    fc.tuple(side, side, slope).map(([s, height, lean]) => trapezoid({ bottom: s, top: s, height, lean })),
    fc
      .tuple(side, side, slope)
      .map(([bottom, height, lean]): Polygon => [at(lean, 0), at(bottom, height), at(0, height)]),
  )
  .chain((outline) =>
    fc.double({ min: 0, max: 6.3, noNaN: true }).map((a) => clockwise(outline.map((p) => turned(p, a)))),
  );

const paths = (polygon: Polygon): PathsD => [polygon.map(({ x, y }) => ({ x, y }))];
const shared = (a: Polygon, b: Polygon): number =>
  Math.abs(Clipper.areaPathsD(Clipper.intersectD(paths(a), paths(b), FillRule.NonZero, 6)));

/** Sides and diagonals in walking order: the same for outlines that one motion of the plane lays on each other. */
const sameButForMotion = (a: Polygon, b: Polygon, tolerance: number): boolean =>
  a.length === b.length &&
  a.some((_, shift) =>
    a.every((p, i) =>
      a.every((q, j) => {
        const [r, s] = [b[(i + shift) % b.length], b[(j + shift) % b.length]] as [Point, Point];
        return Math.abs(distance(p, q) - distance(r, s)) <= tolerance;
      }),
    ),
  );

/** What is cut: the sharp offset, and of a triangle only what lies between the base and one allowance beyond the tip. */
const cutOutline = (outline: Polygon, on: readonly [Point, Point]): Polygon => {
  const sharp = grown(outline, seam);
  if (outline.length === 4) return sharp;
  const [a, b] = on;
  const unit = at((b.x - a.x) / distance(a, b), (b.y - a.y) / distance(a, b));
  const deep = (2 * signedArea(outline)) / distance(a, b) + seam;
  const to = (along: number, inward: number): Point =>
    at(a.x + unit.x * along - unit.y * inward, a.y + unit.y * along + unit.x * inward);
  const far = 1000;
  const band = [to(-far, -1), to(far, -1), to(far, deep), to(-far, deep)];
  const [kept] = Clipper.intersectD(paths(sharp), paths(band), FillRule.NonZero, 8);
  return clockwise((kept ?? []).map(({ x, y }) => at(x, y)));
};

test('nested pieces lie inside their strip, apart from each other, and each is the cut outline', () => {
  fc.assert(
    fc.property(inStrip, fc.integer({ min: 1, max: 6 }), (outline, count) => {
      for (const { way, side: on } of stripWaysFor(outline, exactly)) {
        const slack = 1e-4 * perimeter(outline);
        const row = rowOutlines(way.row, count);
        const box = boxOf(row.flat());
        near(box.x, 0);
        near(box.y, 0);
        near(box.width, rowLength(way.row, count));
        near(box.height, way.exact[0], 1e-6);
        const expected = cutOutline(outline, on);
        row.forEach((piece, i) => {
          assert.ok(signedArea(piece) > 0);
          assert.ok(sameButForMotion(piece, expected, slack), JSON.stringify([piece, expected]));
          for (const other of row.slice(i + 1)) assert.ok(shared(piece, other) < slack);
        });
      }
    }),
    { seed: 61, numRuns: 120 },
  );
});

test('a template out of a strip has its seam line one allowance inside on every side that is sewn', () => {
  fc.assert(
    fc.property(inStrip, (outline) => {
      for (const { way, side: on } of stripWaysFor(outline, exactly)) {
        const [cut] = rowOutlines(way.row, 1);
        const sharp = cutOutline(way.seamLine, levelSide(way.seamLine, way.row.height));
        assert.ok(cut && sameButForMotion(way.seamLine, outline, 1e-6), JSON.stringify(on));
        // not only alike: at the very same place
        for (const p of sharp) assert.ok(cut.some((q) => distance(p, q) < 1e-4 * perimeter(outline)));
      }
    }),
    { seed: 64, numRuns: 150 },
  );
});

/** The lowest side, one allowance above the strip's lower edge. */
const levelSide = (outline: Polygon, height: number): readonly [Point, Point] => {
  const i = outline.findIndex((p, k) => {
    const q = outline[(k + 1) % outline.length] as Point;
    return Math.abs(p.y - q.y) < 1e-6 && Math.abs(p.y - height + seam) < 1e-6;
  });
  return [outline[i] as Point, outline[(i + 1) % outline.length] as Point];
};

test('a ruled strip keeps its angles and holds pieces of its marked sizes', () => {
  const way = first(diamond(12 / (2 + Math.SQRT2), 45));
  // by hand: 3 in high and cut every 3 in, so edges of 3√2, leaning by 3
  near(way.row.bottom, 3 * Math.SQRT2);
  near(Math.abs(way.row.lean), 3);
  // 8 edges and the slanted end: 36.94 of 40 in; nine would take 41.18
  assert.equal(mostInRow(way.row, length(40)), 8);
  near(rowLength(way.row, 8), 24 * Math.SQRT2 + 3);
});

test('a length of strip holds as many as a plain count finds, and not one more', () => {
  const fitting = (way: StripWay, most: number): number => {
    let count = 0;
    while (boxOf(rowOutlines(way.row, count + 1).flat()).width <= most + 1e-9) count++;
    return count;
  };
  fc.assert(
    fc.property(inStrip, fc.integer({ min: 1, max: 90 }), (outline, most) => {
      for (const way of waysOf(outline)) assert.equal(mostInRow(way.row, length(most)), fitting(way, most));
    }),
    { seed: 62, numRuns: 150 },
  );
});
