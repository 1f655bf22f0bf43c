// What a student measured, as it is written: "1: 3 3/8 x 2 1/2; 4: 4 7/16". Step, then width and height; either may be missing
// ("4: x 4 7/16" is a height); a decimal has a point or a comma. Every mistake is told with its place.
import type { SizeModel, Way } from '#craft/accuracy';
import { type Length, type LengthProblem, length, parseLength, type Unit } from '#craft/measure';
import { type Rational, toNumber } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';

/** A size that was read off a ruler. */
export interface Reading {
  /** Index of the step after which it was measured. */
  readonly step: number;
  readonly way: Way;
  readonly size: Length;
}

export interface Readings {
  readonly list: readonly Reading[];
  /** The marks that the ruler was read to. */
  readonly fineness: Length;
}

export type ReadingProblem =
  | { readonly code: 'diagnosis/nothing-measured' }
  /** `place` counts the entries from 1. */
  | { readonly code: 'diagnosis/unreadable'; readonly place: number; readonly found: string }
  | { readonly code: 'diagnosis/unknown-step'; readonly place: number; readonly found: string; readonly steps: number }
  | {
      readonly code: 'diagnosis/length';
      readonly place: number;
      readonly way: Way;
      readonly unit: Unit;
      readonly problem: LengthProblem;
    }
  | {
      readonly code: 'diagnosis/impossible';
      readonly place: number;
      readonly step: number;
      readonly way: Way;
      readonly found: Length;
      readonly drawn: Length;
      readonly unit: Unit;
    }
  | {
      readonly code: 'diagnosis/turned';
      readonly place: number;
      readonly step: number;
      readonly found: readonly [Length, Length];
      readonly drawn: readonly [Length, Length];
      readonly unit: Unit;
    }
  | {
      readonly code: 'diagnosis/no-model';
      readonly place: number;
      readonly step: number;
      readonly way: Way;
      readonly why: Unmeasured;
    }
  /** The next step leaves a size as it was: it cannot have come to be another. */
  | {
      readonly code: 'diagnosis/contradicts';
      readonly place: number;
      readonly step: number;
      readonly way: Way;
      readonly found: Length;
      readonly earlier: { readonly step: number; readonly found: Length };
      readonly unit: Unit;
    };

/** A printed sheet keeps it, the unit is still to be cut apart or trimmed, it goes over an inside corner, or ends in setting triangles. */
export type Unmeasured = 'on-paper' | 'not-whole' | 'inside-corner' | 'in-triangles';

interface Asked {
  readonly models: readonly SizeModel[];
  /** Of the block: for each why it would not be measured, where it has no model. */
  readonly steps: readonly Unmeasured[];
  /** Sizes of one name are one, measured again. */
  readonly nameOf: (model: SizeModel) => string;
  readonly unit: Unit;
  /** What is read to marks that are coarser: a whole quilt lies longer than any ruler. Missing: a block. */
  readonly read?: 'by-tape';
}

export const parseReadings = (written: string, asked: Asked): Outcome<Readings, ReadingProblem> => {
  const entries = written
    .split(';')
    .flatMap((text, i) => (text.trim() === '' ? [] : [{ text: text.trim(), place: i + 1 }]));
  if (entries.length === 0) return refused([{ code: 'diagnosis/nothing-measured' }]);
  const read = entries.map((entry) => entryFrom(entry, asked));
  const sizes = read.flatMap((one) => (one.ok ? one.value : []));
  const fineness = finenessOf(
    sizes.map(({ exact }) => exact),
    asked.unit,
    asked.read ?? 'by-ruler',
  );
  const problems = read.flatMap((one) => (one.ok ? doubtsOf(one.value, { sizes, fineness, asked }) : one.problems));
  if (problems.length > 0) return refused(problems);
  const contradicting = contradictionsIn(sizes, fineness, asked);
  if (contradicting.length > 0) return refused(contradicting);
  return done({
    list: sizes.map(({ step, way, exact }) => ({ step, way, size: length(toNumber(exact)) })),
    fineness,
  });
};

interface Written {
  /** Of its entry. */
  readonly place: number;
  readonly step: number;
  readonly way: Way;
  readonly exact: Rational;
}

