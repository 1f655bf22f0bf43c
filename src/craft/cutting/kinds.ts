// What is to be cut, in whole units: demands of one size merged, in an order that does not depend on how they
// were listed. Says nothing of where they lie.
import type { Length } from '#craft/measure';
import { gcdOf, type Job, type Kind } from '#craft/strips';
import type { Demand } from './cloth.ts';
import { type Grid, gridFor, unitsDown, unitsUp } from './grid.ts';

/** A job and the way back: one of its units is `unit` of the grid's. */
export interface ScaledJob {
  readonly job: Job;
  readonly grid: Grid;
  readonly unit: number;
  /** Demands that each kind stands for. */
  readonly demandsOf: readonly (readonly number[])[];
  /** The same job with every piece rounded down and the width up: what a lower bound is computed from. */
  readonly loose: Job;
}

/** Whether a kind's pieces may lie fixed only, or turned too. */
export type Turning = 'as-demanded' | 'never';

/** Demands that fit the width neither way: indexes. */
export const widerThanCloth = (demands: readonly Demand[], width: Length): readonly number[] =>
  demands.flatMap((d, i) => {
    const needs = d.mayTurn ? Math.min(d.across, d.along) : d.across;
    return d.count > 0 && needs > width + 1e-9 ? [i] : [];
  });

/** Merges equal demands and scales all lengths by their greatest common divisor. */
export const scaledJobFor = (of: {
  readonly width: Length;
  readonly demands: readonly Demand[];
  readonly turning: Turning;
}): ScaledJob => {
  const { width, demands, turning } = of;
  const grid = gridFor([width, ...demands.flatMap((d) => [d.across, d.along])]);
  const kinds = merged({ demands, width, turning, grid, round: unitsUp });
  const clothWidth = unitsDown(width, grid);
  const unit = Math.max(1, gcdOf([clothWidth, ...kinds.flatMap(({ kind }) => [kind.width, kind.height])]));
  const job = divided({ width: clothWidth, kinds: kinds.map(({ kind }) => kind) }, unit);
  const loose = grid.exact
    ? job
    : {
        width: unitsUp(width, grid),
        kinds: merged({ demands, width, turning, grid, round: unitsDown }).map(({ kind }) => kind),
      };
  return { job, grid, unit, demandsOf: kinds.map((k) => k.demands), loose };
};

/** Whole units of the job within a length. */
export const unitsOf = ({ grid, unit }: ScaledJob, of: Length): number => Math.floor((of * grid.per) / unit + 1e-9);

const divided = (job: Job, by: number): Job => ({
  width: job.width / by,
  kinds: job.kinds.map((k) => ({ ...k, width: k.width / by, height: k.height / by })),
});

interface Merging {
  readonly demands: readonly Demand[];
  readonly width: Length;
  readonly turning: Turning;
  readonly grid: Grid;
  readonly round: (value: number, grid: Grid) => number;
}

const merged = (of: Merging): readonly { readonly kind: Kind; readonly demands: readonly number[] }[] => {
  const found = new Map<string, { kind: Kind; demands: number[] }>();
  of.demands.forEach((demand, index) => {
    if (demand.count === 0) return;
    const one = kindOf(demand, of);
    const key = `${one.width} ${one.height} ${one.mayTurn}`;
    const before = found.get(key);
    found.set(key, {
      kind: { ...one, count: one.count + (before?.kind.count ?? 0) },
      demands: [...(before?.demands ?? []), index],
    });
  });
  return [...found.values()].sort((a, b) => byArea(a.kind, b.kind));
};

/** A piece too wide for the cloth lies turned, whatever is preferred. */
const kindOf = (demand: Demand, { width, turning, grid, round }: Merging): Kind => {
  const across = round(demand.across, grid);
  const along = round(demand.along, grid);
  const { count } = demand;
  if (!demand.mayTurn || across === along) return { width: across, height: along, count, mayTurn: false };
  if (demand.across > width + 1e-9) return { width: along, height: across, count, mayTurn: false };
  if (turning === 'never' || demand.along > width + 1e-9)
    return { width: across, height: along, count, mayTurn: false };
  return { width: Math.min(across, along), height: Math.max(across, along), count, mayTurn: true };
};

const byArea = (a: Kind, b: Kind): number =>
  b.height - a.height || b.width - a.width || Number(a.mayTurn) - Number(b.mayTurn);
