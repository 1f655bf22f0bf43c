// A block sewn again and again by chance: every piece is cut and every seam sewn somewhere within its limits, and all check
// sizes of one block come of the same pieces and seams.
import { type Length, length } from '#craft/measure';
import { type Chance, chanceFrom } from '#ground/chance';
import type { Care, Habit } from './care.ts';
import { partsOf } from './parts.ts';
import type { SizeModel } from './size-model.ts';
import { habitShift } from './spread.ts';

export interface Simulated {
  /** Less the size as drawn. */
  readonly mean: Length;
  readonly deviation: Length;
  /** The furthest that any came out from the middle of all that may. */
  readonly furthest: Length;
}

/** Where a piece or a seam came out: a share of its limit, from −1 to 1. */
export type Deviate = (chance: Chance) => number;

/** Equally likely anywhere within the limits. */
export const anywhere: Deviate = (chance) => 2 * chance() - 1;

/** Always at a limit, one or the other. */
export const atLimits: Deviate = (chance) => (chance() < 0.5 ? -1 : 1);

export interface SewnByChance {
  readonly models: readonly SizeModel[];
  readonly care: Care;
  readonly habit: Habit;
  readonly draws: number;
  readonly seed: number;
  readonly deviate?: Deviate;
}

/** @returns for each model what came of all draws */
export const simulate = (of: SewnByChance): readonly Simulated[] => {
  const sew = sewByChance(of.models, of.care, of.habit);
  const chance = chanceFrom(of.seed);
  const sums = of.models.map(() => ({ one: 0, two: 0, furthest: 0 }));
  for (let draw = 0; draw < of.draws; draw++) {
    sew(chance, of.deviate ?? anywhere).forEach(({ off, wandered }, i) => {
      const sum = sums[i] as { one: number; two: number; furthest: number };
      sum.one += off;
      sum.two += off * off;
      sum.furthest = Math.max(sum.furthest, Math.abs(wandered));
    });
  }
  return sums.map(({ one, two, furthest }) => {
    const mean = one / of.draws;
    return {
      mean: length(mean),
      deviation: length(Math.sqrt(Math.max(0, two / of.draws - mean * mean))),
      furthest: length(furthest),
    };
  });
};

/** Sews one block: by model, how far its size is off the drawing, and how much of that is chance. */
export type Sewer = (
  chance: Chance,
  deviate: Deviate,
) => readonly { readonly off: number; readonly wandered: number }[];

export const sewByChance = (models: readonly SizeModel[], care: Care, habit: Habit): Sewer => {
  const places = new Map<string, number>();
  const placeOf = (name: string): number => {
    const place = places.get(name) ?? places.size;
    places.set(name, place);
    return place;
  };
  const terms = models.map((model) => ({
    shift: model.expected - model.drawn + habitShift(model, habit),
    parts: partsOf(model, care).map(({ name, limit }) => ({ place: placeOf(name), by: limit })),
  }));
  return (chance, deviate) => {
    const drawn = Array.from({ length: places.size }, () => deviate(chance));
    return terms.map(({ shift, parts }) => {
      const wandered = parts.reduce((all, { place, by }) => all + (drawn[place] as number) * by, 0);
      return { off: shift + wandered, wandered };
    });
  };
};
