// How should the pieces lie on the cloth, and how much shorter could any layout be? Strips across the usable width,
// parts along a strip, pieces down a part; the shortest found, then the least work. Knows nothing of shops.

import { compareEffort, effortOf } from '#craft/ease';
import { openLayoutSearch } from '#craft/layout';
import { type Length, length } from '#craft/measure';
import {
  type BoundKind,
  type IntegerSolver,
  isPurchaseOpen,
  lengthOf,
  lowerBoundFor,
  type ShopStep,
  type StripsFound,
  type StripUse,
  withoutSurplus,
} from '#craft/strips';
import { drained } from '#ground/search';
import type { Demand, LaidOut } from './cloth.ts';
import { type Easing, easedLayout } from './eased-layout.ts';
import { type ScaledJob, scaledJobFor, widerThanCloth } from './kinds.ts';

/** How hard to search: layouts made beyond the plain heuristics. Steps, not seconds: the same input gives the same layout. */
export interface LayoutBudget {
  readonly steps: number;
  /** Goes no further than it takes to tell what has to be bought, where `shop` is given; else on to the least length. */
  readonly until?: 'purchase';
  /** In the document's unit: a layout as short as this ends the search. */
  readonly enough?: Length;
}

export const defaultBudget: LayoutBudget = { steps: 36 };

/** Where a step of the shop less is still open, the budget is spent so many times over at most. Our own figure. */
const patience = 5;

export interface LayoutTask {
  /** Usable width. */
  readonly width: Length;
  readonly demands: readonly Demand[];
  readonly budget: LayoutBudget;
  readonly solver?: IntegerSolver;
  /** Where given, what has to be bought is decided first. In the document's unit. */
  readonly shop?: ShopStep;
  /** Looks for less work, and what it costs; without it the shortest layout stands as it was found. */
  readonly easing?: Easing;
  /** Hears of each better layout and each better bound while the search goes on, as it is drawn before less work is looked for. */
  readonly tell?: (laid: LaidOut) => void;
}

/**
 * A layout of exactly the pieces demanded, never longer than the best of the level heuristics, nor than the same
 * task with no piece free to turn, unless an easier one is chosen; and a length below which no layout exists.
 *
 * @returns lengths in the document's unit, before squaring and shrinkage. `boundKind` tells what the bound rests on: areas, plain or
 *   weighed by dual feasible functions; a linear program over strips or over sheets as long as the layout; or all layouts
 *   tried. Where it equals the length, the layout is the shortest there is.
 * @throws RangeError when a piece fits the width neither way; `ledgerOf` tells the maker before
 */
export const planLayout = (task: LayoutTask): LaidOut => drained(layoutBySteps(task));

/** The same, for who has other things to do between the steps of the search. */
export function* layoutBySteps(task: LayoutTask): Generator<void, LaidOut, void> {
  const { width, demands } = task;
  const wide = widerThanCloth(demands, width);
  if (wide.length > 0) throw new RangeError(`pieces wider than the cloth: demands ${wide.join(', ')}`);
  const scaled = scaledJobFor({ width, demands, turning: 'as-demanded' });
  const free = yield* searched(scaled, task, tellerFor(scaled, task));
  const isSettled = free.isEnough || (task.budget.until === 'purchase' ? !free.isOpen : isLeast(free));
  const best = isSettled || !scaled.job.kinds.some((k) => k.mayTurn) ? free : shorter(free, yield* fixed(task));
  const { easing = null } = task;
  // what costs more than the search itself is left out where no search is wanted
  const solver = task.budget.steps > 0 ? (task.solver ?? null) : null;
  const { layout, ladder } = easedLayout({ ...best, demands, width, solver, easing });
  const least = length(Math.min(layout.length, ...ladder.map((rung) => rung.length)));
  return {
    layout,
    bound: boundOf(free, least),
    boundKind: scaled.grid.exact ? free.boundKind : 'area',
    ...(ladder.length > 0 ? { ladder } : {}),
  };
}

