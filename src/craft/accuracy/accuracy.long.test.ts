import assert from 'node:assert/strict';
import { test } from 'node:test';
import { mean, quantileSorted, standardDeviation } from 'simple-statistics';
import type { BlockPlan } from '#craft';
import { collection } from '#craft/collection';
import { length } from '#craft/measure';
import { planned, quilt } from '#documents';
import { chanceFrom } from '#ground/chance';
import { rational } from '#ground/exact';
import { trueHabit, usualCare } from './care.ts';
import { anywhere, atLimits, sewByChance, simulate } from './simulated.ts';
import { cutSensitivity, type SizeModel, sensitivity, sizeModels, type Way } from './size-model.ts';
import { spreadOf } from './spread.ts';
import { bestTrimming } from './trimming.ts';

const quarter = length(0.25);

const blockOf = (block: Readonly<Record<string, unknown>>): BlockPlan => {
  const plan = planned(quilt({ blocks: [{ id: 'one', ...block }], top: { rows: [[{ block: 'one' }]] } }));
  return plan.blocks[0] as BlockPlan;
};

const cabin = (rounds: number): BlockPlan =>
  blockOf({
    recipe: {
      kind: 'log-cabin',
      centre: '2',
      centreTone: 'medium',
      rounds: Array.from({ length: rounds }, () => ({ width: '1', tones: ['light', 'light', 'dark', 'dark'] })),
    },
  });

const unit = (kind: string, tones: readonly string[], span: readonly [number, number] = [1, 1]): BlockPlan =>
  blockOf({
    size: [`${span[0] * 4}`, `${span[1] * 4}`],
    recipe: { kind: 'units', grid: span, units: [{ at: [0, 0], span, unit: kind, tones }] },
  });

const sizeAfter = (block: BlockPlan, step: number, way: Way): SizeModel => {
  const model = sizeModels(block, quarter).find((one) => one.step === step && one.way === way);
  assert.ok(model);
  return model;
};

const wholeSize = (block: BlockPlan, way: Way): SizeModel => sizeAfter(block, block.steps.length - 1, way);

const near = (found: number, expected: number, within = 1e-9): void =>
  assert.ok(Math.abs(found - expected) <= within, `found ${found}, expected ${expected}`);

const tones = { light: 'light', medium: 'medium', dark: 'dark', accent: 'medium' };

const fromCollection = (): readonly BlockPlan[] =>
  collection.map(({ id }) => blockOf({ from: id, size: '12', colourings: { default: tones } }));

test('a log cabin of five rounds is crossed by ten seams each way: 1/32 in too much in each allowance makes it 5/8 in small', () => {
  // derived: 10 seams of two allowances, 20 · 1/32 = 5/8
  for (const way of ['across', 'down'] as const) {
    const model = wholeSize(cabin(5), way);
    assert.equal(model.seams.length, 10);
    assert.equal(sensitivity(model).allowance * (1 / 32), 0.625);
    assert.equal(sensitivity(model).fold, 10);
  }
});

test('where all seams are square to it a check size is its cut sizes less two allowances at each seam', () => {
  // derived: docs/formulas.md#check-size
  for (const block of [cabin(3), blockOf({ from: 'nine-patch', size: '9' })]) {
    for (const { drawn, cuts, seams } of sizeModels(block, quarter)) {
      const cut = cuts.reduce((all, { piece, side, grows }) => {
        const { size } = (block.pieces.find(({ label }) => label === piece) as BlockPlan['pieces'][number]).cut;
        return all + grows * (size[side] as number);
      }, 0);
      near(cut - 2 * 0.25 * seams.length, drawn);
    }
  }
});

test('a half-square unit is √2 of an allowance smaller for each that its seam is too wide', () => {
  // derived: right angles lie L/√2 − a from the seam, so a side is L − √2·a
  for (const way of ['across', 'down'] as const) {
    const model = wholeSize(unit('half-square', ['light', 'dark']), way);
    near(sensitivity(model).allowance, Math.SQRT2);
    // derived: and grows with the square that both triangles are cut from, half with each
    assert.deepEqual(
      [...cutSensitivity(model).values()].map((grows) => grows.toFixed(9)),
      ['0.500000000', '0.500000000'],
    );
  }
});

test('a flying goose loses 2√2 of an allowance in width and √2 in height', () => {
  // derived: its two seams lie at an eighth turn, and each moves its sky by 2·e along its normal
  const goose = unit('flying-geese', ['dark', 'light'], [2, 1]);
  near(sensitivity(wholeSize(goose, 'across')).allowance, 2 * Math.SQRT2);
  near(sensitivity(wholeSize(goose, 'down')).allowance, Math.SQRT2);
});

test('every check size of every block in the collection that straight seams join has its model, and knows the step of each seam', () => {
  for (const block of fromCollection()) {
    if (block.joining !== 'straight') continue;
    const models = sizeModels(block, quarter);
    assert.equal(models.length, 2 * block.steps.length, block.title);
    for (const model of models) {
      assert.equal(model.drawn, block.steps[model.step]?.unfinished[model.way === 'across' ? 0 : 1]);
      for (const { step } of model.seams) assert.ok(step !== null && step <= model.step, block.title);
    }
  }
});

test('whole parts added up by the root of the sum of squares: ten limits of 0.1 make 0.316, all one way 1', () => {
  // public text on tolerance stacks (Scholz, Tolerance Stack Analysis Methods, 1995): worst n·T, root of the sum of squares T·√n
  const parts = Array.from({ length: 10 }, (_, patch) => ({ patch, piece: 'A', side: 0 as const, grows: 1 }));
  const model: SizeModel = { ...wholeSize(cabin(1), 'across'), cuts: parts, seams: [] };
  const { worst, rootSumSquare } = spreadOf(model, { cut: length(0.1), seam: length(0) }, trueHabit);
  near(worst, 1);
  near(rootSumSquare, 0.316, 0.0005);
});

