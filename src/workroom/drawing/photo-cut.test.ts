import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { cutOf, quartersOf } from './photo-cut.ts';
import type { Matrix } from './scene.ts';

/** Where on the photograph, in its pixels, a point of the block lies. */
const onPhoto = ([a, b, c, d, e, f]: Matrix, x: number, y: number): readonly [number, number] => {
  const det = a * d - b * c;
  return [(d * (x - e) - c * (y - f)) / det, (a * (y - f) - b * (x - e)) / det];
};

const piece = fc.record({
  x: fc.double({ min: -30, max: 30, noNaN: true }),
  y: fc.double({ min: -30, max: 30, noNaN: true }),
  width: fc.double({ min: 0.1, max: 5, noNaN: true }),
  height: fc.double({ min: 0.1, max: 5, noNaN: true }),
  seed: fc.integer(),
  quarters: fc.integer({ min: -3, max: 3 }),
});

test('a piece that the photograph can hold is cut out of one stretch of it, at true scale', () => {
  fc.assert(
    fc.property(piece, ({ x, y, width, height, seed, quarters }) => {
      const points = [x, y, x + width, y, x + width, y + height, x, y + height];
      // a photograph of 6 × 5 in, 300 pixels wide: 50 pixels an inch
      const cut = cutOf({ points, size: [6, 5], widthPx: 300, seed, quarters });
      assert.ok(Math.abs(Math.hypot(cut[0], cut[1]) - 1 / 50) < 1e-12);
      for (let i = 0; i < points.length; i += 2) {
        const [px, py] = onPhoto(cut, points[i] as number, points[i + 1] as number);
        assert.ok(px > -1e-6 && px < 300 + 1e-6 && py > -1e-6 && py < 250 + 1e-6, `${px}, ${py}`);
      }
    }),
    { seed: 71, numRuns: 300 },
  );
});

test('pieces are cut each elsewhere, and one piece always alike', () => {
  const points = [0, 0, 1, 0, 1, 1, 0, 1];
  const at = (seed: number) => JSON.stringify(cutOf({ points, size: [6, 5], widthPx: 300, seed, quarters: 0 }));
  assert.equal(at(4), at(4));
  assert.equal(new Set([1, 2, 3, 4, 5].map(at)).size, 5);
});

test('an upright print stands upright in the quilt however its block is turned', () => {
  const turns: readonly Matrix[] = [
    [1, 0, 0, 1, 3, 4],
    [0, 1, -1, 0, 3, 4],
    [-1, 0, 0, -1, 3, 4],
    [0, -1, 1, 0, 3, 4],
  ];
  for (const block of turns) {
    const cut = cutOf({ points: [0, 0, 1, 0, 1, 1], size: [6, 5], widthPx: 300, seed: 1, quarters: quartersOf(block) });
    // the photograph's own upright, through the cut and through the block
    const [x, y] = [block[0] * -cut[2] + block[2] * -cut[3], block[1] * -cut[2] + block[3] * -cut[3]];
    assert.ok(Math.abs(x) < 1e-12 && y < 0, `${block}: ${x}, ${y}`);
  }
});
