// A layout picked out of many known strips: the linear program over them is solved, a strip it favours is cut, the program is
// solved again for the pieces that remain, and so on. The last few pieces are laid strip by strip.
import type { Chance } from '#ground/chance';
import { type LinearProgram, linearProgramFor } from '#ground/search';
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import { shaken } from './neighbours.ts';
import { sequenceOf } from './sequence.ts';
import { lengthOfStrips, type Strip, stripOf, takeFrom, timesWithin, worthOf } from './strip.ts';

/** A linear program over known strips, solved; dives start from it. */
export interface Choice {
  readonly program: LinearProgram;
  readonly strips: Strip[];
}

/** @param strips none of which gives more of a kind than the demand */
export const choiceAmong = (lies: Lies, strips: readonly Strip[], demand: Int32Array): Choice => {
  const choice: Choice = { program: linearProgramFor(demand), strips: [] };
  for (const strip of [...strips, ...singlesFor(lies)]) addTo(choice, strip);
  choice.program.solve();
  return choice;
};

const addTo = ({ program, strips }: Choice, strip: Strip): void => {
  const rows: number[] = [];
  const factors: number[] = [];
  for (let i = 0; i < strip.gives.length; i += 2) {
    rows.push(strip.gives[i] as number);
    factors.push(strip.gives[i + 1] as number);
  }
  program.addColumn(strip.height, rows, factors);
  strips.push(strip);
};

export interface Pricing {
  readonly lies: Lies;
  readonly filler: Filler;
  /** What there is of each kind: no strip gives more. */
  readonly left: Int32Array;
  readonly choice: Choice;
  /** Heights tried. */
  readonly heights: Iterable<number>;
}

/** Fills a strip of each height by the program's worths and adds those worth more than their height. @returns how many */
export const addPriced = ({ lies, filler, left, choice, heights }: Pricing): number => {
  const duals = choice.program.duals().map((y, k) => Math.max(0, y) + (1e-6 * (lies.area[k] as number)) / lies.width);
  let added = 0;
  for (const height of heights) {
    const strip = filler.fill({ left, worth: duals, height, first: -1 });
    if (strip === null) continue;
    takeFrom(strip, left, -1);
    if (worthOf(strip, duals) <= strip.height * (1 + 1e-4)) continue;
    addTo(choice, strip);
    added++;
  }
  return added;
};

/** Heights of the pieces that are left. */
export const heightsLeft = (lies: Lies, left: Int32Array): ReadonlySet<number> => {
  const heights = new Set<number>();
  for (let lie = 0; lie < lies.size; lie++)
    if ((left[lies.kind[lie] as number] as number) > 0) heights.add(lies.tall[lie] as number);
  return heights;
};

/** One piece alone in a strip, of each kind: so that every demand can be met. */
export const singlesFor = (lies: Lies): readonly Strip[] => {
  const lieOf = new Map<number, number>();
  for (let lie = 0; lie < lies.size; lie++)
    if (lies.tall[lie] === lies.flat[lies.kind[lie] as number]) lieOf.set(lies.kind[lie] as number, lie);
  return [...lieOf.values()].map((lie) => stripOf(lies, [[lie, 1]]));
};

export interface Dive {
  readonly lies: Lies;
  readonly filler: Filler;
  readonly chance: Chance;
  readonly worth: Float64Array;
  readonly choice: Choice;
  /** Heights that new strips may have. */
  readonly heights: ReadonlySet<number>;
  readonly demand: Int32Array;
  /** Layouts as long as this are given up, as soon as the program sees it. */
  readonly limit: number;
  /** Told every new strip. */
  readonly seen: (strip: Strip) => void;
}

/** Strips' worth of pieces that are laid one strip after the other. */
const lastStrips = 3;
/** Tries at these. */
const lastTries = 12;

/** Yields after every strip that is settled. @returns null when it was given up */
export function* divedFrom({
  lies,
  filler,
  chance,
  worth,
  choice,
  heights,
  demand,
  limit,
  seen,
}: Dive): Generator<void, readonly Strip[] | null, void> {
  const own: Choice = { program: choice.program.copy(), strips: [...choice.strips] };
  const { program } = own;
  const left = demand.slice();
  const strips: Strip[] = [];
  let length = 0;
  let barred = new Set<number>();
  for (;;) {
    if (length + Math.ceil(program.objective() - 1e-6) >= limit) return null;
    const before = strips.length;
    for (const [strip, wanted] of favoured(program, own.strips, chance)) {
      const times = Math.min(wanted, timesWithin(strip, left));
      if (times <= 0) continue;
      takeFrom(strip, left, times);
      length += times * strip.height;
      for (let i = 0; i < times; i++) strips.push(strip);
    }
    if (strips.length === before || program.objective() <= lastStrips * (length / strips.length)) break;
    const out = new Set<number>();
    own.strips.forEach((strip, j) => {
      if (timesWithin(strip, left) > 0) return;
      out.add(j);
      if (!barred.has(j)) program.setBarred(j, 'barred');
    });
    barred = out;
    for (let k = 0; k < left.length; k++) program.setLeast(k, left[k] as number);
    if (program.solve(400) !== 'optimal') break;
    const among = lies.stripHeights === 'any' ? heights : heightsLeft(lies, left);
    for (let i = 0; i < pricedAgain && addPriced({ lies, filler, left, choice: own, heights: among }) > 0; i++)
      if (program.solve(400) !== 'optimal') break;
    yield;
  }
  for (let j = choice.strips.length; j < own.strips.length; j++) seen(own.strips[j] as Strip);
  return withRest({ lies, filler, chance, worth, left, strips, limit });
}

/** Rounds of new strips after each strip that is settled. */
const pricedAgain = 3;

/** The whole parts of what the program takes; without any, the one strip that it takes most of, more or less. */
const favoured = (
  program: LinearProgram,
  strips: readonly Strip[],
  chance: Chance,
): readonly (readonly [Strip, number])[] => {
  const whole: (readonly [Strip, number])[] = [];
  let most = -1;
  let one: Strip | null = null;
  for (const [j, x] of program.support()) {
    const strip = strips[j] as Strip;
    const times = Math.floor(x + 1e-6);
    if (times > 0) whole.push([strip, times]);
    const draw = x - times + 0.3 * chance();
    if (x - times > 1e-6 && draw > most) {
      most = draw;
      one = strip;
    }
  }
  return one === null ? whole : [...whole, [one, 1] as const];
};

const withRest = (
  of: Omit<Dive, 'choice' | 'heights' | 'demand' | 'seen'> & { readonly left: Int32Array; readonly strips: Strip[] },
) => {
  const { lies, filler, chance, worth, left, strips, limit } = of;
  if (left.every((n) => n === 0)) return strips;
  let room = limit - lengthOfStrips(strips);
  let best: readonly Strip[] | null = null;
  for (let i = 0; i < lastTries; i++) {
    const manner = {
      worth: shaken(worth, chance, 0.3),
      chance,
      tries: 1 + (i % 3),
      stray: 0.2,
      rise: 0.2,
      loose: 0,
      repeat: 'once',
    } as const;
    const rest = sequenceOf({ lies, filler, left: left.slice(), manner, limit: room });
    if (rest === null) continue;
    best = rest;
    room = lengthOfStrips(rest);
  }
  return best === null ? null : [...strips, ...best];
};