test('blocks sewn by chance spread as the formula says, within the error of the simulation', () => {
  const care = usualCare('in');
  const habit = { allowance: length(1 / 64), fold: length(1 / 128) };
  const draws = 20_000;
  for (const [seed, block] of [cabin(3), unit('flying-geese', ['dark', 'light'], [2, 1])].entries()) {
    const models = sizeModels(block, quarter);
    simulate({ models, care, habit, draws, seed: seed + 1 }).forEach((sewn, i) => {
      const { shift, deviation, worst } = spreadOf(models[i] as SizeModel, care, habit);
      // general statistics: the mean of n draws has deviation σ/√n, their deviation about σ/√(2n); five of either, for all sizes at once
      near(sewn.mean, shift, (5 * deviation) / Math.sqrt(draws));
      near(sewn.deviation, deviation, (5 * deviation) / Math.sqrt(2 * draws));
      assert.ok(sewn.furthest <= worst + 1e-12);
    });
  }
});

test('by a general library of statistics, sizes sewn by chance have the mean and the deviation of the formula, and 95 of 100 lie within two of these', () => {
  const care = usualCare('in');
  const models = [wholeSize(cabin(5), 'across')];
  const sew = sewByChance(models, care, trueHabit);
  const chance = chanceFrom(11);
  const draws = 40_000;
  const off = Array.from({ length: draws }, () => sew(chance, anywhere)[0]?.off ?? 0).sort((a, b) => a - b);
  const { shift, deviation } = spreadOf(models[0] as SizeModel, care, trueHabit);
  // simple-statistics: mean, standardDeviation, quantileSorted
  near(mean(off), shift, (4 * deviation) / Math.sqrt(draws));
  near(standardDeviation(off), deviation, (4 * deviation) / Math.sqrt(2 * draws));
  for (const share of [0.0228, 0.9772]) near(Math.abs(quantileSorted(off, share)), 2 * deviation, 0.05 * deviation);
});

test('a million blocks with every cut and seam at a limit stay within the worst case, and a small one reaches it', () => {
  const care = usualCare('in');
  const models = sizeModels(cabin(1), quarter).filter(({ way }) => way === 'across');
  const sewn = simulate({ models, care, habit: trueHabit, draws: 1_000_000, seed: 7, deviate: atLimits });
  sewn.forEach(({ furthest, deviation }, i) => {
    const { worst, rootSumSquare } = spreadOf(models[i] as SizeModel, care, trueHabit);
    near(furthest, worst, 1e-12);
    // at the limits themselves the deviation is the root of the sum of their squares
    near(deviation, rootSumSquare, 0.005 * rootSumSquare);
  });
});

test('a log cabin is best trimmed half-way: what is taken off there and what wanders afterwards are alike', () => {
  const trimming = bestTrimming({ block: cabin(5), seam: quarter, care: usualCare('in'), ruler: rational(1, 8) });
  assert.ok(trimming);
  // derived: variance grows with the logs crossed, so half-way in it is halved; rounds two and three lie about the middle
  assert.ok(trimming.step >= 7 && trimming.step <= 12, `${trimming.step}`);
  near(trimming.trimmed / trimming.untrimmed, Math.SQRT1_2, 0.06);
  assert.equal(trimming.oversize, 0.125);
});

test('what is sewn on a printed sheet has no size to measure, and adds nothing to the seams of what its sheets are joined to', () => {
  const pineapple = blockOf({ from: 'pineapple', size: '12', piecing: 'foundation', colourings: { default: tones } });
  assert.deepEqual(sizeModels(pineapple, quarter), []);
  // by the drawing: a sawtooth star takes sheets joined by seams; only these are crossed
  const star = blockOf({ from: 'sawtooth-star', size: '12', piecing: 'foundation', colourings: { default: tones } });
  const models = sizeModels(star, quarter);
  const joined = star.steps.flatMap(({ kind }, step) => (kind === 'foundation' ? [] : [step]));
  assert.ok(models.length > 0 && joined.length > 0 && joined.length < star.steps.length);
  for (const { step, seams } of models) {
    assert.ok(joined.includes(step));
    assert.ok(seams.every((seam) => seam.step !== null && joined.includes(seam.step)));
  }
});

test('units made together are measured when they are cut apart, and add nothing to their block once they are trimmed', () => {
  const star = (methods: readonly object[]): BlockPlan =>
    blockOf({ from: 'sawtooth-star', size: '8', colourings: { default: tones }, methods });
  const singly = star([]);
  const way = { unit: 'flying-geese', size: [4, 2], way: 'four-at-a-time' };
  const exact = star([{ ...way, trimmed: false }]);
  const trimmed = star([{ ...way, trimmed: true }]);
  for (const block of [exact, trimmed]) {
    const stages = block.steps.flatMap(({ made }, step) => (made && !made.isLast ? [step] : []));
    assert.ok(stages.length > 0);
    assert.deepEqual(
      sizeModels(block, quarter).filter(({ step }) => stages.includes(step)),
      [],
    );
  }
  // by the drawing: the middle row has a goose at either end, each with a height of √2 allowances, and two seams beside the centre
  near(sensitivity(wholeSize(singly, 'across')).allowance, 4 + 2 * Math.SQRT2);
  near(sensitivity(wholeSize(exact, 'across')).allowance, 4 + 2 * Math.SQRT2);
  near(sensitivity(wholeSize(trimmed, 'across')).allowance, 4);
});
