import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { type Choice, filledFor } from './knapsack.ts';

const bestByTrying = (choices: readonly Choice[], cells: number): number => {
  const [first, ...others] = choices;
  if (first === undefined) return 0;
  let best = 0;
  for (let n = 0; n <= first.most && n * first.cells <= cells; n++)
    best = Math.max(best, n * first.value + bestByTrying(others, cells - n * first.cells));
  return best;
};

test('the best filling, read back for every capacity and every first few choices, agrees with trying all', () => {
  const choice = fc.record({
    cells: fc.integer({ min: 1, max: 9 }),
    value: fc.integer({ min: 1, max: 20 }),
    most: fc.integer({ min: 1, max: 5 }),
  });
  fc.assert(
    fc.property(fc.array(choice, { maxLength: 4 }), fc.integer({ min: 0, max: 25 }), (choices, cells) => {
      const filled = filledFor(choices, cells);
      for (let upTo = 0; upTo <= choices.length; upTo++)
        for (let c = 0; c <= cells; c++) {
          let value = 0;
          let used = 0;
          for (const [i, n] of filled.taken(upTo, c)) {
            assert.ok(i < upTo && n <= (choices[i]?.most ?? 0));
            value += n * (choices[i]?.value ?? 0);
            used += n * (choices[i]?.cells ?? 0);
          }
          assert.ok(used <= c);
          assert.equal(value, bestByTrying(choices.slice(0, upTo), c));
        }
    }),
    { seed: 71, numRuns: 200 },
  );
});
