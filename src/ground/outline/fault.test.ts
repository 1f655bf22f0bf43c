import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { at } from '#ground/plane';
import { outlineFault } from './fault.ts';

const faultOf = (...corners: readonly (readonly [number, number])[]) =>
  outlineFault(
    corners.map(([x, y]) => at(x, y)),
    1e-6,
  );

test('a sound outline has no fault, whichever way it runs and whether it is hollow or not', () => {
  // drawn by hand
  assert.equal(faultOf([0, 0], [1, 0], [0, 1]), null);
  assert.equal(faultOf([0, 1], [1, 0], [0, 0]), null);
  assert.equal(faultOf([0, 0], [2, 0], [2, 2], [1, 1], [0, 2]), null);
  assert.equal(faultOf([0, 0], [3, 0], [3, 1], [1, 1], [1, 2], [3, 2], [3, 3], [0, 3]), null);
});

test('a corner on a straight side is no fault', () => {
  assert.equal(faultOf([0, 0], [1, 0], [2, 0], [2, 2], [0, 2]), null);
});

test('each fault is told with the corners or edges that make it', () => {
  assert.deepEqual(faultOf([0, 0], [1, 0], [1, 1], [1e-9, 0]), { kind: 'corner-twice', places: [0, 3] });
  assert.deepEqual(faultOf([0, 0], [1, 1], [1, 0], [0, 1]), { kind: 'crosses-itself', places: [0, 2] });
  // a notch from below that reaches through the top
  assert.deepEqual(faultOf([0, 0], [4, 0], [4, 1], [2, -1], [0, 1]), { kind: 'crosses-itself', places: [0, 2] });
  assert.deepEqual(faultOf([0, 0], [0.5, 0.5], [1, 1]), { kind: 'no-area' });
  assert.deepEqual(faultOf([0, 0], [1, 0], [2, 0], [3, 0]), { kind: 'no-area' });
});

test('an outline that touches itself at a corner, or runs back along itself, is not one patch', () => {
  // corner 4 lies on the edge from corner 0 to corner 1
  assert.deepEqual(faultOf([0, 0], [4, 0], [4, 2], [3, 2], [2, 0], [1, 2], [0, 2]), {
    kind: 'crosses-itself',
    places: [0, 3],
  });
  assert.deepEqual(faultOf([0, 0], [2, 0], [1, 0], [1, 1], [0, 1]), { kind: 'crosses-itself', places: [0, 1] });
});

test('corners in order round a centre never cross', () => {
  const corner = fc.record({
    gap: fc.double({ min: 0.2, max: 1, noNaN: true }),
    far: fc.double({ min: 1, max: 9, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(corner, { minLength: 5, maxLength: 20 }), (corners) => {
      const whole = corners.reduce((sum, { gap }) => sum + gap, 0);
      let angle = 0;
      const outline = corners.map(({ gap, far }) => {
        angle += (gap / whole) * 2 * Math.PI;
        return at(far * Math.cos(angle), far * Math.sin(angle));
      });
      // seen from the centre every edge spans less than half a turn when no gap is half of the whole
      fc.pre(corners.every(({ gap }) => gap < 0.45 * whole));
      assert.equal(outlineFault(outline, 1e-9), null);
    }),
    { seed: 53, numRuns: 200 },
  );
});
