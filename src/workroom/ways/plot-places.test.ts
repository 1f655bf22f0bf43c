import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { WaysPoint } from '#workroom/compute';
import { type PlotSize, placesFor, ticksIn, underMark } from './plot-places.ts';

const size: PlotSize = { width: 340, height: 320, edge: { left: 56, top: 34, right: 34, bottom: 56 }, mark: 18 };

const pointAt = (cloth: number, minutes: number, deviation: number): WaysPoint => ({
  key: `${cloth} ${minutes}`,
  ways: [],
  cloth,
  minutes,
  deviation,
  time: '',
  cost: '',
  differences: [],
  methods: [],
});

test('less cloth lies further left, less time further down, and a truer unit has a shorter line', () => {
  const [a, b] = placesFor([pointAt(180, 500, 0.009), pointAt(190, 460, 0.012)], size);
  assert.ok(a && b && a.at[0] < b.at[0] && a.at[1] < b.at[1] && a.off < b.off);
});

test('marks of choices that are nearly alike stand apart and within the plot', () => {
  const points = Array.from({ length: 9 }, (_, i) => pointAt(134 + (i % 3) / 100, 250 + Math.floor(i / 3) / 10, 0.01));
  const places = placesFor([...points, pointAt(150, 300, 0.01)], size);
  places.forEach(({ mark: [x, y] }, i) => {
    assert.ok(x >= size.edge.left && x <= size.width - size.edge.right && y >= size.edge.top);
    assert.ok(y <= size.height - size.edge.bottom);
    for (const other of places.slice(i + 1))
      assert.ok(Math.hypot(other.mark[0] - x, other.mark[1] - y) > 2 * size.mark + 8);
  });
});

test('no mark touches the line under another, and no line crosses the axis', () => {
  // cloth, minutes and deviation of Ferry Landing's choices, as its plot had them
  const points = [
    pointAt(81.25, 340, 0.026),
    pointAt(81.25, 344, 0.024),
    pointAt(84.25, 347, 0.021),
    pointAt(85.5, 336, 0.026),
    pointAt(85.5, 343, 0.021),
    pointAt(85.625, 341, 0.023),
    pointAt(85.75, 354, 0.019),
    pointAt(86.75, 349, 0.02),
    pointAt(88.375, 353, 0.018),
    pointAt(82.5, 349, 0.024),
  ];
  const places = placesFor(points, size);
  for (const { mark, off } of places) {
    const [x, y] = [mark[0], mark[1] + size.mark + underMark];
    assert.ok(x - off > size.edge.left);
    for (const other of places) {
      if (other.mark === mark) continue;
      const dx = Math.max(0, Math.abs(other.mark[0] - x) - off);
      assert.ok(Math.hypot(dx, other.mark[1] - y) > size.mark, `${mark} and ${other.mark}`);
    }
  }
});

test('an axis has at most seven round figures', () => {
  assert.deepEqual(ticksIn([182.9, 188.6], [1, 2, 5]), [183, 184, 185, 186, 187, 188]);
  assert.deepEqual(ticksIn([0.2, 99], [1, 2, 5, 20]), [20, 40, 60, 80]);
});
