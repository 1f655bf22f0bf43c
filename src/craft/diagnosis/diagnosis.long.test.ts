import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BlockPlan } from '#craft';
import { type Care, type CutTerm, type SizeModel, sizeModels, usualCare } from '#craft/accuracy';
import { length } from '#craft/measure';
import {
  assertHeld,
  example,
  type Measurer,
  namedIn,
  planned,
  quilt,
  readBy,
  readingNoise,
  sixteenth,
  straying,
  trials,
} from '#documents';
import { type Chance, chanceFrom } from '#ground/chance';
import { type Diagnosis, diagnose, diagnosisOf } from './diagnose.ts';
import type { Reading } from './readings.ts';

const quarter = length(0.25);

const cabin = (widths: string | readonly string[], rounds = 3): BlockPlan => {
  const round = { width: widths, tones: ['light', 'light', 'dark', 'dark'] };
  const recipe = { kind: 'log-cabin', centre: '2', centreTone: 'medium', rounds: Array(rounds).fill(round) };
  return planned(quilt({ blocks: [{ id: 'cabin', recipe }], top: { rows: [[{ block: 'cabin' }]] } }))
    .blocks[0] as BlockPlan;
};

const fromCollection = (id: string, size: string): BlockPlan => {
  const colourings = { default: { light: 'light', medium: 'medium', dark: 'dark', accent: 'medium' } };
  return planned(quilt({ blocks: [{ id: 'one', from: id, size, colourings }], top: { rows: [[{ block: 'one' }]] } }))
    .blocks[0] as BlockPlan;
};

const goose = (): BlockPlan => {
  const units = [{ unit: 'flying-geese', at: [0, 0], span: [2, 1], tones: ['dark', 'light'] }];
  const recipe = { kind: 'units', grid: [2, 1], units };
  return planned(quilt({ blocks: [{ id: 'goose', size: [4, 2], recipe }], top: { rows: [[{ block: 'goose' }]] } }))
    .blocks[0] as BlockPlan;
};

const modelsOf = (block: BlockPlan): readonly SizeModel[] => sizeModels(block, quarter);

const found = (block: BlockPlan, measured: string): Diagnosis => {
  const outcome = diagnose({ block, seam: quarter, unit: 'in', measured });
  assert.ok(outcome.ok, JSON.stringify(outcome));
  return outcome.value;
};

const refusedFor = (block: BlockPlan, measured: string) => {
  const outcome = diagnose({ block, seam: quarter, unit: 'in', measured });
  assert.ok(!outcome.ok);
  return outcome.problems;
};

const diagnosed = (block: BlockPlan, models: readonly SizeModel[], list: readonly Reading[]): Diagnosis =>
  diagnosisOf({
    block,
    seam: quarter,
    unit: 'in',
    models,
    read: { list, fineness: sixteenth },
    care: usualCare('in'),
  });

/** The cabin, and blocks with few sizes, with slanted seams, and with both. */
const measuredBlocks: readonly (readonly [string, () => BlockPlan])[] = [
  ['cabin', () => cabin('1')],
  ['nine-patch', () => fromCollection('nine-patch', '9')],
  ['sawtooth-star', () => fromCollection('sawtooth-star', '8')],
  ['ohio-star', () => fromCollection('ohio-star', '9')],
  // of few sizes, each mostly its own reading, the limits are narrower than those of a normal error
  ['flying goose alone', () => goose()],
];

for (const [name, blockOf] of measuredBlocks) {
  test(`over seeded students of a ${name} the 95 % limits hold the planted allowance in 93.5 to 96.5 of 100`, () => {
    const block = blockOf();
    const models = modelsOf(block);
    assertHeld(1, (habit, chance) =>
      diagnosed(block, models, readBy(models, { habit, care: usualCare('in'), reads: 'to the mark' }, chance)),
    );
  });
}

