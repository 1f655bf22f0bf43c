import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { type Choices, costOf, leastCost } from './index.ts';

/** The slow twin: every choice there is. */
const least = (choices: Choices): number => {
  let best = Number.POSITIVE_INFINITY;
  const values: number[] = [];
  const visit = (variable: number): void => {
    const costs = choices.single[variable];
    if (costs === undefined) {
      best = Math.min(best, costOf(choices, values));
      return;
    }
    for (let value = 0; value < costs.length; value++) {
      values[variable] = value;
      visit(variable + 1);
    }
  };
  visit(0);
  return best;
};

const whole = fc.nat(9);

const choicesOf = (most: number): fc.Arbitrary<Choices> =>
  fc.array(fc.array(whole, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: most }).chain((single) =>
    fc
      .array(
        fc.record({
          a: fc.nat(single.length - 1),
          b: fc.nat(single.length - 1),
          seeds: fc.array(whole, { minLength: 9, maxLength: 9 }),
        }),
        { maxLength: 14 },
      )
      .map((drawn) => ({
        single,
        pairs: drawn
          .filter(({ a, b }) => a !== b)
          .map(({ a, b, seeds }) => ({
            a,
            b,
            cost: (single[a] as readonly number[]).map((_, i) =>
              (single[b] as readonly number[]).map((__, j) => seeds[3 * i + j] as number),
            ),
          })),
      })),
  );

test('no choice costs less than the one proven least, and it costs what is said', () => {
  fc.assert(
    fc.property(choicesOf(7), (choices) => {
      const { values, cost, proven } = leastCost(choices);
      assert.ok(proven);
      assert.equal(cost, costOf(choices, values));
      assert.equal(cost, least(choices));
    }),
  );
});

test('where too much hangs together it is a search, says so, and ends no higher than where it began', () => {
  // every two of fifteen variables: a table of 2^14 would be wanted
  const count = 15;
  fc.assert(
    fc.property(
      fc.array(whole, { minLength: 4 * 105, maxLength: 4 * 105 }),
      fc.array(fc.nat(1), { minLength: count, maxLength: count }),
      (seeds, start) => {
        let next = 0;
        const pairs = Array.from({ length: count }, (_, a) =>
          Array.from({ length: count - a - 1 }, (__, i) => ({
            a,
            b: a + 1 + i,
            cost: [
              [seeds[next++] as number, seeds[next++] as number],
              [seeds[next++] as number, seeds[next++] as number],
            ],
          })),
        ).flat();
        const choices = { single: Array.from({ length: count }, () => [0, 0]), pairs };
        const { values, cost, proven } = leastCost(choices, [start]);
        assert.ok(!proven);
        assert.equal(cost, costOf(choices, values));
        assert.ok(cost <= costOf(choices, start));
      },
    ),
    { numRuns: 20 },
  );
});
