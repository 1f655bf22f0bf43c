import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { rational } from '#ground/exact';
import { at, boxOf, hullOf, type Point, type Polygon, signedArea } from '#ground/plane';
import { templatePairFor } from './template-pairs.ts';

const fine = rational(1, 10_000_000);

const convex = fc
  .array(
    fc.tuple(fc.integer({ min: 0, max: 24 }), fc.integer({ min: 0, max: 24 })).map(([x, y]) => at(x / 4, y / 4)),
    { minLength: 3, maxLength: 7 },
  )
  .map((points) => hullOf(points, 1e-9))
  .filter((hull) => hull.length >= 3 && signedArea(hull) > 1);

/** How deep two convex outlines lie in each other: the least overlap along a direction square to a side. */
const depth = (a: Polygon, b: Polygon): number => {
  let least = Number.POSITIVE_INFINITY;
  for (const outline of [a, b])
    outline.forEach((p, i) => {
      const q = outline[(i + 1) % outline.length] as Point;
      const long = Math.hypot(q.x - p.x, q.y - p.y);
      const spans = [a, b].map((each) => each.map((r) => ((q.y - p.y) * r.x - (q.x - p.x) * r.y) / long));
      const [inA, inB] = spans as [number[], number[]];
      least = Math.min(least, Math.max(...inA) - Math.min(...inB), Math.max(...inB) - Math.min(...inA));
    });
  return least;
};

test('two right triangles make a rectangle', () => {
  // by hand: legs 4 and 3, turned about the middle of the long side
  const pair = templatePairFor([at(0, 0), at(4, 0), at(0, 3)], rational(1, 8));
  assert.deepEqual(pair?.size, [4, 3]);
});

test('a rectangle gains nothing from a pair', () => {
  // by hand: two boxes are two rectangles, with no cloth between
  assert.equal(templatePairFor([at(0, 0), at(4, 0), at(4, 3), at(0, 3)], rational(1, 8)), null);
});

test('the two of a pair touch but do not overlap, are half turns of each other, and fill their box from edge to edge', () => {
  fc.assert(
    fc.property(convex, (outline) => {
      const pair = templatePairFor(outline, fine);
      fc.pre(pair !== null);
      const [a, b] = pair.outlines;
      assert.ok(Math.abs(depth(a, b)) < 1e-9);
      const middle = at(((a[0] as Point).x + (b[0] as Point).x) / 2, ((a[0] as Point).y + (b[0] as Point).y) / 2);
      a.forEach((p, i) => {
        assert.ok(Math.hypot((b[i] as Point).x + p.x - 2 * middle.x, (b[i] as Point).y + p.y - 2 * middle.y) < 1e-9);
      });
      const box = boxOf([...a, ...b]);
      assert.ok(Math.abs(box.x) + Math.abs(box.y) < 1e-9);
      assert.ok(Math.abs(box.width - pair.exact[0]) + Math.abs(box.height - pair.exact[1]) < 1e-9);
    }),
    { seed: 71, numRuns: 200 },
  );
});

test('no place of the second on a fine grid makes a smaller box', () => {
  const steps = 36;
  fc.assert(
    fc.property(convex, (outline) => {
      const box = boxOf(outline);
      let least = 2 * box.width * box.height;
      for (let i = -steps; i <= steps; i++)
        for (let j = -steps; j <= steps; j++) {
          const turned = outline.map((p) =>
            at(
              2 * box.x + box.width - p.x + (i / steps) * box.width,
              2 * box.y + box.height - p.y + (j / steps) * box.height,
            ),
          );
          const both = boxOf([...outline, ...turned]);
          const area = both.width * both.height;
          if (area < least && depth(outline, turned) <= 1e-9) least = area;
        }
      const pair = templatePairFor(outline, fine);
      const found = pair === null ? 2 * box.width * box.height : pair.exact[0] * pair.exact[1];
      assert.ok(found <= least + 1e-6, `found ${found}, on the grid ${least}`);
    }),
    { seed: 72, numRuns: 60 },
  );
});
