import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { dualFeasibleFor } from './dual-feasible.ts';

test('images of sizes that fit together never add up to more than the image of the whole', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 4, max: 60 }).chain((capacity) =>
        fc.record({
          capacity: fc.constant(capacity),
          sizes: fc.array(fc.integer({ min: 1, max: capacity }), { minLength: 1, maxLength: 8 }),
        }),
      ),
      ({ capacity, sizes }) => {
        const fitting: number[] = [];
        let room = capacity;
        for (const s of sizes)
          if (s <= room) {
            fitting.push(s);
            room -= s;
          }
        for (const f of dualFeasibleFor(capacity, sizes, 8)) {
          const all = fitting.reduce((sum, s) => sum + f.of(s), 0);
          assert.ok(all <= f.whole, `${fitting} in ${capacity}: ${all} of ${f.whole}`);
        }
      },
    ),
    { seed: 41, numRuns: 3000 },
  );
});

test('every partition of 12 and less is within the whole, for every function', () => {
  const partitions = (n: number, most: number): readonly (readonly number[])[] =>
    n === 0
      ? [[]]
      : Array.from({ length: Math.min(n, most) }, (_, i) => i + 1).flatMap((s) =>
          partitions(n - s, s).map((p) => [s, ...p]),
        );
  for (let capacity = 2; capacity <= 12; capacity++)
    for (const sizes of partitions(capacity, capacity))
      for (const f of dualFeasibleFor(capacity, [1, 2, 3, 4, 5, 6], 8))
        assert.ok(sizes.reduce((sum, s) => sum + f.of(s), 0) <= f.whole);
});
