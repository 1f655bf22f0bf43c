import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { chordsOf, type Drawing, drawingOf } from '#craft/chords';
import { length } from '#craft/measure';
import { box, randomBlock } from '#documents';
import { rational } from '#ground/exact';
import { at, distance, type Point, type Polygon } from '#ground/plane';
import { foundationsOf } from './foundations.ts';
import { foundationOrder } from './order.ts';
import { roughCut } from './rough-cut.ts';
import { leastSections } from './sections.ts';
import { unitsOnOne } from './units.ts';

const plain = (outlines: readonly Polygon[]) => outlines.map((points) => ({ points }));
const drawn = (outlines: readonly Polygon[]): Drawing => drawingOf(outlines, 12e-6);
const inOrder = (patch: number): number => patch;
const all = (outlines: readonly Polygon[]): readonly number[] => outlines.map((_, patch) => patch);

/** How far p lies to one hand of the line through a and b. */
const off = (a: Point, b: Point, p: Point): number =>
  ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / distance(a, b);

/** Seen from the corners alone: the patch has an edge with all of it on one hand, and all of the others on the other. */
const isSewable = (patch: Polygon, before: readonly Polygon[]): boolean =>
  patch.some((a, i) => {
    const b = patch[(i + 1) % patch.length] as Point;
    const own = patch.map((p) => off(a, b, p));
    const others = before.flat().map((p) => off(a, b, p));
    const isRight = own.every((d) => d > -1e-6) && others.every((d) => d < 1e-6);
    return isRight || (own.every((d) => d < 1e-6) && others.every((d) => d > -1e-6));
  });

/** The slow twin: every order of all patches. */
const anyOrder = (outlines: readonly Polygon[], left: readonly number[], before: readonly number[] = []): boolean =>
  left.length === 0 ||
  left.some(
    (patch) =>
      (before.length === 0 ||
        isSewable(
          outlines[patch] as Polygon,
          before.map((one) => outlines[one] as Polygon),
        )) &&
      anyOrder(
        outlines,
        left.filter((one) => one !== patch),
        [...before, patch],
      ),
  );

test('an order on one foundation is found exactly where one of all orders of the patches can be sewn', () => {
  let [onOne, others] = [0, 0];
  fc.assert(
    fc.property(randomBlock, ({ outlines }) => {
      const order = foundationOrder(drawn(outlines), all(outlines));
      assert.equal(order !== null, anyOrder(outlines, all(outlines)));
      if (order === null) others++;
      else onOne++;
    }),
    { seed: 31, numRuns: 1000 },
  );
  // both kinds are among them
  assert.ok(onOne > 100 && others > 100, `${onOne} on one foundation, ${others} not`);
});

test('every patch of an order is sewn along a line that has all before it on the other hand', () => {
  fc.assert(
    fc.property(randomBlock, ({ outlines }) => {
      const found = leastSections({ drawing: drawn(outlines), unit: all(outlines), rank: inOrder });
      assert.ok(found !== null);
      assert.deepEqual(
        found.sections
          .flat()
          .map(({ patch }) => patch)
          .toSorted((a, b) => a - b),
        all(outlines),
      );
      for (const order of found.sections)
        order.forEach(({ patch, line }, i) => {
          assert.equal(line === null, i === 0);
          if (line === null) return;
          const hands = (outline: Polygon): readonly number[] => outline.map((p) => off(line.from, line.to, p));
          const own = Math.sign(hands(outlines[patch] as Polygon).reduce((sum, d) => sum + d, 0));
          assert.ok(hands(outlines[patch] as Polygon).every((d) => d * own > -1e-6));
          for (const before of order.slice(0, i))
            assert.ok(hands(outlines[before.patch] as Polygon).every((d) => d * own < 1e-6));
        });
    }),
    { seed: 32, numRuns: 300 },
  );
});

/** The slow twin: the unit as one section where all orders say so, or divided by each of its chords. */
const fewestSections = (outlines: readonly Polygon[], unit: readonly number[]): number =>
  anyOrder(outlines, unit)
    ? 1
    : Math.min(
        ...chordsOf(drawn(outlines), unit).map(
          ({ first, second }) => fewestSections(outlines, first) + fewestSections(outlines, second),
        ),
      );

