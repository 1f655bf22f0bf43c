import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type BlockPlan, type PlannedStep, planQuilt } from '#craft';
import { example, examples, planned, quilt } from '#documents';
import { chainsOf, samplesFor } from './index.ts';

const half = (x: number, y: number, tones: readonly [string, string], lean: 0 | 1) => {
  const [p, q, r, s] = [
    [x, y],
    [x + 1, y],
    [x + 1, y + 1],
    [x, y + 1],
  ];
  return lean === 0
    ? [
        { points: [p, q, s], tone: tones[0] },
        { points: [q, r, s], tone: tones[1] },
      ]
    : [
        { points: [p, q, r], tone: tones[0] },
        { points: [p, r, s], tone: tones[1] },
      ];
};

test('half-squares of one size and cloth are one batch for both blocks that take them', () => {
  // by hand: a pinwheel takes four of them, a row of two beside a plain square takes two; 3 and 2 of the blocks
  const plan = planned(
    quilt({
      blocks: [
        {
          id: 'pinwheel',
          size: '6',
          patches: {
            grid: [2, 2],
            list: [
              ...half(0, 0, ['dark', 'light'], 0),
              ...half(1, 0, ['light', 'dark'], 1),
              ...half(0, 1, ['dark', 'light'], 1),
              ...half(1, 1, ['light', 'dark'], 0),
            ],
          },
        },
        {
          id: 'row',
          size: ['6', '6'],
          patches: {
            grid: [2, 2],
            list: [
              ...half(0, 0, ['dark', 'light'], 0),
              ...half(1, 0, ['dark', 'light'], 0),
              {
                points: [
                  [0, 1],
                  [2, 1],
                  [2, 2],
                  [0, 2],
                ],
                tone: 'medium',
              },
            ],
          },
        },
      ],
      top: {
        rows: [
          [{ block: 'pinwheel' }, { block: 'row' }, { block: 'pinwheel' }, { block: 'row' }, { block: 'pinwheel' }],
        ],
      },
    }),
  );
  const [first] = chainsOf(plan.blocks);
  assert.deepEqual(
    first?.batches.map(({ number, count, members }) => [number, count, members.map((one) => [one.entry, one.count])]),
    [
      [
        1,
        16,
        [
          [0, 12],
          [1, 4],
        ],
      ],
    ],
  );
});

/** Names of units, and of pieces as they are. */
const partsOf = (block: BlockPlan, step: PlannedStep): readonly number[] =>
  step.join.flatMap((part) => {
    const maker = block.steps.findIndex(({ makes }) => makes === part);
    return maker < 0 ? [] : [maker];
  });

test('in every example each unit is in one batch, after those of its parts, and no unit is lost', () => {
  for (const document of examples()) {
    const outcome = planQuilt(document, { budget: { steps: 0 } });
    assert.ok(outcome.ok);
    const { blocks, quilt: named } = outcome.value;
    const rounds = chainsOf(blocks);
    const roundOf = new Map(
      rounds.flatMap(({ batches }, round) =>
        batches.flatMap(({ members }) => members.map(({ entry, step }) => [`${entry} ${step}`, round] as const)),
      ),
    );
    const sewn = blocks.flatMap((block) => (block.foundations === null ? block.steps : []));
    const count = rounds.flatMap(({ batches }) => batches).reduce((all, batch) => all + batch.count, 0);
    assert.equal(
      count,
      sewn.reduce((all, { total }) => all + total, 0),
      named.title,
    );
    blocks.forEach((block, entry) => {
      if (block.foundations !== null) return;
      block.steps.forEach((step, index) => {
        const own = roundOf.get(`${entry} ${index}`);
        assert.ok(own !== undefined);
        for (const part of partsOf(block, step))
          assert.ok((roundOf.get(`${entry} ${part}`) as number) < own, named.title);
      });
    });
  }
});

/** Whether every step can be shown in turn with these units beforehand. */
const canBeShown = (block: BlockPlan, before: ReadonlyMap<number, number>): boolean => {
  const there = new Map(before);
  return block.steps.every((step, index) => {
    const parts = step.kind === 'partial-close' ? partsOf(block, step).slice(0, 1) : partsOf(block, step);
    for (const part of parts) {
      const count = there.get(part) ?? 0;
      if (count === 0) return false;
      there.set(part, count - 1);
    }
    there.set(index, (there.get(index) ?? 0) + 1);
    return true;
  });
};

test('with the units sewn beforehand every step can be shown, and with one of them less it cannot', () => {
  for (const name of ['twelve-fields', 'weir-street', 'lamp-street'] as const) {
    const outcome = planQuilt(example(name), { budget: { steps: 0 } });
    assert.ok(outcome.ok);
    for (const block of outcome.value.blocks) {
      const samples = samplesFor(block);
      const before = new Map(samples.map(({ step, count }) => [step, count]));
      assert.ok(canBeShown(block, before), block.title);
      for (const { step, count } of samples)
        assert.ok(!canBeShown(block, new Map(before).set(step, count - 1)), block.title);
    }
  }
});
