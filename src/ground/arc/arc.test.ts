import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { at, boxOf, distance, offLine, type Point, signedArea } from '#ground/plane';
import {
  type Arc,
  arcDirection,
  arcExtremes,
  arcLength,
  arcThrough,
  chordPoints,
  edgesOf,
  isOnArc,
  landmarksOf,
  type Outline,
  outlineArea,
  outlineBox,
  pointOnArc,
  radiusOf,
  reversedArc,
  sweepOf,
  wholeSides,
} from './index.ts';

const near = (found: number, expected: number, tolerance: number): void =>
  assert.ok(Math.abs(found - expected) <= tolerance, `found ${found}, expected ${expected}`);

const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
const anyArc = fc
  .record({
    x: fc.double({ min: -5, max: 5, noNaN: true }),
    y: fc.double({ min: -5, max: 5, noNaN: true }),
    r: fc.double({ min: 0.1, max: 20, noNaN: true }),
    first: angle,
    turn: fc.double({ min: 0.05, max: 2 * Math.PI - 0.05, noNaN: true }),
    clockwise: fc.boolean(),
  })
  .map(({ x, y, r, first, turn, clockwise }) => {
    const on = (radians: number): Point => at(x + r * Math.cos(radians), y + r * Math.sin(radians));
    const arc: Arc = { from: on(first), to: on(first + (clockwise ? turn : -turn)), centre: at(x, y), clockwise };
    return { arc, r, turn };
  });

/** Simpson's rule over the arc as a curve in one variable: nothing of the room's own formulas in it. */
const simpson = (f: (t: number) => number, pieces: number): number => {
  const h = 1 / pieces;
  let all = f(0) + f(1);
  for (let i = 1; i < pieces; i++) all += (i % 2 === 0 ? 2 : 4) * f(i * h);
  return (all * h) / 3;
};

test('radius, sweep and length are those that an arc was drawn with', () => {
  fc.assert(
    fc.property(anyArc, ({ arc, r, turn }) => {
      near(radiusOf(arc), r, 1e-9);
      near(sweepOf(arc), turn, 1e-9);
      near(arcLength(arc), r * turn, 1e-8);
      near(arcLength(reversedArc(arc)), arcLength(arc), 1e-9);
      near(distance(pointOnArc(arc, 1), arc.to), 0, 1e-9);
    }),
    { seed: 811 },
  );
});

test('the area between an arc and its chord is what numerical integration along it finds', () => {
  fc.assert(
    fc.property(anyArc, ({ arc, r, turn }) => {
      // half the integral of x dy − y dx along the arc, then back along the chord
      const { centre, from, to, clockwise } = arc;
      const first = Math.atan2(from.y - centre.y, from.x - centre.x);
      const sign = clockwise ? 1 : -1;
      const along = simpson((t) => {
        const a = first + sign * turn * t;
        const [x, y] = [centre.x + r * Math.cos(a), centre.y + r * Math.sin(a)];
        return (x * r * Math.cos(a) + y * r * Math.sin(a)) * sign * turn;
      }, 4096);
      const expected = (along + (to.x * from.y - from.x * to.y)) / 2;
      // a half-moon: its other corner is the middle of the chord, which lies on a straight side
      const middle = at((from.x + to.x) / 2, (from.y + to.y) / 2);
      const moon: Outline = { points: [from, ...chordPoints(arc, 1e-3), to, middle], arcs: [arc] };
      near(outlineArea(moon), expected, 1e-9 * Math.max(1, Math.abs(expected), r * r));
    }),
    { seed: 812 },
  );
});

test('chords lie no further from an arc than was asked, and are the same doubles from both ends', () => {
  fc.assert(
    fc.property(anyArc, fc.constantFrom(1e-2, 1e-3, 1e-5), ({ arc, r }, share) => {
      const chord = share * r;
      const points = [arc.from, ...chordPoints(arc, chord), arc.to];
      points.slice(1).forEach((b, i) => {
        const a = points[i] as Point;
        near(distance(a, arc.centre), r, 1e-9 * r);
        // the middle of a chord is its place furthest off the arc
        const off = r - distance(at((a.x + b.x) / 2, (a.y + b.y) / 2), arc.centre);
        assert.ok(off <= chord * (1 + 1e-6), `${off} is more than ${chord}`);
      });
      assert.deepEqual(chordPoints(reversedArc(arc), chord), chordPoints(arc, chord).toReversed());
    }),
    { seed: 813 },
  );
});

