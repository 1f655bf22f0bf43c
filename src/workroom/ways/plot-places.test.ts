import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { WaysPoint } from '#workroom/compute';
import { type PlotSize, placesFor, ticksIn } from './plot-places.ts';

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

test('an axis has at most seven round figures', () => {
  assert.deepEqual(ticksIn([182.9, 188.6], [1, 2, 5]), [183, 184, 185, 186, 187, 188]);
  assert.deepEqual(ticksIn([0.2, 99], [1, 2, 5, 20]), [20, 40, 60, 80]);
});
