import assert from 'node:assert/strict';
import { test } from 'node:test';
import { mean, standardDeviation } from 'simple-statistics';
import type { QuiltPlan } from '#craft';
import {
  anywhere,
  atLimits,
  type SizeModel,
  seamsCrossed,
  sensitivity,
  simulate,
  spreadOf,
  trueHabit,
  usualCare,
  type Way,
} from '#craft/accuracy';
import { length } from '#craft/measure';
import { example, planned, quilt, setOf } from '#documents';
import { chanceFrom } from '#ground/chance';
import { toNumber } from '#ground/exact';
import { topSizes } from './top-sizes.ts';

const care = usualCare('in');

const colourings = { default: { light: 'light', medium: 'medium', dark: 'dark', accent: 'medium' } };
const ninePatch = { id: 'nine', from: 'nine-patch', size: '9', colourings };

const cabin = (rounds: number) => ({
  id: 'cabin',
  recipe: {
    kind: 'log-cabin',
    centre: '2',
    centreTone: 'medium',
    rounds: Array.from({ length: rounds }, () => ({ width: '1', tones: ['light', 'light', 'dark', 'dark'] })),
  },
});

const planOf = (block: Readonly<Record<string, unknown>>, top: Readonly<Record<string, unknown>>): QuiltPlan =>
  planned(quilt({ blocks: [block], top }));

const sizesOf = ({ top, blocks, quilt: { seam } }: QuiltPlan): readonly SizeModel[] =>
  topSizes({ top, blocks, seam: length(toNumber(seam)) });

const wholeOf = (plan: QuiltPlan, way: Way): SizeModel => {
  const model = sizesOf(plan).findLast((one) => one.way === way);
  assert.ok(model);
  return model;
};

const near = (found: number, expected: number, within = 1e-9): void =>
  assert.ok(Math.abs(found - expected) <= within, `found ${found}, expected ${expected}`);

const examples = [
  'harvest-home-throw',
  'lantern-lane',
  'hedge-sparrow',
  'twelve-fields',
  'drying-barn',
  'ferry-landing',
];

test('a row of n blocks that k seams cross each is crossed by nk + n − 1, and loses two allowances at each', () => {
  // derived: k seams in every block and one between two neighbours
  for (const [block, seams] of [
    [ninePatch, 2],
    [cabin(3), 6],
  ] as const) {
    for (const count of [2, 5]) {
      const model = wholeOf(planOf(block, setOf(block.id, { across: count })), 'across');
      assert.equal(seamsCrossed(model), count * seams + count - 1);
      near(sensitivity(model).allowance, 2 * (count * seams + count - 1));
    }
  }
});

test('five cabins of three rounds side by side: each allowance 1/32 in too wide makes the row 2 1/8 in small', () => {
  // derived: 5 · 6 + 4 = 34 seams of two allowances, 68/32 = 2 1/8
  const model = wholeOf(planOf(cabin(3), setOf('cabin', { across: 5 })), 'across');
  assert.equal(sensitivity(model).allowance * (1 / 32), 2.125);
});

test('nine-patches three by three, edge to edge, vary by 9 cuts and 8 seams each way', () => {
  // derived: 3 · 3 squares, 3 · 2 + 2 seams; two allowances of a seam are off together
  const plan = planOf(ninePatch, setOf('nine', { across: 3, down: 3 }));
  const { cut, seam } = care;
  for (const way of ['across', 'down'] as const) {
    const { worst, rootSumSquare } = spreadOf(wholeOf(plan, way), care, trueHabit);
    near(worst, 9 * cut + 8 * 2 * seam);
    near(rootSumSquare, Math.sqrt(9 * cut ** 2 + 8 * (2 * seam) ** 2));
  }
});

const sashed = (across: number, down: number, more: object = {}) =>
  setOf('nine', {
    across,
    down,
    sashing: { width: '2', fabric: 'dark', cornerstones: 'light' },
    borders: [{ width: '3', fabric: 'medium' }],
    ...more,
  });

test('sashes and borders add their cuts and seams; where sashes lie in the middle the way goes through blocks', () => {
  const plan = planOf(ninePatch, sashed(2, 2));
  for (const way of ['across', 'down'] as const) {
    const model = wholeOf(plan, way);
    // derived: border, block, sash, block, border: four seams between five things, two within each block
    assert.equal(model.seams.length, 4);
    assert.equal(seamsCrossed(model), 8);
    const { worst } = spreadOf(model, care, trueHabit);
    near(worst, (2 + 1 + 2 * 3) * care.cut + 8 * 2 * care.seam);
  }
});

test('a border with squares at its corners is cut to what the quilt measures, and varies with it', () => {
  const plan = planOf(ninePatch, sashed(2, 1, { borders: [{ width: '3', fabric: 'medium', corners: 'squares' }] }));
  const models = sizesOf(plan);
  const ofRow = plan.top.steps.findLastIndex(({ stage, measure }) => stage === 'border' && measure === null);
  const model = models.find(({ step, way }) => step === ofRow && way === 'across');
  assert.ok(model);
  // derived: two corner squares, two seams; the strip itself as long as block, sash, block: two seams between, two within each
  assert.equal(model.seams.length, 2 + 2);
  assert.equal(seamsCrossed(model), 8);
  near(spreadOf(model, care, trueHabit).worst, (2 + 1 + 1 + 2 * 3) * care.cut + 8 * 2 * care.seam);
});