test('sections are as few as the search of all divisions finds', () => {
  let several = 0;
  fc.assert(
    fc.property(randomBlock, ({ outlines }) => {
      const found = leastSections({ drawing: drawn(outlines), unit: all(outlines), rank: inOrder });
      assert.equal(found?.sections.length, fewestSections(outlines, all(outlines)));
      assert.equal(found?.least, 'proven');
      if (found !== null && found.sections.length > 2) several++;
    }),
    { seed: 33, numRuns: 1000 },
  );
  assert.ok(several > 0);
});

test('a log cabin is pieced centre first and log by log; a four patch takes two foundations and a join', () => {
  // centre, left, top, right, bottom
  const cabin = [box(4, 4, 4, 4), box(2, 4, 2, 4), box(2, 2, 6, 2), box(8, 2, 2, 6), box(2, 8, 8, 2)];
  const steps = [1, 2, 3, 4].map((patch) => ({ patches: [all(cabin).slice(0, patch), [patch]] as const }));
  const found = foundationsOf({ patches: plain(cabin), finished: [8, 8], steps });
  assert.deepEqual(
    found?.sections.map((order) => order.map(({ patch }) => patch)),
    [[0, 1, 2, 3, 4]],
  );
  // by hand: no patch of four is cut off from the three others by one line
  const four = [box(0, 0, 6, 6), box(6, 0, 6, 6), box(0, 6, 6, 6), box(6, 6, 6, 6)];
  const parted = foundationsOf({ patches: plain(four), finished: [12, 12], steps: [] });
  assert.deepEqual([parted?.sections.length, parted?.joins.length, parted?.least], [2, 1, 'proven']);
});

test('what partial seams join cannot be pieced on foundations', () => {
  // four bars round a square: no seam runs from edge to edge
  const ring = [box(4, 4, 4, 4), box(0, 0, 8, 4), box(8, 0, 4, 8), box(4, 8, 8, 4), box(0, 4, 4, 8)];
  assert.equal(foundationsOf({ patches: plain(ring), finished: [12, 12], steps: [] }), null);
});

test('a rough piece covers its patch along the seam, with two allowances round it, on the next mark', () => {
  const of = { seam: length(0.25), ruler: rational(1, 4) };
  // 3 + 4 · 1/4 = 4 by 1.1 + 4 · 1/4 = 2.1, up to 2 1/4
  assert.deepEqual(roughCut({ ...of, patch: box(0, 0, 3, 1.1), line: null }), [4, 2.25]);
  assert.deepEqual(roughCut({ ...of, patch: box(0, 0, 3, 1.1), line: { from: at(0, 5), to: at(0, 0) } }), [2.25, 4]);
  // a half-square of 2 in on its long side: 2√2 + 1 = 3.83 by √2 + 1 = 2.41
  const half = [at(0, 0), at(2, 0), at(0, 2)];
  assert.deepEqual(roughCut({ ...of, patch: half, line: { from: at(2, 0), to: at(0, 2) } }), [4, 2.5]);
});

test('a block that does not go on foundations as a whole says which of its units do, the largest', () => {
  // four bars round a square of three strips: the ring is no straight seam, the strips go on one
  const strips = [box(4, 4, 1, 4), box(5, 4, 1, 4), box(6, 4, 2, 4)];
  const patches = plain([...strips, box(0, 0, 8, 4), box(8, 0, 4, 8), box(4, 8, 8, 4), box(0, 4, 4, 8)]);
  const ring = [
    { join: ['A', 'A'], makes: '#1', patches: [[0], [1]] },
    { join: ['#1', 'B'], makes: '#2', patches: [[0, 1], [2]] },
    { join: ['#2', 'C'], makes: '#3', patches: [[0, 1, 2], [3]] },
    { join: ['#3', 'C'], makes: '#4', patches: [[0, 1, 2, 3], [4]] },
  ] as const;
  assert.deepEqual(
    unitsOnOne({ patches, finished: [12, 12], steps: ring }).map(({ step, order }) => [
      step,
      order.map(({ patch }) => patch),
    ]),
    // with one bar they stand in an L, no unit that is convex
    [[1, [0, 1, 2]]],
  );
  // two patches are sewn as quickly without
  assert.deepEqual(unitsOnOne({ patches, finished: [12, 12], steps: ring.slice(0, 1) }), []);
});