test('a centre that is not quite equally far is moved until it is', () => {
  fc.assert(
    fc.property(anyArc, ({ arc }) => {
      const off = { ...arc, centre: at(arc.centre.x + 1e-7, arc.centre.y - 1e-7) };
      const mended = arcThrough(off);
      near(distance(mended.centre, mended.from), distance(mended.centre, mended.to), 1e-9);
      assert.ok(distance(mended.centre, off.centre) < 1.5e-7);
    }),
    { seed: 814 },
  );
});

test('an arc holds its own places and no others, and its box holds them closely', () => {
  fc.assert(
    fc.property(anyArc, fc.double({ min: 0, max: 1, noNaN: true }), ({ arc, r, turn }, share) => {
      const p = pointOnArc(arc, share);
      assert.ok(isOnArc(p, arc, 1e-6 * r));
      const beyond = pointOnArc({ ...arc, to: arc.from, from: arc.to }, 0.5);
      if (turn < 2 * Math.PI - 0.1) assert.equal(isOnArc(beyond, arc, 1e-9 * r), false);
      const box = boxOf(arcExtremes(arc));
      const sampled = boxOf(Array.from({ length: 4001 }, (_, i) => pointOnArc(arc, i / 4000)));
      near(box.x, sampled.x, 1e-5 * r);
      near(box.y + box.height, sampled.y + sampled.height, 1e-5 * r);
      assert.ok(p.x >= box.x - 1e-9 && p.y >= box.y - 1e-9);
    }),
    { seed: 815 },
  );
});

test('an arc leaves its ends square to its radius, on the hand that it turns to', () => {
  fc.assert(
    fc.property(anyArc, ({ arc }) => {
      const way = arcDirection(arc, 'from');
      const ahead = at(arc.from.x + way.x, arc.from.y + way.y);
      const hand = offLine(arc.from, ahead, arc.centre);
      assert.equal(hand > 0, arc.clockwise);
      near(Math.abs(hand), radiusOf(arc), 1e-9);
    }),
    { seed: 816 },
  );
});

/** A quarter of a circle cut from a corner of a square of 4, begun within the arc. */
const quarter: Arc = { from: at(3, 0), to: at(0, 3), centre: at(0, 0), clockwise: true };
const chords = chordPoints(quarter, 1e-4);
const wedge: Outline = {
  points: [...chords.slice(10), at(0, 3), at(0, 0), at(3, 0), ...chords.slice(0, 10)],
  arcs: [quarter],
};

test('the sides of an outline are found wherever it begins', () => {
  assert.deepEqual(
    edgesOf(wedge).map(({ from, to, arc }) => [from, to, arc !== null]),
    [
      [at(3, 0), at(0, 3), true],
      [at(0, 3), at(0, 0), false],
      [at(0, 0), at(3, 0), false],
    ],
  );
  near(outlineArea(wedge), (9 * Math.PI) / 4, 1e-12);
  assert.deepEqual(outlineBox(wedge), { x: 0, y: 0, width: 3, height: 3 });
});

test('arcs of one circle and sides of one line are one side', () => {
  const at45 = pointOnArc(quarter, 0.5);
  const halves = [
    { ...quarter, to: at45 },
    { ...quarter, from: at45 },
  ];
  const points = [at(3, 0), ...halves.flatMap((half) => [...chordPoints(half, 1e-4), half.to]), at(0, 1), at(0, 0)];
  const sides = wholeSides({ points, arcs: halves }, 1e-6);
  assert.deepEqual(
    sides.map(({ from, to }) => [from, to]),
    [
      [at(3, 0), at(0, 3)],
      [at(0, 3), at(0, 0)],
      [at(0, 0), at(3, 0)],
    ],
  );
  near(distance(landmarksOf({ points, arcs: halves }, 1e-6)[1] as Point, at45), 0, 1e-12);
  near(signedArea(points), (9 * Math.PI) / 4, 1e-3);
});