const entryFrom = (
  { text, place }: { readonly text: string; readonly place: number },
  asked: Asked,
): Outcome<readonly Written[], ReadingProblem> => {
  const [, named, sizes] = /^(?:step\s+|#)?([^:]*?)\s*:\s*(.*)$/iu.exec(text) ?? [];
  if (named === undefined || sizes === undefined)
    return refused([{ code: 'diagnosis/unreadable', place, found: text }]);
  const number = /^\d{1,5}$/u.test(named) ? Number(named) : 0;
  if (number < 1 || number > asked.steps.length)
    return refused([{ code: 'diagnosis/unknown-step', place, found: named, steps: asked.steps.length }]);
  const parts = sizes.split(/\s*(?:[x×]|\bby\b)\s*/iu);
  if (parts.length > 2 || parts.every(isMissing))
    return refused([{ code: 'diagnosis/unreadable', place, found: text }]);
  const step = number - 1;
  const found = parts.flatMap((part, i) => {
    if (isMissing(part)) return [];
    return [sizeFrom({ text: part, place, step, way: i === 0 ? 'across' : 'down' }, asked)];
  });
  const problems = found.flatMap((one) => (one.ok ? [] : one.problems));
  if (problems.length > 0) return refused(problems);
  return done(found.flatMap((one) => (one.ok ? [one.value] : [])));
};

const isMissing = (text: string): boolean => /^[\s–—_?-]*$/u.test(text);

const sizeFrom = (
  size: { readonly text: string; readonly place: number; readonly step: number; readonly way: Way },
  { models, unit, steps }: Asked,
): Outcome<Written, ReadingProblem> => {
  const { place, step, way } = size;
  const read = lengthRead(size.text, unit);
  if (!read.ok) {
    const problem = read.problems[0] as LengthProblem;
    return refused([{ code: 'diagnosis/length', place, way, unit, problem }]);
  }
  const isKnown = models.some((one) => one.step === step && one.way === way);
  return isKnown
    ? done({ place, step, way, exact: read.value })
    : refused([{ code: 'diagnosis/no-model', place, step, way, why: steps[step] as Unmeasured }]);
};

/** As a ruler is read, and written with a point or a comma: "3 3/8", "8.6", "8,6". */
export const lengthRead = (text: string, unit: Unit): Outcome<Rational, LengthProblem> =>
  parseLength(text.trim().replace(/^(\d*),(\d+)$/u, '$1.$2'), { unit, sign: 'positive' });

const drawnSize = (models: readonly SizeModel[], { step, way }: Pick<Written, 'step' | 'way'>): Length =>
  (models.find((one) => one.step === step && one.way === way) as SizeModel).drawn;

/** All that was read, by which one entry of it is judged. */
interface AllRead {
  readonly sizes: readonly Written[];
  readonly fineness: Length;
  readonly asked: Asked;
}

/** @param read of one entry */
const doubtsOf = (read: readonly Written[], all: AllRead): readonly ReadingProblem[] =>
  turnedAbout(read, all) ?? impossibleIn(read, all.asked);

/** Both sizes would be right if they were exchanged: the unit was measured lying the other way, but where the same stretch is read alike after another step. */
const turnedAbout = (read: readonly Written[], all: AllRead): readonly ReadingProblem[] | null => {
  const { models, unit } = all.asked;
  const [across, down] = read;
  if (across === undefined || down === undefined) return null;
  const drawn = [drawnSize(models, across), drawnSize(models, down)] as const;
  const found = [length(toNumber(across.exact)), length(toNumber(down.exact))] as const;
  const asWritten = Math.abs(found[0] - drawn[0]) + Math.abs(found[1] - drawn[1]);
  const exchanged = Math.abs(found[1] - drawn[0]) + Math.abs(found[0] - drawn[1]);
  const isTurned = Math.abs(drawn[0] - drawn[1]) > 1e-6 && 4 * exchanged < asWritten;
  if (!isTurned || read.some((one) => isReadAgain(one, all))) return null;
  return [{ code: 'diagnosis/turned', place: across.place, step: across.step, found, drawn, unit }];
};

/** Whether the same stretch after another step is read as this one. */
const isReadAgain = (one: Written, { sizes, fineness, asked }: AllRead): boolean =>
  sizes.some(
    (other) =>
      other.step !== one.step &&
      stretchOf(other, asked) === stretchOf(one, asked) &&
      Math.abs(toNumber(other.exact) - toNumber(one.exact)) <= alike * fineness * (1 + 1e-9),
  );

const stretchOf = ({ step, way }: Written, { models, nameOf }: Asked): string =>
  nameOf(models.find((model) => model.step === step && model.way === way) as SizeModel);

/** Our own figure: what is further off is no slip of a seam or a cut. */
const possible = { least: 0.5, most: 1.5 } as const;

const impossibleIn = (read: readonly Written[], { models, unit }: Asked): readonly ReadingProblem[] =>
  read.flatMap(({ place, step, way, exact }) => {
    const found = length(toNumber(exact));
    const drawn = drawnSize(models, { step, way });
    const isPossible = found >= possible.least * drawn && found <= possible.most * drawn;
    return isPossible ? [] : [{ code: 'diagnosis/impossible', place, step, way, found, drawn, unit }];
  });

/** Marks that two readings of one size may differ by: each is read to its nearest, and cloth gives a little. Our own figure. */
const alike = 2;

const contradictionsIn = (sizes: readonly Written[], fineness: Length, asked: Asked): readonly ReadingProblem[] => {
  const { unit } = asked;
  const known = new Map<string, Written>();
  return sizes.flatMap((size) => {
    const name = stretchOf(size, asked);
    const before = known.get(name);
    if (before === undefined) known.set(name, size);
    const { place, step, way, exact } = size;
    const found = length(toNumber(exact));
    if (before === undefined || Math.abs(found - toNumber(before.exact)) <= alike * fineness * (1 + 1e-9)) return [];
    const earlier = { step: before.step, found: length(toNumber(before.exact)) };
    return [{ code: 'diagnosis/contradicts', place, step, way, found, earlier, unit }];
  });
};

type ReadBy = 'by-ruler' | 'by-tape';

/** What rulers and tapes are read to where nothing finer is written; and the finest that is believed. Our own figures. */
const usualFineness: Readonly<Record<Unit, Readonly<Record<ReadBy | 'finest', number>>>> = {
  in: { 'by-ruler': 16, 'by-tape': 8, finest: 64 },
  cm: { 'by-ruler': 10, 'by-tape': 2, finest: 20 },
};

export const finenessOf = (sizes: readonly Rational[], unit: Unit, by: ReadBy = 'by-ruler'): Length => {
  const usual = usualFineness[unit];
  const written = sizes.map(({ d }) => Number(d)).filter((d) => d <= usual.finest);
  return length(1 / Math.max(usual[by], ...written));
};
