// What was measured, and how uncertain it is: sizes of one block are uncertain together, for they go over the same pieces and seams
// and are read by the same ruler. How roughly a student reads and sews is not known, and is judged with the rest.
import { type Care, partsOf, type SizeModel, sensitivity } from '#craft/accuracy';
import type { Length } from '#craft/measure';
import { logDeterminant, type Matrix, type Whitener, whitenerFor } from '#ground/least-squares';
import type { Reading } from './readings.ts';

/** Different sizes that were measured. */
export interface Evidence {
  readonly models: readonly SizeModel[];
  /** By model: the mean of what was read, less what is expected of pieces cut on their marks. */
  readonly off: readonly number[];
  /** Of one who reads and sews as most do. */
  readonly covariance: Matrix;
  readonly whiten: Whitener;
  /** How a further size varies together with each of them. */
  readonly like: (model: SizeModel) => readonly number[];
  readonly care: Care;
  readonly roughnesses: readonly Roughness[];
}

/** How roughly it may have been read and sewn. */
export interface Roughness {
  /** Before anything is measured, of all together 1. */
  readonly share: number;
  readonly whiten: Whitener;
  /** Twice what speaks against it in itself, with sizes that were read again: less is likelier. */
  readonly score: number;
  /** Each single error, as likely anywhere within its limits: what a deviation of it does to all sizes, whitened. */
  readonly errors: readonly (readonly number[])[];
}

/**
 * As most do; hand and ruler unsteady by one or two limits of a cut besides the marks; cut and sewn twice as roughly.
 * Our own guess.
 */
const roughness = [
  { share: 0.94, hand: 0, made: 1 },
  { share: 0.02, hand: 1, made: 1 },
  { share: 0.02, hand: 2, made: 1 },
  { share: 0.02, hand: 0, made: 2 },
] as const;

/** One size, with all its readings less what is expected. */
interface Measured {
  readonly model: SizeModel;
  readonly parts: Parts;
  readonly off: number[];
}

/** @source docs/formulas.md#diagnosis */
export const evidenceFor = (of: {
  readonly readings: readonly Reading[];
  readonly models: readonly SizeModel[];
  readonly fineness: Length;
  readonly care: Care;
}): Evidence => {
  const { care, fineness } = of;
  const measured = measuredSizes(of);
  const made = measured.map((a) => measured.map((b) => together(a.parts, b.parts)));
  const readAs = roughness.map(({ share, hand, made: by }) => {
    const read = { fineness, hand: hand * care.cut };
    const covariance = covarianceOf(measured, scaledBy(made, by ** 2), read);
    return { share, by, covariance, whiten: whitenerFor(covariance), again: scoreOfAgain(measured, read) };
  });
  const usual = readAs[0] as (typeof readAs)[number];
  return {
    models: measured.map(({ model }) => model),
    off: measured.map(({ off }) => mean(off)),
    covariance: usual.covariance,
    whiten: usual.whiten,
    like: (model) => {
      const parts = deviationsOf(model, care);
      return measured.map((one) => together(one.parts, parts));
    },
    care,
    roughnesses: readAs.map(({ share, by, covariance, whiten, again }) => ({
      share,
      whiten,
      score: logDeterminant(covariance) + again,
      errors: errorsIn(measured, by, fineness).map(whiten),
    })),
  };
};

const measuredSizes = (of: Parameters<typeof evidenceFor>[0]): readonly Measured[] => {
  const sizes = new Map<string, Measured>();
  const known = new Map(of.models.map((model) => [`${model.step} ${model.way}`, model]));
  for (const { step, way, size } of of.readings) {
    const model = known.get(`${step} ${way}`) as SizeModel;
    const parts = deviationsOf(model, of.care);
    const name = nameOf(model, parts);
    const before = sizes.get(name);
    if (before) before.off.push(size - model.expected);
    else sizes.set(name, { model, parts, off: [size - model.expected] });
  }
  return [...sizes.values()];
};

const mean = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0) / values.length;

const scaledBy = (matrix: Matrix, by: number): Matrix => matrix.map((row) => row.map((value) => value * by));

/** How sizes are read: to marks, with a hand that is off by a normal deviation before. */
interface Read {
  readonly fineness: Length;
  readonly hand: number;
}

/** Read to the nearest mark, a size is anywhere within half a mark. @source NIST Technical Note 1297, 4.6 */
export const readingVariance = (fineness: Length): number => fineness ** 2 / 12;

/** Marks that a reading may be off in itself: keeps sizes that are read alike apart. Our own figure. */
const least = 1 / 64;