test('on point the width takes 2√2·m·(k + 1) of each allowance, and setting triangles, which are trimmed, add nothing', () => {
  // derived: the diagonal of a block whose side is less by 2·(k + 1) allowances, m of them from corner to corner
  for (const across of [2, 3]) {
    const row = Array.from({ length: across }, () => ({ block: 'nine' }));
    const top = { set: 'on-point', rows: [row, row], between: [row.slice(1)], settingFabric: 'dark' };
    const plan = planOf(ninePatch, top);
    near(sensitivity(wholeOf(plan, 'across')).allowance, 2 * Math.SQRT2 * across * (2 + 1), 1e-6);
    near(sensitivity(wholeOf(plan, 'down')).allowance, 2 * Math.SQRT2 * 2 * (2 + 1), 1e-6);
    const triangles = plan.top.pieces.filter(({ role }) => role.endsWith('triangle')).map(({ label }) => label);
    assert.ok(sizesOf(plan).every(({ cuts }) => cuts.every(({ piece }) => !triangles.includes(piece))));
  }
});

test('where everything is cut on a mark and lies square, a size is the sum of what it goes over less two allowances a seam', () => {
  // derived: docs/formulas.md#check-size
  for (const name of ['harvest-home-throw', 'drying-barn', 'orchard-gate', 'biscuit-box']) {
    const plan = planned(example(name));
    const seam = toNumber(plan.quilt.seam);
    const sizeOf = (place: number, way: Way): number => {
      const { placed, strips } = plan.top.set;
      const block = placed[place];
      const rect = strips[place - placed.length]?.rect;
      const size = block?.size ?? [rect?.width ?? 0, rect?.height ?? 0];
      return size[way === 'across' ? 0 : 1] as number;
    };
    for (const { drawn, cuts, seams, way } of sizesOf(plan)) {
      const all = cuts.reduce((sum, { patch }) => sum + sizeOf(patch, way) + 2 * seam, 0);
      near(all - 2 * seam * seams.length, drawn, 1e-6);
    }
  }
});

test('every seam of a top that a size goes over knows its step, and that comes no later', () => {
  for (const name of examples) {
    for (const { step, seams } of sizesOf(planned(example(name))))
      assert.ok(
        seams.every((seam) => seam.step !== null && seam.step <= step),
        name,
      );
  }
});

test('tops sewn by chance, with every piece of every block, spread as the formula says, and stay within the worst case', () => {
  const habit = { allowance: length(1 / 64), fold: length(1 / 128) };
  const draws = 2_000;
  for (const [seed, name] of ['harvest-home-throw', 'lantern-lane'].entries()) {
    const all = sizesOf(planned(example(name)));
    const models = all.filter((_, i) => i % 12 === 0 || i >= all.length - 2);
    const of = { models, care, habit, draws, seed: seed + 1 };
    simulate(of).forEach((sewn, i) => {
      const { shift, deviation, worst } = spreadOf(models[i] as SizeModel, care, habit);
      // general statistics: the mean of n draws has deviation σ/√n, their deviation about σ/√(2n); five of either, for all sizes at once
      near(sewn.mean, shift, (5 * deviation) / Math.sqrt(draws));
      near(sewn.deviation, deviation, (5 * deviation) / Math.sqrt(2 * draws));
      assert.ok(sewn.furthest <= worst + 1e-12);
    });
    simulate({ ...of, deviate: atLimits }).forEach(({ furthest }, i) => {
      assert.ok(furthest <= spreadOf(models[i] as SizeModel, care, habit).worst + 1e-12);
    });
  }
});

test('a million rows with every cut and seam of every block at a limit stay within the worst case, and some reach it', () => {
  const model = wholeOf(planOf(ninePatch, setOf('nine', { across: 2 })), 'across');
  const [sewn] = simulate({ models: [model], care, habit: trueHabit, draws: 1_000_000, seed: 9, deviate: atLimits });
  // derived: six squares and five seams, each at either limit: two rows in 2 048 have all of them one way
  near(sewn?.furthest ?? 0, spreadOf(model, care, trueHabit).worst, 1e-12);
});

test('a row cut and sewn piece by piece, by its own sum, comes out as the model has it', () => {
  // the sum of nine cuts less eight seams, drawn without the model; simple-statistics: mean, standardDeviation
  const chance = chanceFrom(5);
  const draws = 20_000;
  const [cut, seam] = [3.5, 0.25 + 1 / 64];
  const sewn = Array.from({ length: draws }, () => {
    let size = 0;
    for (let i = 0; i < 9; i++) size += cut + care.cut * anywhere(chance);
    for (let i = 0; i < 8; i++) size -= 2 * (seam + care.seam * anywhere(chance));
    return size;
  });
  const model = wholeOf(planOf(ninePatch, setOf('nine', { across: 3 })), 'across');
  const { shift, deviation } = spreadOf(model, care, { allowance: length(1 / 64), fold: length(0) });
  near(mean(sewn), model.drawn + shift, (4 * deviation) / Math.sqrt(draws));
  near(standardDeviation(sewn), deviation, (4 * deviation) / Math.sqrt(2 * draws));
});