/** Students with one log cut wrong by `off`. */
const assertLogNamed = (
  of: Pick<Measurer, 'care' | 'reads'> & { readonly off: number; readonly seed: number },
): void => {
  const block = cabin('1');
  const models = modelsOf(block);
  const logs = block.pieces.map(({ label }) => label).slice(1);
  const { first, among } = namedIn({ seed: of.seed, students: trials }, (habit, chance) => {
    const log = logs[Math.floor(chance() * logs.length)] as string;
    const off = chance() < 0.5 ? -of.off : of.off;
    const slip = ({ cuts }: SizeModel): number =>
      cuts.reduce((all, { piece, grows }) => (piece === log ? all + grows * off : all), 0);
    const { ranked } = diagnosed(block, models, readBy(models, { habit, slip, ...of }, chance));
    return { ranked, isPlanted: (one) => one.kind === 'cut' && one.piece === log };
  });
  assert.ok(first >= 90 - straying(0.9) && among >= 97 - straying(0.97), `${first} ${among}`);
};

test('over seeded students with a log wrong both ways, by 1/16 to 1/4 in, the limits hold the allowance in 92.5 to 97 of 100', () => {
  const block = cabin('1');
  const models = modelsOf(block);
  const bothWays = ['A', 'B', 'C', 'D'].filter((piece) => isMoved(models, piece));
  const told = (habit: number, chance: Chance): Diagnosis => {
    const piece = bothWays[Math.floor(chance() * bothWays.length)] as string;
    const by = [0, 1].map(() => (chance() < 0.5 ? -1 : 1) * (1 / 16 + (3 / 16) * chance())) as [number, number];
    const slip = ({ cuts, way }: SizeModel): number =>
      cuts.reduce(
        (all, cut) => (cut.piece === piece ? all + cut.grows * (by[way === 'across' ? 0 : 1] as number) : all),
        0,
      );
    return diagnosed(
      block,
      models,
      readBy(models, { habit, care: usualCare('in'), slip, reads: 'to the mark' }, chance),
    );
  };
  assertHeld(5, told, [92.5, 97]);
});

/** Whether sizes both ways go over a piece. */
const isMoved = (models: readonly SizeModel[], piece: string): boolean =>
  (['across', 'down'] as const).every((way) =>
    models.some((model) => model.way === way && model.cuts.some((cut) => cut.piece === piece)),
  );

const perfect: Care = { cut: length(0), seam: length(0) };

test('a log cut wrong by five times the noise of a reading is named in 90 of 100, and among the two likeliest in 97', () => {
  assertLogNamed({ care: perfect, reads: 'beside the mark', off: 5 * readingNoise, seed: 2 });
});

test('so it is among cuts and seams that vary, by five times the noise that a step adds to them', () => {
  const care = usualCare('in');
  // a reading, a cut and a seam of two allowances, each anywhere within its limits
  const noise = Math.sqrt(readingNoise ** 2 + (care.cut ** 2 + (2 * care.seam) ** 2) / 3);
  assertLogNamed({ care, reads: 'to the mark', off: 5 * noise, seed: 3 });
});

test('two logs of a thick and thin cabin that changed places are named', () => {
  const block = cabin(['1', '1', '1/2', '1/2']);
  const models = modelsOf(block);
  const chance = chanceFrom(4);
  const pairs = [
    ['B', 'D'],
    ['F', 'H'],
    ['C', 'E'],
    ['G', 'D'],
  ] as const;
  for (const [thick, thin] of pairs) {
    // each log is as wide as the other should be; its length is trimmed to its neighbours
    const wider = ({ piece, side }: CutTerm): number => {
      const cut = block.pieces.find(({ label }) => label === piece)?.cut.size ?? [0, 0];
      if (cut[side] !== Math.min(...cut)) return 0;
      return piece === thick ? -1 / 2 : piece === thin ? 1 / 2 : 0;
    };
    const slip = ({ cuts }: SizeModel): number => cuts.reduce((all, cut) => all + cut.grows * wider(cut), 0);
    const list = readBy(models, { habit: 1 / 64, care: usualCare('in'), slip, reads: 'to the mark' }, chance);
    const { verdict } = diagnosed(block, models, list);
    assert.equal(verdict.kind, 'swap', `${thick} ${thin}`);
    assert.deepEqual(verdict.kind === 'swap' ? [...verdict.pieces].sort() : [], [thick, thin].toSorted());
  }
});

