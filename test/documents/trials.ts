// Seeded trials of students whose habit and slips are known here: what they measure, and how often what they are told is right. A sample
// in each test run, two thousand and more by `npm run fuzz`: a sample strays further from its share.
import assert from 'node:assert/strict';
import { anywhere, type Care, type SizeModel, sewByChance } from '#craft/accuracy';
import type { Diagnosis, Explanation, Reading } from '#craft/diagnosis';
import { length } from '#craft/measure';
import { type Chance, chanceFrom } from '#ground/chance';

export const trials = Number(process.env.SEAMSTEAD_RUNS ?? 400);

export const sixteenth = length(1 / 16);
/** Of a reading that is right to the nearest mark: the mark over √12 (NIST Technical Note 1297, 4.6). */
export const readingNoise = sixteenth / Math.sqrt(12);

/** Sews with a habit, within limits, and reads every size to the nearest sixteenth. */
export interface Measurer {
  readonly habit: number;
  readonly care: Care;
  /** What a slip adds to a size; none where missing. */
  readonly slip?: (model: SizeModel) => number;
  readonly reads: 'to the mark' | 'beside the mark';
}

export const readBy = (models: readonly SizeModel[], student: Measurer, chance: Chance): readonly Reading[] => {
  const sewn = sewByChance(models, student.care, { allowance: length(student.habit), fold: length(0) });
  return sewn(chance, anywhere).map(({ off }, i) => {
    const model = models[i] as SizeModel;
    const size = model.drawn + off + (student.slip?.(model) ?? 0);
    const read =
      student.reads === 'to the mark' ? Math.round(size / sixteenth) * sixteenth : size + sixteenth * (chance() - 0.5);
    return { step: model.step, way: model.way, size: length(read) };
  });
};

interface Seeded {
  readonly seed: number;
  readonly students: number;
}

/** Each with a habit of up to a sixteenth either way. */
const countOf = <Told>(
  { seed, students }: Seeded,
  told: (habit: number, chance: Chance) => Told,
  rights: readonly ((one: Told, habit: number) => boolean)[],
): readonly number[] => {
  const chance = chanceFrom(seed);
  const counts = rights.map(() => 0);
  for (let student = 0; student < students; student++) {
    const habit = (chance() - 0.5) / 8;
    const one = told(habit, chance);
    rights.forEach((isRight, i) => {
      if (isRight(one, habit)) counts[i] = (counts[i] as number) + 1;
    });
  }
  return counts.map((count) => (100 * count) / students);
};

/** In hundreds, of 95 that are promised: how often the limits hold the allowance that was sewn. */
export const assertHeld = (
  seed: number,
  told: (habit: number, chance: Chance) => Pick<Diagnosis, 'allowance'>,
  [least, most]: readonly [number, number] = [93.5, 96.5],
): void => {
  const [held] = countOf({ seed, students: trials }, told, [
    ({ allowance }, habit) => allowance.low <= habit && habit <= allowance.high,
  ]) as [number];
  const slack = straying(0.95);
  assert.ok(held >= least - slack && held <= most + slack, `${held}`);
};

interface Named extends Pick<Diagnosis, 'ranked'> {
  readonly isPlanted: (explanation: Explanation) => boolean;
}

/** In hundreds: how often what was planted is named, and is among the two likeliest. */
export const namedIn = (
  of: Seeded,
  told: (habit: number, chance: Chance) => Named,
): { readonly first: number; readonly among: number } => {
  const isWithin =
    (places: number) =>
    ({ ranked, isPlanted }: Named): boolean =>
      ranked.slice(0, places).some(({ candidate }) => isPlanted(candidate.explanation));
  const [first, among] = countOf(of, told, [isWithin(1), isWithin(2)]) as [number, number];
  return { first, among };
};

/**
 * Two and a half deviations of a share found in so many trials, less those of two thousand, which are in what is asked; in hundreds.
 *
 * @source general statistics: the deviation of a share p of n is √(p(1 − p)/n)
 */
export const straying = (share: number): number =>
  250 * Math.sqrt(share * (1 - share)) * Math.max(0, 1 / Math.sqrt(trials) - 1 / Math.sqrt(2_000));
