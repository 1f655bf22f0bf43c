import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import fc from 'fast-check';
import { length } from '#craft/measure';
import { type LeastTask, leastOver, type PartCost } from './least.ts';
import type { Choice } from './likely.ts';
import type { CutCounts, CutLine } from './lines.ts';

const line = (gives: number): CutLine => ({
  fabric: 'red',
  size: [length(2), length(2)],
  mayTurn: false,
  gives,
  nests: false,
  area: 4,
});

const lines = new Map([
  ['squares', line(1)],
  ['halves', line(2)],
  ['quarters', line(4)],
]);

const prices = { piece: 0.3, strip: 1, perStrip: 5 };

/** By hand: every piece, and every strip that is begun. */
const costOf = (task: LeastTask, choice: Choice): number => {
  const taken = [task.fixed, ...choice.map((option, part) => task.parts[part]?.[option] as PartCost)];
  const cut = [...lines].map(([key, { gives }]) => {
    const patches = taken.reduce((sum, { counts }) => sum + (counts.get(key)?.patches ?? 0), 0);
    const sets = taken.reduce((sum, { counts }) => sum + (counts.get(key)?.pieces ?? 0), 0);
    const pieces = Math.ceil(patches / gives) + sets;
    return prices.piece * pieces + prices.strip * Math.ceil(pieces / prices.perStrip);
  });
  return taken.reduce((sum, { own }) => sum + own, 0) + cut.reduce((sum, one) => sum + one, 0);
};

const everyChoice = ({ parts }: LeastTask): readonly Choice[] =>
  parts.reduce<readonly Choice[]>(
    (before, options) => before.flatMap((choice) => options.map((_, option) => [...choice, option])),
    [[]],
  );

const counts: fc.Arbitrary<CutCounts> = fc
  .array(fc.tuple(fc.constantFrom(...lines.keys()), fc.nat(9), fc.nat(3)), { maxLength: 3 })
  .map((list) => new Map(list.map(([key, patches, pieces]) => [key, { patches, pieces }])));

const option: fc.Arbitrary<PartCost> = fc.record({ own: fc.nat(40).map((tenths) => tenths / 10), counts });

const tasks: fc.Arbitrary<LeastTask> = fc.record({
  lines: fc.constant(lines),
  priceOf: fc.constant(() => prices),
  parts: fc.array(fc.array(option, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 }),
  fixed: option,
  below: fc.constant(Number.POSITIVE_INFINITY),
});

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

describe('the least of all choices, by branch and bound', () => {
  test('is that of trying every one, and the bound is what it takes', () => {
    fc.assert(
      fc.property(tasks, (task) => {
        const { choice, takes, bound } = leastOver(task);
        const least = Math.min(...everyChoice(task).map((one) => costOf(task, one)));
        assert.ok(choice !== null && near(costOf(task, choice), least) && near(takes, least) && near(bound, least));
      }),
    );
  });

  test('of the choices that are not known, and less than what is asked for', () => {
    fc.assert(
      fc.property(tasks, fc.nat(7), (task, known) => {
        const all = everyChoice(task);
        const isKnown = (choice: Choice): boolean => choice.reduce((sum, one) => sum + one, 0) % 8 === known;
        const left = all.filter((choice) => !isKnown(choice)).map((choice) => costOf(task, choice));
        const least = Math.min(...left, 1e9);
        const found = leastOver({ ...task, isKnown, below: 1e9 });
        assert.ok(near(found.bound, least) && (found.choice === null) === (left.length === 0));
        const none = leastOver({ ...task, isKnown, below: least - 0.01 });
        assert.ok(none.choice === null && near(none.bound, least - 0.01));
      }),
    );
  });

  test('with leave to be off by a little, the bound is below every choice and the choice near the bound', () => {
    fc.assert(
      fc.property(tasks, (task) => {
        const { takes, bound } = leastOver({ ...task, within: 0.5 });
        const least = Math.min(...everyChoice(task).map((one) => costOf(task, one)));
        assert.ok(bound <= least + 1e-9 && takes >= least - 1e-9 && takes <= bound + 0.5 + 1e-9);
      }),
    );
  });
});
