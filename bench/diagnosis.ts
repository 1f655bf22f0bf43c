// How honest is a diagnosis? Seeded students of every block: how often the 95 % limits hold the seam that they sewed, and how often
// the piece that they cut wrong is named.
import { type BlockPlan, planQuilt } from '#craft';
import { anywhere, type SizeModel, sewByChance, sizeModels, usualCare } from '#craft/accuracy';
import { collection } from '#craft/collection';
import { type Diagnosis, diagnosisOf } from '#craft/diagnosis';
import { length } from '#craft/measure';
import { type Chance, chanceFrom } from '#ground/chance';
import { printTable } from './table.ts';

const seam = length(1 / 4);
const mark = length(1 / 16);
const care = usualCare('in');
/** Of a reading to the mark, a cut and a seam of two allowances together. */
const stepNoise = Math.sqrt(mark ** 2 / 12 + (care.cut ** 2 + (2 * care.seam) ** 2) / 3);

/** A student's allowance is off by up to so much either way; how it goes is told for fifths of that, too. */
const furthest = 1 / 16;
const fifths = 5;

const cloths = ['light', 'medium', 'dark'].map((id) => ({ id, colour: '#888888', usableWidth: 40 }));

const planned = (block: Readonly<Record<string, unknown>>): BlockPlan => {
  const top = { rows: [[{ block: 'one' }]] };
  const written = { format: 'seamstead-quilt', version: 1, unit: 'in', fabrics: cloths, blocks: [block], top };
  const plan = planQuilt(JSON.stringify(written), { budget: { steps: 0 } });
  if (!plan.ok) throw new Error(`${JSON.stringify(block)} is refused: ${plan.problems[0]?.code}`);
  return plan.value.blocks[0] as BlockPlan;
};

const cabin = (rounds: number): BlockPlan => {
  const round = { width: '1', tones: ['light', 'light', 'dark', 'dark'] };
  const recipe = { kind: 'log-cabin', centre: '2', centreTone: 'medium', rounds: Array(rounds).fill(round) };
  return planned({ id: 'one', recipe });
};

const fromCollection = (from: string): BlockPlan =>
  planned({
    id: 'one',
    from,
    size: 12,
    colourings: { default: { light: 'light', medium: 'medium', dark: 'dark', accent: 'medium' } },
  });

/** Of one cell of the grid, two by one for a goose. */
const units = {
  'half-square': [1, 2],
  'quarter-square': [1, 4],
  'flying-geese': [2, 2],
  'square-in-square': [1, 2],
  'four-patch': [1, 2],
  rails: [1, 3],
} as const;

const unitAlone = (unit: keyof typeof units): BlockPlan => {
  const [across, tones] = units[unit];
  const at = { unit, at: [0, 0], span: [across, 1], tones: ['light', 'dark', 'medium', 'light'].slice(0, tones) };
  return planned({ id: 'one', size: [3 * across, 3], recipe: { kind: 'units', grid: [across, 1], units: [at] } });
};

const blocks: readonly (readonly [name: string, block: () => BlockPlan])[] = [
  ...[1, 2, 3, 4, 5, 6, 7].map((rounds) => [`cabin of ${rounds}`, () => cabin(rounds)] as const),
  ...collection.map(({ id }) => [id, () => fromCollection(id)] as const),
  ...(Object.keys(units) as (keyof typeof units)[]).map((unit) => [`${unit} alone`, () => unitAlone(unit)] as const),
];

interface Student {
  readonly habit: number;
  readonly slip: (model: SizeModel) => number;
}

const noSlip = (): number => 0;

const diagnosed = (
  block: BlockPlan,
  models: readonly SizeModel[],
  { habit, slip }: Student,
  chance: Chance,
): Diagnosis => {
  const sewn = sewByChance(models, care, { allowance: length(habit), fold: length(0) })(chance, anywhere);
  const list = sewn.map(({ off }, i) => {
    const model = models[i] as SizeModel;
    const size = length(Math.round((model.drawn + off + slip(model)) / mark) * mark);
    return { step: model.step, way: model.way, size };
  });
  return diagnosisOf({ block, seam, unit: 'in', models, read: { list, fineness: mark }, care });
};

const holds = ({ allowance }: Diagnosis, habit: number): boolean => allowance.low <= habit && habit <= allowance.high;

/** In how many of 100 trials. */
const inHundred = (trials: number, succeeds: (chance: Chance) => boolean): number => {
  const chance = chanceFrom(1);
  let count = 0;
  for (let trial = 0; trial < trials; trial++) if (succeeds(chance)) count += 1;
  return (100 * count) / trials;
};

const habitBy = (chance: Chance): number => furthest * (2 * chance() - 1);

interface Held {
  readonly all: string;
  /** Of the fifths of the habits the lowest and the highest. */
  readonly fifths: string;
}

