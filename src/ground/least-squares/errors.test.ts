import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cumulativeStdNormalProbability } from 'simple-statistics';
import { chanceFrom } from '#ground/chance';
import { limitsOfMixture, shapeOf, shareBelow } from './index.ts';

const near = (found: number, expected: number, within: number): void =>
  assert.ok(Math.abs(found - expected) <= within, `found ${found}, expected ${expected}`);

test('an error without an even part is the normal one of the tables', () => {
  // simple-statistics: the table of the normal distribution, in steps of a hundredth
  for (const z of [-2.5, -1.96, -0.5, 0, 0.7, 1.96])
    near(shareBelow(z, { deviation: 1, even: 0 }), cumulativeStdNormalProbability(z), 1e-4);
});

test('one even error keeps within its limits: 95 of 100 within 0.95 of them', () => {
  // derived: an even error of limits 1 either way has the deviation 1/√3
  const shape = shapeOf({ deviation: 1 / Math.sqrt(3), deviations: [1 / Math.sqrt(3)] });
  const [low, high] = limitsOfMixture([{ share: 1, value: 2, shape }]);
  near(low, 2 - 0.95, 2e-3);
  near(high, 2 + 0.95, 2e-3);
  near(shareBelow(0.5, shape), 0.75, 1e-3);
});

test('sums of two, three and five even errors of several sizes are held by their limits in 95 of 100', () => {
  const chance = chanceFrom(3);
  for (const limits of [
    [1, 1],
    [1, 0.5, 0.3],
    [1, 0.9, 0.8, 0.3, 0.2],
  ]) {
    const deviations = limits.map((limit) => limit / Math.sqrt(3));
    const deviation = Math.hypot(...deviations);
    const [low, high] = limitsOfMixture([{ share: 1, value: 0, shape: shapeOf({ deviation, deviations }) }]);
    let held = 0;
    for (let draw = 0; draw < 20_000; draw++) {
      const error = limits.reduce((all, limit) => all + limit * (2 * chance() - 1), 0);
      if (low <= error && error <= high) held += 1;
    }
    // the form is not the sum's own: within half a hundredth, and the chance of 20,000 draws besides
    near(held / 20_000, 0.95, 0.009);
  }
});

test('two values as likely share the beyond: the limits lie outside both', () => {
  // derived: far apart, each has 5 of its 100 beyond one limit: 1.645 deviations (tables of the normal distribution)
  const shape = { deviation: 1, even: 0 };
  const [low, high] = limitsOfMixture([
    { share: 0.5, value: -10, shape },
    { share: 0.5, value: 10, shape },
  ]);
  near(low, -11.645, 2e-3);
  near(high, 11.645, 2e-3);
});