test('logs that changed places are named though a size is what the unit would measure lying the other way', () => {
  // by hand: centre 2 in, logs of 1, 1, 1/2 and 1/2 in round by round; the 1 in log of step 5 and the 1/2 in log of step 8 are exchanged.
  // After step 11 the unit is 6 1/2 x 7 in in place of 7 x 6 1/2; its height is that after step 10
  const read =
    '1: 3 1/2 x 2 1/2; 2: 3 1/2 x 3 1/2; 3: 4 x 3 1/2; 4: 4 x 4; 5: 4 1/2 x 4; 6: 4 1/2 x 5; 7: 5 x 5; 8: 5 x 6; 9: 6 x 6; 10: 6 x 7; 11: 6 1/2 x 7; 12: 6 1/2 x 7 1/2';
  const { verdict } = found(cabin(['1', '1', '1/2', '1/2']), read);
  assert.deepEqual(verdict, { kind: 'swap', pieces: ['F', 'I'] });
  // alone, or read so twice, it lies the other way
  for (const alone of ['11: 6 1/2 x 7', '11: 6 1/2 x 7; 11: 6 1/2 x 7'])
    assert.equal(refusedFor(cabin(['1', '1', '1/2', '1/2']), alone)[0]?.code, 'diagnosis/turned');
});

test('seams 1/32 in too wide are found from four steps, and the block is told to come out 3/8 in small', () => {
  // derived: the check size less 1/16 in for each seam crossed; a cabin of three rounds is crossed by six seams
  const wrong = found(cabin('1'), '1: 3 7/16 x 2 1/2; 2: 3 7/16 x 3 7/16; 3: 4 3/8 x 3 7/16; 4: 4 3/8 x 4 3/8');
  assert.equal(wrong.verdict.kind, 'wide');
  assert.ok(Math.abs(wrong.allowance.value - 1 / 32) < 1 / 256, `${wrong.allowance.value}`);
  assert.ok(Math.abs((wrong.whole?.before[0] ?? 0) + 3 / 8) < 1 / 32, `${wrong.whole?.before[0]}`);
  assert.ok(Math.abs((wrong.whole?.mended[0] ?? 0) + 1 / 8) < 1 / 32, `${wrong.whole?.mended[0]}`);
  // by hand: 1/8 in is missing, and four seams to come each way take two allowances each: 1/64 in narrower each
  const makeUp = wrong.rescues.find(({ kind }) => kind === 'make-up');
  assert.ok(makeUp?.kind === 'make-up' && Math.abs(makeUp.allowance - (1 / 4 - 1 / 64)) < 1 / 256);
});

test('a piece cut wrong both ways is told with both', () => {
  // by hand: the centre A is cut 1/8 in too wide and 1/4 in too high; B and all after it lie round it as they should
  const wrong = found(
    cabin('1'),
    '1: 3 5/8 x 2 3/4; 2: 3 5/8 x 3 3/4; 3: 4 5/8 x 3 3/4; 4: 4 5/8 x 4 3/4; 5: 5 5/8 x 4 3/4; 6: 5 5/8 x 5 3/4',
  );
  assert.ok(wrong.verdict.kind === 'cut-both' && wrong.verdict.piece === 'A', wrong.verdict.kind);
  assert.ok(Math.abs(wrong.verdict.by[0] - 1 / 8) < 1 / 32 && Math.abs(wrong.verdict.by[1] - 1 / 4) < 1 / 32);
});

