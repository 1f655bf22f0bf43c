// How short can any layout of these pieces be? A length that no layout can beat, whatever strips it is made of.
// Each argument counts area, weighed or plain; none of them looks for a layout.

import { attainableUp, attainableWithin } from './attainable.ts';
import { type DualFeasible, dualFeasibleFor } from './dual-feasible.ts';
import type { Job, Kind } from './job.ts';

interface Sides {
  readonly width: number;
  readonly height: number;
}

/**
 * Lower bound on the length of every layout of the job, strips or not, with turning where a kind may turn.
 *
 * The greatest of: area over width; the tallest piece (lying the shorter way where it may); widths replaced by dual
 * feasible functions (every line across the cloth meets pieces of at most its width, so Σ f(w)·h ≤ f(W)·length; this
 * contains "pieces wider than half lie one below another"); and lengths refuted by weighing both sides at once. Then
 * raised to the next sum of piece heights, which the length of a layout in strips always is. The cloth's width is
 * first lowered to the largest sum of widths within it.
 *
 * @param found length of a layout that exists: lengths below it are what is worth refuting; whole units
 * @returns whole units, at most `found`
 * @source docs/formulas.md#layout; Fekete and Schepers' bounds for packing by dual feasible functions; from memory
 */
export const lowerBoundFor = (job: Job, found: number): number => {
  if (job.kinds.length === 0) return 0;
  const lies = job.kinds.map((k) => sidesOf(k, job.width));
  const heights = [...new Set(lies.flatMap((l) => l.map((s) => s.height)))];
  const widths = lies.flatMap((l, i) => l.map((s) => ({ size: s.width, most: (job.kinds[i] as Kind).count })));
  const width = attainableWithin(job.width, widths);
  const up = (value: number): number => Math.min(found, attainableUp(value, heights));
  const acrossFns = dualFeasibleFor(width, [...new Set(widths.map((w) => w.size))], 24);
  let bound = tallestOf(lies);
  for (const f of acrossFns)
    bound = Math.max(bound, Math.ceil(weighed(job, lies, (s) => f.of(s.width) * s.height) / f.whole - tiny));
  bound = up(bound);
  return refuting({ job, lies, heights, acrossFns: acrossFns.slice(0, 20), bound, found, up });
};

/** What a quotient of whole numbers may be off by in doubles, and far less than one over any denominator used here. */
const tiny = 1e-7;

const sidesOf = (kind: Kind, clothWidth: number): readonly Sides[] => {
  const fixed = { width: kind.width, height: kind.height };
  const turned = { width: kind.height, height: kind.width };
  return (kind.mayTurn ? [fixed, turned] : [fixed]).filter((s) => s.width <= clothWidth);
};

const tallestOf = (lies: readonly (readonly Sides[])[]): number =>
  Math.max(...lies.map((l) => Math.min(...l.map((s) => s.height))));

const weighed = (job: Job, lies: readonly (readonly Sides[])[], weight: (s: Sides) => number): number =>
  job.kinds.reduce((all, kind, i) => all + kind.count * Math.min(...(lies[i] as readonly Sides[]).map(weight)), 0);

interface Refuting {
  readonly job: Job;
  readonly lies: readonly (readonly Sides[])[];
  readonly heights: readonly number[];
  readonly acrossFns: readonly DualFeasible[];
  readonly bound: number;
  readonly found: number;
  readonly up: (value: number) => number;
}

/** Lengths tried for refutation at most. */
const mostTrials = 8;

/** A refuted length refutes all shorter ones, so the bound is sought by halving between it and the length found. */
const refuting = ({ job, lies, heights, acrossFns, bound, found, up }: Refuting): number => {
  let low = bound;
  let high = found;
  for (let trial = 0; trial < mostTrials && low < high; trial++) {
    // the last step first: when it is refuted the layout is the shortest there is
    const length = trial === 0 ? high - 1 : Math.floor((low + high - 1) / 2);
    if (isRefuted({ job, lies, heights, acrossFns, length })) low = up(length + 1);
    else high = length;
  }
  return low;
};

/** Whether weighed area shows that the pieces cannot lie within the width and this length. */
const isRefuted = ({ job, lies, heights, acrossFns, length }: Trial): boolean => {
  const fitting = lies.map((l) => l.filter((s) => s.height <= length));
  if (fitting.some((l) => l.length === 0)) return true;
  const alongFns = dualFeasibleFor(
    length,
    heights.filter((h) => h <= length),
    8,
  );
  const sides = fitting.flat();
  const across = acrossFns.map((f) => Float64Array.from(sides, (s) => f.of(s.width) / f.whole));
  const along = alongFns.map((g) => Float64Array.from(sides, (s) => g.of(s.height) / g.whole));
  const ends = Int32Array.from(fitting, endAfter());
  const counts = Float64Array.from(job.kinds, (k) => k.count);
  return across.some((a) => along.some((b) => shareOf({ across: a, along: b, ends, counts }) > 1 + 1e-9));
};

interface Trial {
  readonly job: Job;
  readonly lies: readonly (readonly Sides[])[];
  readonly heights: readonly number[];
  readonly acrossFns: readonly DualFeasible[];
  readonly length: number;
}

const endAfter = (): ((list: readonly unknown[]) => number) => {
  let end = 0;
  return (list) => {
    end += list.length;
    return end;
  };
};

/** Weighed area of all pieces as a share of the cloth's, each piece lying the way that weighs least. */
const shareOf = (of: {
  readonly across: Float64Array;
  readonly along: Float64Array;
  /** Where each kind's ways of lying end in the two tables. */
  readonly ends: Int32Array;
  readonly counts: Float64Array;
}): number => {
  const { across, along, ends, counts } = of;
  let all = 0;
  let at = 0;
  for (let kind = 0; kind < ends.length; kind++) {
    let least = Number.POSITIVE_INFINITY;
    for (; at < (ends[kind] as number); at++) least = Math.min(least, (across[at] as number) * (along[at] as number));
    all += (counts[kind] as number) * least;
  }
  return all;
};
