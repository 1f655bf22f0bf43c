import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltPlan } from '#craft';
import { type Care, type CutTerm, type SizeModel, usualCare } from '#craft/accuracy';
import { length } from '#craft/measure';
import { topAsBlock, topSizes } from '#craft/top-sizes';
import { assertHeld, type Measurer, namedIn, planned, quilt, readBy, readingNoise, setOf, sixteenth } from '#documents';
import { type Diagnosis, diagnoseTop, diagnosisOf } from './diagnose.ts';
import type { Explanation } from './explanations.ts';
import type { Reading } from './readings.ts';

const quarter = length(0.25);

const colourings = { default: { light: 'light', medium: 'medium', dark: 'dark', accent: 'medium' } };
const nine = { id: 'nine', from: 'nine-patch', size: '9', colourings };
const planOf = (top: Readonly<Record<string, unknown>>): QuiltPlan => planned(quilt({ blocks: [nine], top }));

const sashing = { width: '2', fabric: 'dark', cornerstones: 'light' };
const row = (count: number) => Array.from({ length: count }, () => ({ block: 'nine' }));
const tops: Readonly<Record<string, QuiltPlan>> = {
  'edge to edge': planOf(setOf('nine', { across: 3, down: 4 })),
  sashed: planOf(setOf('nine', { across: 3, down: 4, sashing, borders: [{ width: '3', fabric: 'medium' }] })),
  'on point': planOf({
    set: 'on-point',
    rows: [row(2), row(2), row(2)],
    between: [row(1), row(1)],
    settingFabric: 'dark',
    borders: [{ width: '3', fabric: 'medium' }],
  }),
};

const modelsOf = ({ top, blocks }: QuiltPlan): readonly SizeModel[] => topSizes({ top, blocks, seam: quarter });

/** Which steps she measures after: what each row comes to and the quilt after each seam from then on, or others. */
const measuring = {
  'each row and what is joined of them': ({ top: { steps } }: QuiltPlan, step: number) => {
    const [here, next] = [steps[step], steps[step + 1]];
    return here?.stage !== 'row' || next?.stage !== 'row' || next.of !== here.of;
  },
  'every step': () => true,
  'every second step': (_: QuiltPlan, step: number) => step % 2 === 1,
  'the last two steps': ({ top: { steps } }: QuiltPlan, step: number) => step >= steps.length - 2,
} as const;

type Measuring = keyof typeof measuring;

const measuredIn = (plan: QuiltPlan, which: Measuring): readonly SizeModel[] =>
  modelsOf(plan).filter(({ step }) => measuring[which](plan, step));

/** All of them in a long run. */
const ways = Object.keys(measuring).slice(0, process.env.SEAMSTEAD_RUNS === undefined ? 1 : 4) as readonly Measuring[];

const diagnosed = ({ top }: QuiltPlan, models: readonly SizeModel[], list: readonly Reading[]): Diagnosis =>
  diagnosisOf({
    block: topAsBlock(top),
    top,
    seam: quarter,
    unit: 'in',
    models,
    read: { list, fineness: sixteenth },
    care: usualCare('in'),
  });

const found = ({ top, blocks }: QuiltPlan, measured: string): Diagnosis => {
  const outcome = diagnoseTop({ top, blocks, seam: quarter, unit: 'in', measured });
  assert.ok(outcome.ok, JSON.stringify(outcome));
  return outcome.value;
};

const topsMeasured = Object.entries(tops).flatMap(([name, plan]) => ways.map((which) => [name, plan, which] as const));

for (const [name, plan, which] of topsMeasured) {
  test(`over seeded students of a top ${name} who measure ${which} the 95 % limits hold the planted allowance in 93.5 to 96.5 of 100`, () => {
    const models = measuredIn(plan, which);
    assertHeld(1, (habit, chance) =>
      diagnosed(plan, models, readBy(models, { habit, care: usualCare('in'), reads: 'to the mark' }, chance)),
    );
  });
}

/** Students who measure after every step. */
const namedOf = (
  plan: QuiltPlan,
  of: Pick<Measurer, 'care' | 'reads'> & {
    readonly slip: (term: CutTerm) => number;
    readonly is: (explanation: Explanation) => boolean;
  },
) => {
  const models = modelsOf(plan);
  const slip = ({ cuts }: SizeModel): number => cuts.reduce((all, term) => all + term.grows * of.slip(term), 0);
  return namedIn({ seed: 2, students: 100 }, (habit, chance) => {
    const { ranked } = diagnosed(plan, models, readBy(models, { ...of, habit, slip }, chance));
    return { ranked, isPlanted: of.is };
  });
};