test('units trimmed to a wrong mark are found, with their step and by how much', () => {
  const plan = planned(example('ferry-landing'));
  const mill = plan.blocks.find(({ id }) => id === 'mill') as BlockPlan;
  // by hand: half-squares of 3 1/2 in trimmed to 3 1/4 in; two of them side by side lack 1/2 in after the seam
  const small = found(mill, '1: 3 1/4 x 3 1/4; 2: 6 x 3 1/4; 3: 6 x 6');
  assert.ok(small.verdict.kind === 'trim' && small.verdict.step === 0, small.verdict.kind);
  assert.ok(Math.abs(small.verdict.by + 1 / 4) < 1 / 64, `${small.verdict.by}`);
  assert.ok(Math.abs(small.allowance.value) < 1 / 64);
  assert.deepEqual(small.rescues[0], { kind: 'retrim', step: 0, to: [3.5, 3.5], anew: true });
  const large = found(mill, '1: 3 5/8 x 3 5/8; 2: 6 3/4 x 3 5/8; 3: 6 3/4 x 6 3/4');
  assert.deepEqual(large.verdict.kind, 'trim');
  assert.ok(large.rescues.some((one) => one.kind === 'retrim' && !one.anew));
  // trimmed right and sewn 1/16 in too wide: no slip
  assert.equal(found(mill, '1: 3 1/2 x 3 1/2; 2: 6 3/8 x 3 1/2; 3: 6 3/8 x 6 3/8').verdict.kind, 'wide');
});

test('seams are said to hold only if pieces are cut right where the sizes cannot tell', () => {
  // derived: the goose triangle, too large by d, moves 0.65, 0.35, 0.29 and 0.35 of d, the seams -1.41, -1.41, -2.83 and -1.41; the sky
  // triangles move 1/2, 1/2, 1 and 1/2: in the same proportion as the seams, which no size tells apart
  const lone = found(goose(), '1: 4 3/4 x 2 3/8; 2: 4 5/16 x 2 3/8');
  const sky = goose().pieces.find(({ cut }) => cut.shape === 'half-square')?.label;
  assert.equal(lone.verdict.kind, 'wide');
  assert.ok(lone.untold.includes(sky as string), lone.untold.join());
  // of a cabin measured at twelve steps every log would be found
  const true12 =
    '1: 3 1/2 x 2 1/2; 2: 3 1/2 x 3 1/2; 3: 4 1/2 x 3 1/2; 4: 4 1/2 x 4 1/2; 5: 5 1/2; 6: x 5 1/2; 7: 6 1/2; 8: x 6 1/2';
  assert.deepEqual(found(cabin('1'), true12).untold, []);
});

test('true sizes are said to be true, and nothing is to be saved', () => {
  const { verdict, rescues } = found(cabin('1'), '1: 3 1/2 x 2 1/2; 2: 3 1/2 x 3 1/2; 3: 4 1/2; 4: 4 1/2 x 4 1/2');
  assert.deepEqual([verdict.kind, rescues], ['true', []]);
});

test('one size says too little, and the size is named that would tell most: over the most seams', () => {
  const { verdict, next } = found(cabin('1'), '1: 3 3/8');
  assert.equal(verdict.kind, 'too-few');
  assert.ok(next !== null && next.step >= 10, JSON.stringify(next));
  // where only the first seam is sewn, the next one is as far as she can measure
  assert.deepEqual(next.sooner, { step: 1, way: 'down' });
});