const covarianceOf = (measured: readonly Measured[], made: Matrix, read: Read): Matrix => {
  const marks = readingVariance(read.fineness);
  const takes = measured.map(({ model }) => sensitivity(model).allowance);
  return measured.map((a, i) =>
    measured.map((b, j) => {
      const both = made[i]?.[j] as number;
      if (i === j) {
        const times = a.off.length;
        const again = alikeRounded(2 * read.hand ** 2, 0, read.fineness);
        const marked = marks * (1 / times + (1 - 1 / times) * again);
        return both + marked + read.hand ** 2 / times + (least * read.fineness) ** 2;
      }
      // over other seams a size moves otherwise with the habit, and lies anywhere between its marks
      if (Math.abs((takes[i] as number) - (takes[j] as number)) > 1e-6) return both;
      const apart = (made[i]?.[i] as number) + (made[j]?.[j] as number) - 2 * both + 2 * read.hand ** 2;
      return both + marks * alikeRounded(apart, a.model.expected - b.model.expected, read.fineness);
    }),
  );
};

/**
 * How much two sizes are rounded alike to their marks: 1 where they lie alike between them, 0 where what sets them apart is large.
 *
 * @param apart    variance of their difference, which is normal
 * @param shifted  mean of their difference
 * @source derived: rounding as a sawtooth's Fourier series, the mean of each product of terms over all places between the marks
 */
const alikeRounded = (apart: number, shifted: number, fineness: Length): number =>
  [1, 2, 3, 4].reduce((all, k) => {
    const turn = (2 * Math.PI * k) / fineness;
    return all + ((6 / Math.PI ** 2) * Math.cos(turn * shifted) * Math.exp((-(turn ** 2) * apart) / 2)) / k ** 2;
  }, 0);

/** Marks by which one size read again may differ by itself: our own figure. */
const steady = 1 / 6;

/** Twice what speaks against a hand so unsteady, from sizes that were read more than once. */
const scoreOfAgain = (measured: readonly Measured[], { hand, fineness }: Read): number => {
  const marked = hand === 0 ? 0 : readingVariance(fineness) * (1 - alikeRounded(2 * hand ** 2, 0, fineness));
  const variance = marked + hand ** 2 + (steady * fineness) ** 2;
  return measured.reduce((all, { off }) => {
    const middle = mean(off);
    const apart = off.reduce((sum, one) => sum + (one - middle) ** 2, 0);
    return all + apart / variance + (off.length - 1) * Math.log(variance);
  }, 0);
};

/** By piece and seam, and by reading: what one deviation of it does to every size. */
const errorsIn = (measured: readonly Measured[], by: number, fineness: Length): readonly (readonly number[])[] => {
  const names = new Set(measured.flatMap(({ parts }) => [...parts.keys()]));
  const marks = Math.sqrt(readingVariance(fineness));
  return [
    ...[...names].map((name) => measured.map(({ parts }) => by * (parts.get(name) ?? 0))),
    ...measured.map((_, i) => measured.map((_other, j) => (i === j ? marks : 0))),
  ];
};

/** What a size goes over, and the deviation that each brings into it. */
type Parts = ReadonlyMap<string, number>;

const deviationsOf = (model: SizeModel, care: Care): Parts =>
  new Map(partsOf(model, care).map(({ name, limit }) => [name, limit / Math.sqrt(3)]));

/** How two sizes vary together: through the pieces and the seams that both go over. */
const together = (a: Parts, b: Parts): number => {
  let all = 0;
  for (const [part, deviation] of b) all += (a.get(part) ?? 0) * deviation;
  return all;
};

/** How much a size varies by itself, the reading not counted. */
export const ownVariance = (model: SizeModel, care: Care): number => {
  const parts = deviationsOf(model, care);
  return together(parts, parts);
};

/**
 * Sizes over the same pieces, seams and trimmed units, to the same extent, are one: read again after the next step, it is rounded to the
 * same mark again.
 */
const nameOf = (model: SizeModel, parts: Parts): string => {
  const trims = (model.trims ?? []).map(({ step, grows }) => `trim ${step}: ${grows}`);
  const over = [...parts].map(([name, deviation]) => `${name}: ${Math.abs(deviation).toFixed(9)}`);
  const all = [...over, ...trims].sort();
  return `${all.length === 0 ? `${model.step} ${model.way}` : all.join()} of ${model.expected.toFixed(6)}`;
};

export const sizeName = (model: SizeModel, care: Care): string => nameOf(model, deviationsOf(model, care));