interface Found {
  readonly scaled: ScaledJob;
  /** Exactly the demand. */
  readonly strips: readonly StripUse[];
  /** Whole units of the job. */
  readonly bound: number;
  readonly boundKind: BoundKind;
  /** Whether a step of the shop less is neither found nor ruled out. */
  readonly isOpen: boolean;
  /** Whether it is as short as anybody wants. */
  readonly isEnough: boolean;
}

const tellerFor = (scaled: ScaledJob, { tell, demands, width }: LayoutTask): ((found: StripsFound) => void) => {
  if (tell === undefined) return () => undefined;
  return (found) => {
    const strips = withoutSurplus(scaled.job, found.strips);
    const { layout } = easedLayout({ scaled, strips, demands, width, solver: null, easing: null });
    const bound = boundOf({ scaled, bound: found.bound }, layout.length);
    tell({ layout, bound, boundKind: scaled.grid.exact ? found.boundKind : 'area' });
  };
};

function* searched(
  scaled: ScaledJob,
  { budget, solver, shop }: LayoutTask,
  tell: (found: StripsFound) => void = () => undefined,
): Generator<void, Found, void> {
  const { job, grid, unit } = scaled;
  const perUnit = grid.per / unit;
  const scaledShop = shop === undefined ? null : { step: shop.step * perUnit, before: shop.before * perUnit };
  const search = openLayoutSearch({
    job,
    cutting: { stages: 3, stripHeights: 'any' },
    shop: scaledShop,
    solver: solver ?? null,
  });
  const isOpen = (): boolean => isPurchaseOpen(search.found(), scaledShop);
  const enough = (budget.enough ?? 0) * perUnit + 1e-9;
  const isEnough = (): boolean => search.found().length <= enough;
  const atLeast = budget.until === 'purchase' && scaledShop !== null ? 0 : budget.steps;
  const advance = function* (): Generator<void, void, void> {
    if (search.advance(1)) tell(search.found());
    yield;
  };
  for (let steps = 0; steps < atLeast && !isEnough() && !search.isDone(); steps++) yield* advance();
  // a purchase asked for without the solver is wanted soon
  const atMost = budget.steps * (budget.until === 'purchase' && !solver ? 1 : patience);
  for (let steps = atLeast; steps < atMost && isOpen() && !isEnough() && !search.isDone(); steps++) yield* advance();
  const { strips, length: found, bound, boundKind } = search.found();
  // a search that was led a few steps only may have looked for a layout alone
  const area = bound < found ? lowerBoundFor(job, found) : 0;
  return {
    scaled,
    strips: withoutSurplus(job, strips),
    isOpen: isOpen(),
    isEnough: isEnough(),
    ...(area > bound ? { bound: area, boundKind: 'area' } : { bound, boundKind }),
  };
}

/** The same search as if no piece might turn, so that leave to turn never costs cloth. */
const fixed = ({ shop: _, ...task }: LayoutTask): Generator<void, Found, void> =>
  searched(scaledJobFor({ width: task.width, demands: task.demands, turning: 'never' }), task);

const isLeast = ({ strips, bound }: Found): boolean => lengthOf(strips) <= bound;

const shorter = (a: Found, b: Found): Found =>
  compareEffort(effortOf(a.scaled.job, a.strips), effortOf(b.scaled.job, b.strips)) <= 0 ? a : b;

/** Off the grid the bound is that of the pieces rounded down on a cloth rounded up, in the grid's own units. */
const boundOf = ({ scaled, bound }: Pick<Found, 'scaled' | 'bound'>, found: Length): Length => {
  const { grid, unit, loose } = scaled;
  if (grid.exact) return length(Math.min(found, (bound * unit) / grid.per));
  return length(Math.min(found, lowerBoundFor(loose, Math.ceil(found * grid.per)) / grid.per));
};