test('a size further off than seams and a slip explain is doubted, and no seam is told of it', () => {
  // by hand: two seams are crossed after step 4; sewn 1/8 in wrong each side of both is 1/2 in, and a log 1/4 in wrong makes 3/4 in
  const { verdict, next, rescues } = found(cabin('1'), '4: 5 1/2 x 5 1/2');
  assert.deepEqual([verdict, next, rescues], [{ kind: 'far-off', step: 3, way: 'across' }, null, []]);
  assert.equal(found(cabin('1'), '4: 4 1/2 x 5 1/4').verdict.kind, 'too-few');
  // a cabin with logs 1 1/2 in wide: each seam of this one would have to take nothing
  const other = '1: 4 x 2 1/2; 2: 4 x 4; 3: 5 1/2 x 4; 4: 5 1/2 x 5 1/2';
  assert.equal(found(cabin('1'), other).verdict.kind, 'far-off');
  assert.equal(found(cabin('1 1/2'), other).verdict.kind, 'true');
  // a log cut 1 in too wide is one slip, and told where enough sizes say so: C goes on at the top in step 2
  const slip = '1: 3 1/2 x 2 1/2; 2: 3 1/2 x 4 1/2; 3: 4 1/2 x 4 1/2; 4: 4 1/2 x 5 1/2; 5: 5 1/2; 6: 5 1/2 x 6 1/2';
  assert.equal(found(cabin('1'), slip).verdict.kind, 'cut');
});

test('a unit that is too large is to be trimmed even where too few sizes say why', () => {
  const { verdict, rescues } = found(cabin('1'), '4: 4 3/4 x 4 5/8');
  assert.equal(verdict.kind, 'too-few');
  assert.deepEqual(rescues, [{ kind: 'trim', step: 3, to: [4.5, 4.5], by: [0.25, 0.125], at: null }]);
});

test('a unit that is too large is to be trimmed to its size as drawn', () => {
  // by hand: log C is cut 1/4 in too wide, and goes on at the top in step 2
  const wide = found(cabin('1'), '1: 3 1/2 x 2 1/2; 2: 3 1/2 x 3 3/4; 3: 4 1/2 x 3 3/4; 4: 4 1/2 x 4 3/4');
  assert.ok(wide.verdict.kind === 'cut' && wide.verdict.piece === 'C');
  assert.equal(wide.verdict.kind === 'cut' ? wide.verdict.orSeam : null, 1);
  assert.deepEqual(wide.rescues.map((rescue) => (rescue.kind === 'trim' ? rescue.to : rescue.kind)).slice(0, 1), [
    [4.5, 4.5],
  ]);
});

test('a comma marks decimals as a point does', () => {
  const [comma, point] = [found(cabin('1'), '1: 3,375 x 2,5'), found(cabin('1'), '1: 3.375 x 2.5')];
  assert.deepEqual(
    comma.sizes.map(({ size }) => size),
    [3.375, 2.5],
  );
  assert.deepEqual(comma.allowance, point.allowance);
});

test('every mistake in what was measured is told with its place', () => {
  const block = cabin('1');
  const codes = (measured: string) => refusedFor(block, measured).map((problem) => problem.code);
  assert.deepEqual(codes(''), ['diagnosis/nothing-measured']);
  assert.deepEqual(codes('3 1/2 x 2 1/2'), ['diagnosis/unreadable']);
  assert.deepEqual(codes('1: 3 1/2; 13: 4; 0: 3'), ['diagnosis/unknown-step', 'diagnosis/unknown-step']);
  assert.deepEqual(codes('1: three x 2 1/2'), ['diagnosis/length']);
  assert.deepEqual(codes('1: 35 x 2 1/2'), ['diagnosis/impossible']);
  assert.deepEqual(codes('1: 2 1/2 x 3 3/8'), ['diagnosis/turned']);
  // the second seam leaves the width as it was; read to a sixteenth, two marks between them are believed, three are not
  assert.deepEqual(codes('1: 3 3/8; 2: 3 9/16'), ['diagnosis/contradicts']);
  assert.equal(found(block, '1: 3 7/16; 2: 3 9/16').sizes.length, 2);
  assert.deepEqual(
    refusedFor(block, '1: 3 1/2; 2: -1').map((problem) => ('place' in problem ? problem.place : 0)),
    [2],
  );
});