test('a plain piece of a top cut wrong by five times the noise of a reading is named in 90 of 100, and among the two likeliest in 97', () => {
  const plan = tops.sashed as QuiltPlan;
  const care: Care = { cut: length(0), seam: length(0) };
  for (const { label, cut } of plan.top.pieces) {
    const narrow = cut.size[0] < cut.size[1] || cut.shape === 'square' ? 0 : 1;
    for (const off of [-5 * readingNoise, 5 * readingNoise]) {
      const { first, among } = namedOf(plan, {
        care,
        reads: 'beside the mark',
        slip: ({ piece, side }) => (piece === label && side === narrow ? off : 0),
        is: (one) => one.kind === 'cut' && one.piece === label && one.side === narrow,
      });
      assert.ok(first >= 90 && among >= 97, `${label} ${off}: ${first}, ${among}`);
    }
  }
});

test('one block of a sashed top that is 1/4 in off is told from the others, or from those that lie as it does', () => {
  const plan = tops.sashed as QuiltPlan;
  // the block in the middle of the second row: no alike row goes over it
  const place = 4;
  for (const off of [-1 / 4, 1 / 4]) {
    const { first, among } = namedOf(plan, {
      care: usualCare('in'),
      reads: 'to the mark',
      slip: ({ patch }) => (patch === place ? off : 0),
      is: (one) => one.kind === 'one' && one.piece === 'nine' && one.at.includes(place),
    });
    assert.ok(first >= 90 && among >= 97, `${off}: ${first}, ${among}`);
  }
});

test('three nine-patches in a row that are 1/2 in small are sewn 1/32 in too wide: blocks and seams between them together', () => {
  // by hand: each block is crossed by two seams, 8 in all, 16 allowances of 1/32; in height two seams, 1/8 in
  const plan = tops['edge to edge'] as QuiltPlan;
  const rows = plan.top.steps.find(({ stage }) => stage === 'rows')?.number;
  const wrong = found(plan, `1: 18 3/16 x 9 3/8; 2: 27 x 9 3/8; ${rows}: 27 x 18 3/16`);
  assert.equal(wrong.verdict.kind, 'wide');
  assert.ok(Math.abs(wrong.allowance.value - 1 / 32) < 1 / 128, `${wrong.allowance.value}`);
});

test('one size of a top says too little, and what to measure next is named', () => {
  const { verdict, next, rescues } = found(tops.sashed as QuiltPlan, '2: 20 1/4');
  assert.equal(verdict.kind, 'too-few');
  assert.ok(next !== null && next.sooner !== null);
  assert.deepEqual(rescues, []);
});

test('where borders are still to come they are cut to the measure of the quilt, the last one wider by half of what is missing', () => {
  const plan = tops.sashed as QuiltPlan;
  const models = measuredIn(plan, 'each row and what is joined of them').filter(
    ({ step }) => plan.top.steps[step]?.stage !== 'border',
  );
  const list = models.map(({ step, way, drawn, seams, cuts }) => {
    const inner = cuts.reduce((all, { sewn }) => all + (sewn?.seams.length ?? 0), 0);
    return { step, way, size: length(drawn - (seams.length + inner) / 16) };
  });
  const { verdict, rescues, whole } = diagnosed(plan, modelsOf(plan), list);
  assert.equal(verdict.kind, 'wide');
  assert.ok(rescues.some(({ kind }) => kind === 'fit-borders'));
  const wider = rescues.find((rescue) => rescue.kind === 'widen-border');
  assert.ok(wider?.kind === 'widen-border' && whole !== null);
  // by hand: three blocks and two sashes have ten seams, four and three 14, each 1/16 in too much; half of it at either side
  assert.ok(Math.abs(wider.by[0] - 10 / 16 / 2) < 1 / 32, `${wider.by[0]}`);
  assert.ok(Math.abs(wider.by[1] - 14 / 16 / 2) < 1 / 32, `${wider.by[1]}`);
});

test('a width that ends in setting triangles is not measured, and that is told', () => {
  const { top, blocks } = tops['on point'] as QuiltPlan;
  const outcome = diagnoseTop({ top, blocks, seam: quarter, unit: 'in', measured: '1: 12 x 9 1/2' });
  assert.ok(!outcome.ok);
  assert.deepEqual(
    outcome.problems.map((problem) => ('why' in problem ? problem.why : problem.code)),
    ['in-triangles'],
  );
});
