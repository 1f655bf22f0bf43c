import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { compareEase } from '#craft/ease';
import { length } from '#craft/measure';
import { checkLayout } from './check-layout.ts';
import type { Demand, EaseRung } from './cloth.ts';
import type { Easing } from './eased-layout.ts';
import { planLayout } from './layout.ts';

/** A shop that sells whole steps of 4 1/2 in, without allowances. */
const easing = (choice: Easing['choice']): Easing => ({
  choice,
  within: (least) => {
    const steps = Math.ceil(least / 4.5 - 1e-9);
    return [length(steps * 4.5), length((steps + 1) * 4.5), length((steps + 2) * 4.5)];
  },
});

const cloths = fc.record({
  width: fc.integer({ min: 80, max: 168 }).map((n) => n / 4),
  demands: fc.array(
    fc
      .record({
        across: fc.integer({ min: 4, max: 60 }),
        along: fc.integer({ min: 4, max: 60 }),
        count: fc.integer({ min: 1, max: 20 }),
        mayTurn: fc.boolean(),
      })
      .map(
        (d): Demand => ({
          across: length(d.across / 4),
          along: length(d.along / 4),
          count: d.count,
          mayTurn: d.mayTurn,
        }),
      ),
    { minLength: 1, maxLength: 7 },
  ),
});

const chosenOf = (ladder: readonly EaseRung[] | undefined): EaseRung => {
  const chosen = ladder?.filter((rung) => rung.chosen) ?? [];
  assert.equal(chosen.length, 1, 'one rung is the one that is cut');
  return chosen[0] as EaseRung;
};

test('asked for least cloth an easier layout is never longer; asked for ease it takes one step of the shop more at most', () => {
  fc.assert(
    fc.property(cloths, ({ width, demands }) => {
      const task = { width: length(width), demands, budget: { steps: 2 } };
      const plain = planLayout(task);
      const least = planLayout({ ...task, easing: easing('least') });
      const easy = planLayout({ ...task, easing: easing('easy') });
      assert.ok(least.layout.length <= plain.layout.length + 1e-9);
      const stepsOf = (long: number): number => Math.ceil(long / 4.5 - 1e-9);
      assert.ok(stepsOf(easy.layout.length) <= stepsOf(plain.layout.length) + 1);
      for (const laid of [least, easy]) {
        assert.deepEqual(checkLayout({ layout: laid.layout, width: length(width), demands }), []);
        assert.ok(laid.bound <= least.layout.length + 1e-9, 'the bound is below the shortest layout');
        assert.ok(Math.abs(chosenOf(laid.ladder).length - laid.layout.length) < 1e-9);
      }
      const [before, after] = [chosenOf(least.ladder), chosenOf(easy.ladder)];
      assert.ok(
        compareEase({ ...after, length: 0 }, { ...before, length: 0 }) <= 0,
        'asked for ease it is no more work',
      );
    }),
    { numRuns: 60, seed: 61 },
  );
});
