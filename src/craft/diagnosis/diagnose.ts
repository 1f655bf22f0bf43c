// Why did it come out the wrong size? From sizes measured after any steps: how wide the seams are, whether a piece is cut wrong
// or two changed places, what to measure next, and what can be saved.
import { type SewnBlock, type SewnStep, type SizeModel, sizeModels, usualCare, type Way } from '#craft/accuracy';
import { type Length, length, type Unit } from '#craft/measure';
import type { BlockPlan, TopPlan } from '#craft/plan';
import { topAsBlock, topSizes } from '#craft/top-sizes';
import { done, type Outcome } from '#ground/outcome';
import { evidenceFor, sizeName } from './evidence.ts';
import { candidatesFor, singlesFor } from './explanations.ts';
import { type NextMeasure, narrowing, telling } from './next-measure.ts';
import { parseReadings, type Reading, type ReadingProblem, type Unmeasured } from './readings.ts';
import { type Both, type Fault, type Rescue, rescuesFor } from './rescue.ts';
import { topRescuesFor } from './top-rescue.ts';
import { type Case, type Judging, judged, overall, type Verdict } from './verdict.ts';
import { foretold, type Interval, untoldPieces, type Weighed, weigh } from './weigh.ts';

export interface Diagnosis {
  readonly of: 'block' | 'top';
  readonly unit: Unit;
  /** As the document has it. */
  readonly seam: Length;
  readonly fineness: Length;
  /** How much wider than that each allowance is, the turn of the cloth counted in; over all explanations worth considering. */
  readonly allowance: Interval;
  readonly verdict: Verdict;
  /** Pieces whose wrong cut these sizes do not tell from wrong seams: what is said of the seams holds if they are cut right. */
  readonly untold: readonly string[];
  /** The likeliest first: those of at least a fiftieth, at most five. */
  readonly ranked: readonly Weighed[];
  readonly next: NextMeasure | null;
  readonly sizes: readonly MeasuredSize[];
  /** Of the block when it is done, less its size as drawn: gone on as before, and sewn as it should be from here on. */
  readonly whole: { readonly drawn: Both; readonly before: Both; readonly mended: Both } | null;
  readonly rescues: readonly Rescue[];
}

export interface MeasuredSize extends Reading {
  /** As the document has it. */
  readonly drawn: Length;
  readonly off: Length;
}

/** Share below which an explanation is not listed; our own figure. */
const listed = 0.02;

export const diagnose = (of: {
  readonly block: SewnBlock;
  readonly seam: Length;
  readonly unit: Unit;
  /** As written. */
  readonly measured: string;
}): Outcome<Diagnosis, ReadingProblem> => {
  const models = sizeModels(of.block, of.seam);
  const care = usualCare(of.unit);
  const read = parseReadings(of.measured, {
    models,
    steps: of.block.steps.map(unmeasured),
    // the width and the height of a slanted unit may go over the same pieces, and are not one
    nameOf: (model) => `${model.way} ${model.drawn.toFixed(6)} ${sizeName(model, care)}`,
    unit: of.unit,
  });
  return read.ok ? done(diagnosisOf({ ...of, models, read: read.value, care })) : read;
};

const unmeasured = ({ onPaper, made }: SewnStep): Unmeasured =>
  onPaper !== undefined ? 'on-paper' : made?.isLast === false ? 'not-whole' : 'inside-corner';

/** The sizes of a whole top, or of its rows and sections, from its own steps. */
export const diagnoseTop = (of: {
  readonly top: TopPlan;
  readonly blocks: readonly BlockPlan[];
  readonly seam: Length;
  readonly unit: Unit;
  /** As written. */
  readonly measured: string;
}): Outcome<Diagnosis, ReadingProblem> => {
  const { top, seam, unit } = of;
  const models = topSizes(of);
  const care = usualCare(unit);
  const read = parseReadings(of.measured, {
    models,
    steps: top.steps.map((): Unmeasured => 'in-triangles'),
    nameOf: (model) => `${model.step} ${model.way}`,
    unit,
    read: 'by-tape',
  });
  return read.ok
    ? done(diagnosisOf({ block: topAsBlock(top), top, seam, unit, models, read: read.value, care }))
    : read;
};