const heldOf = (block: BlockPlan, models: readonly SizeModel[], trials: number): Held => {
  const chance = chanceFrom(1);
  const counts = Array.from({ length: fifths }, () => ({ held: 0, of: 0 }));
  for (let trial = 0; trial < trials; trial++) {
    const habit = habitBy(chance);
    const fifth = Math.min(fifths - 1, Math.floor(((habit + furthest) / (2 * furthest)) * fifths));
    const count = counts[fifth] as (typeof counts)[number];
    count.of += 1;
    if (holds(diagnosed(block, models, { habit, slip: noSlip }, chance), habit)) count.held += 1;
  }
  const shares = counts.filter(({ of }) => of > 0).map(({ held, of }) => (100 * held) / of);
  const held = counts.reduce((sum, count) => sum + count.held, 0);
  return {
    all: ((100 * held) / trials).toFixed(1),
    fifths: `${Math.min(...shares).toFixed(1)} to ${Math.max(...shares).toFixed(1)}`,
  };
};

/** @param trials of each figure of the limits; half as many with a slip */
export const printDiagnosis = (trials: number): void => {
  const rows = blocks.map(([name, blockOf]) => {
    const block = blockOf();
    const models = sizeModels(block, seam);
    const last = block.steps.length - 1;
    const every = heldOf(block, models, trials);
    const half = models.filter(({ step }) => step >= Math.ceil(last / 2));
    const two = models.filter(({ step }) => step >= last - 1);
    return [
      name,
      String(models.length),
      every.all,
      every.fifths,
      heldOf(block, half, trials).all,
      heldOf(block, two, trials).all,
      ...namedOf(block, models, Math.ceil(trials / 2)),
    ];
  });
  printTable([
    [
      'block',
      'sizes',
      'all',
      'fifths of habits',
      'half',
      'last two',
      'one way wrong',
      'both ways',
      'named',
      'of two',
      'untold',
    ],
    ...rows,
  ]);
};

/**
 * With one kind of piece wrong, those that the sizes do not tell from the seams left out: how often limits hold (wrong one way, both
 * ways, by 1/16 to 1/4 in), and how often it is named, and is among the two likeliest, wrong by five times the noise of a step.
 */
const namedOf = (block: BlockPlan, models: readonly SizeModel[], trials: number): readonly string[] => {
  const true1 = diagnosed(block, models, { habit: 0, slip: noSlip }, chanceFrom(1));
  const kinds = [
    ...new Map(models.flatMap(({ cuts }) => cuts.map((cut) => [`${cut.piece} ${cut.side}`, cut] as const))).values(),
  ];
  const untold = new Set(true1.untold);
  const told = kinds.filter(({ piece }) => !untold.has(piece));
  if (told.length === 0) return ['–', '–', '–', '–', `${untold.size} of ${block.pieces.length}`];
  const wrong = (chance: Chance, least: number, most: number): number =>
    (chance() < 0.5 ? -1 : 1) * (least + (most - least) * chance());
  const student = (chance: Chance, kind: (typeof kinds)[number], by: readonly [number, number]): Student => ({
    habit: habitBy(chance),
    slip: ({ cuts, way }) =>
      cuts.reduce(
        (all, { piece, side, grows }) =>
          piece === kind.piece && side === kind.side ? all + grows * (way === 'across' ? by[0] : by[1]) : all,
        0,
      ),
  });
  const any = (chance: Chance) => told[Math.floor(chance() * told.length)] as (typeof kinds)[number];
  const heldBy = (by: (chance: Chance) => readonly [number, number]): number =>
    inHundred(trials, (chance) => {
      const one = student(chance, any(chance), by(chance));
      return holds(diagnosed(block, models, one, chance), one.habit);
    });
  const chance = chanceFrom(2);
  let [named, among] = [0, 0];
  for (let trial = 0; trial < trials; trial++) {
    const kind = any(chance);
    const by = wrong(chance, 5 * stepNoise, 5 * stepNoise);
    const { ranked } = diagnosed(block, models, student(chance, kind, [by, by]), chance);
    const names = ranked.map(({ candidate: { explanation } }) => ('piece' in explanation ? explanation.piece : null));
    const place = [...new Set(names)].indexOf(kind.piece);
    if (place === 0) named += 1;
    if (place === 0 || place === 1) among += 1;
  }
  return [
    heldBy((chance) => {
      const by = wrong(chance, 1 / 16, 1 / 4);
      return [by, by];
    }).toFixed(1),
    heldBy((chance) => [wrong(chance, 1 / 16, 1 / 4), wrong(chance, 1 / 16, 1 / 4)]).toFixed(1),
    ((100 * named) / trials).toFixed(1),
    ((100 * among) / trials).toFixed(1),
    `${untold.size} of ${block.pieces.length}`,
  ];
};