export const diagnosisOf = (of: Case): Diagnosis => {
  const { models, read, care } = of;
  const { fineness } = read;
  const evidence = evidenceFor({ readings: read.list, models, fineness, care });
  const ofKinds = candidatesFor(of.block, evidence.models);
  // what a top is made of is wrong one by one rather than both ways
  const candidates =
    of.top === undefined
      ? ofKinds
      : [...ofKinds.filter(({ explanation }) => explanation.kind !== 'cut-both'), ...singlesFor(evidence.models)];
  const weighed = weigh(evidence, candidates);
  const allowance = overall(weighed);
  const { verdict, likeliest } = judged({ ...of, evidence, weighed, allowance });
  const search = { evidence, models, care, fineness };
  return {
    of: of.top === undefined ? 'block' : 'top',
    unit: of.unit,
    seam: of.seam,
    fineness,
    allowance,
    verdict,
    untold: untoldPieces(evidence, candidates),
    ranked: weighed.filter(({ share }) => share >= listed).slice(0, 5),
    next:
      verdict.kind === 'too-few'
        ? narrowing(search)
        : verdict.kind === 'unclear'
          ? telling(search, [weighed[0], weighed[1]] as [Weighed, Weighed])
          : null,
    sizes: read.list.map((reading) => {
      const { drawn } = modelOf(models, reading) as SizeModel;
      return { ...reading, drawn, off: length(reading.size - drawn) };
    }),
    ...(verdict.kind === 'too-few'
      ? { whole: null, rescues: tooLarge(of) }
      : likeliest === null
        ? { whole: null, rescues: [] }
        : savedOf({ ...of, evidence, verdict, allowance }, likeliest)),
  };
};

const modelOf = (models: readonly SizeModel[], { step, way }: { readonly step: number; readonly way: Way }) =>
  models.find((model) => model.step === step && model.way === way);

const faultOf = (verdict: Verdict, allowance: Interval): Fault => {
  switch (verdict.kind) {
    case 'wide':
    case 'narrow':
      return { kind: 'habit', by: allowance.value };
    case 'cut':
      return { kind: 'cut', piece: verdict.piece, by: verdict.by, orSeam: verdict.orSeam, at: verdict.at ?? null };
    case 'cut-both':
      return { kind: 'cut-both', piece: verdict.piece };
    case 'trim':
      return { kind: 'trim', step: verdict.step, by: verdict.by };
    case 'swap':
      return { kind: 'swap', pieces: verdict.pieces };
    default:
      return { kind: 'none' };
  }
};

type Saved = Pick<Diagnosis, 'whole' | 'rescues'>;

const savedOf = (of: Omit<Judging, 'weighed'> & { readonly verdict: Verdict }, likeliest: Weighed): Saved => {
  const { models, evidence, read } = of;
  const step = Math.max(...read.list.map((reading) => reading.step));
  const last = of.block.steps.length - 1;
  const comesTo = (at: number, way: Way): number | null => {
    const model = modelOf(models, { step: at, way });
    return model === undefined ? null : foretold(evidence, likeliest, model) - model.drawn;
  };
  const both = (sizeOf: (way: Way) => number | null): Both | null => {
    const [across, down] = [sizeOf('across'), sizeOf('down')];
    return across === null || down === null ? null : [length(across), length(down)];
  };
  const drawn = both((way) => modelOf(models, { step: last, way })?.drawn ?? null);
  const before = both((way) => comesTo(last, way));
  const off = both((way) => readOff(read.list, models, step, way) ?? comesTo(step, way));
  if (drawn === null || before === null || off === null) return { whole: null, rescues: [] };
  const mended = both((way) => (comesTo(last, way) as number) + spared(of, likeliest, step, way)) as Both;
  const fault = faultOf(of.verdict, of.allowance);
  const wrong = { ...of, fineness: read.fineness, fault, step, off, whole: mended };
  const rescues = of.top === undefined ? rescuesFor(wrong) : topRescuesFor({ ...wrong, top: of.top });
  return { whole: { drawn, before, mended }, rescues };
};

/** Whatever made it so, a unit that is too large is trimmed. */
const tooLarge = (of: Case): readonly Rescue[] => {
  // a row cut shorter loses the points of its blocks
  if (of.top !== undefined) return [];
  const { list, fineness } = of.read;
  const step = Math.max(...list.map((reading) => reading.step));
  const off = (['across', 'down'] as const).map((way) => length(readOff(list, of.models, step, way) ?? 0));
  const both: Both = [off[0] as Length, off[1] as Length];
  return rescuesFor({ ...of, fineness, fault: { kind: 'none' }, step, off: both, whole: [length(0), length(0)] });
};

/** The mean of what was read, less the size as drawn. */
const readOff = (readings: readonly Reading[], models: readonly SizeModel[], step: number, way: Way): number | null => {
  const read = readings.filter((one) => one.step === step && one.way === way);
  const model = modelOf(models, { step, way });
  if (read.length === 0 || model === undefined) return null;
  return read.reduce((all, { size }) => all + size, 0) / read.length - model.drawn;
};

/** What the seams after a step would still take too much of the block, if they were sewn as those before. */
const spared = ({ models, block }: Case, { allowance }: Weighed, step: number, way: Way): number => {
  const model = modelOf(models, { step: block.steps.length - 1, way });
  const toCome = model?.seams.filter((seam) => seam.step !== null && seam.step > step) ?? [];
  return toCome.reduce((all, { shrinks }) => all + 2 * shrinks * allowance.value, 0);
};
