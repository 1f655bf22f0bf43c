// How few sheets, or how cheap ones of several kinds, hold these pieces, and below what number or cost can none? Sheets are cut
// like cloth: strips across, parts along a strip, pieces down a part. Knows nothing of prices but what each sheet costs.

import { type Length, length, tidy } from '#craft/measure';
import { type SheetsFound, searchSheets } from '#craft/sheets';
import type { IntegerSolver } from '#craft/strips';
import { drained } from '#ground/search';
import type { ClothSheet, Demand, LaidSheet, LaidSheets, Strip } from './cloth.ts';
import { easedSheets } from './eased-sheets.ts';
import { layoutOf } from './lay.ts';
import type { LayoutBudget } from './layout.ts';
import { leastSheets } from './sheet-bound.ts';
import { type ScaledSheets, scaledSheetsFor } from './sheet-scale.ts';

export interface SheetTask {
  /** At least one kind. */
  readonly sheets: readonly ClothSheet[];
  readonly demands: readonly Demand[];
  readonly budget: LayoutBudget;
  readonly solver?: IntegerSolver;
}

/**
 * A layout of exactly the pieces demanded on the cheapest sheets found, of equal cost the fewest, each sheet cut with the least
 * work that was found for its pieces; and a number or cost below which none exists. Where a limited stock does not suffice, as much as was found to fit is laid, and the rest is told.
 *
 * @throws RangeError when a piece fits no kind of sheet either way; the ledger tells those
 */
export const planSheets = (task: SheetTask): LaidSheets => drained(sheetsBySteps(task));

/** The same, for who has other things to do between the steps of the search. */
export function* sheetsBySteps(task: SheetTask): Generator<void, LaidSheets, void> {
  const { sheets, demands } = task;
  demands.forEach((demand) => {
    if (demand.count > 0 && !sheets.some(({ size }) => fits(demand, size)))
      throw new RangeError(`a piece larger than its sheets: ${demand.across} by ${demand.along}`);
  });
  const scale = scaledSheetsFor({ sheets, demands });
  const found = yield* searched(scale, task);
  const laid = laidOn({ scale, task, found });
  const cost = laid.reduce((sum, { kind }) => sum + (sheets[kind] as ClothSheet).cost, 0);
  const all = stacked(laid.flatMap(({ strips }) => strips));
  return {
    sheets: laid,
    layout: { width: length(Math.max(0, ...sheets.map(({ size }) => size[0]))), length: usedBy(all), strips: all },
    cost,
    ...boundsOf({ scale, task, found, cost, count: laid.length }),
    left: leftOf(scale, found, demands),
    // rounded pieces prove nothing
    holds: found.holds === 'no' && !scale.exact ? 'not-found' : found.holds,
  };
}

const fits = ({ across, along, mayTurn }: Demand, [width, height]: ClothSheet['size']): boolean =>
  (across <= width + 1e-9 && along <= height + 1e-9) || (mayTurn && along <= width + 1e-9 && across <= height + 1e-9);

/** Steps of the search for each of the budget's; our own choice. */
const stepsPerStep = 2;

function* searched(
  { scaled, sheets }: ScaledSheets,
  { budget, solver }: SheetTask,
): Generator<void, SheetsFound, void> {
  const search = searchSheets({
    kinds: scaled.job.kinds,
    cutting: { stages: 3, stripHeights: 'any' },
    sheets,
    solver: solver ?? null,
  });
  let last = search.next();
  for (let step = 0; step < budget.steps * stepsPerStep && last.done !== true; step++) {
    yield;
    last = search.next();
  }
  const found = last.value;
  // what costs more than the search itself is left out where no search is wanted
  if (budget.steps === 0) return found;
  return {
    ...found,
    sheets: easedSheets({ kinds: scaled.job.kinds, sheets, uses: found.sheets, solver: solver ?? null }),
  };
}

/** Sheet after sheet: fullest kinds of pattern as found, equal sheets together. */
const laidOn = (of: {
  readonly scale: ScaledSheets;
  readonly task: SheetTask;
  readonly found: SheetsFound;
}): readonly LaidSheet[] => {
  const { scale, task, found } = of;
  const inTurn = found.sheets.flatMap(({ sheet, times, strips }) =>
    Array.from({ length: times }, () => ({ sheet, strips })),
  );
  const all = layoutOf({
    scaled: scale.scaled,
    demands: task.demands,
    strips: inTurn.flatMap(({ strips }) => strips),
    width: length(0),
  }).strips;
  let next = 0;
  const laid = inTurn.map(({ sheet, strips }): LaidSheet => {
    const count = strips.reduce((sum, { times }) => sum + times, 0);
    const mine = all.slice(next, next + count);
    next += count;
    const { size } = task.sheets[sheet] as ClothSheet;
    return { kind: sheet, width: size[0], length: size[1], strips: stacked(mine) };
  });
  return laid.toSorted((a, b) => a.kind - b.kind || usedBy(b.strips) - usedBy(a.strips));
};

const usedBy = (strips: readonly Strip[]): Length => tidy(strips.reduce((sum, { height }) => sum + height, 0));

/** One below another from the top. */
const stacked = (strips: readonly Strip[]): readonly Strip[] => {
  let at = 0;
  return strips.map((strip) => {
    const placed = { ...strip, at: tidy(at) };
    at += strip.height;
    return placed;
  });
};

const boundsOf = (of: {
  readonly scale: ScaledSheets;
  readonly task: SheetTask;
  readonly found: SheetsFound;
  readonly cost: number;
  readonly count: number;
}): Pick<LaidSheets, 'bound' | 'kept' | 'costBound' | 'boundKind'> => {
  const { scale, task, found, cost, count } = of;
  const whole = found.holds === 'yes';
  const searchedBound = scale.exact ? found.bound / scale.perCost : 0;
  const [first, ...others] = task.sheets;
  const counted = leastOf(task.sheets, task.demands);
  const kept = others.every((other) => other.cost === first?.cost) ? 'sheets' : 'cost';
  if (first === undefined || kept === 'cost' || first.cost === 0) {
    const costBound = whole ? Math.min(searchedBound, cost) : searchedBound;
    return { bound: whole ? Math.min(count, counted) : counted, kept: 'cost', costBound, boundKind: 'area' };
  }
  const inSheets = Math.ceil(searchedBound / first.cost - 1e-9);
  const bound = whole ? Math.min(count, Math.max(inSheets, counted)) : Math.max(inSheets, counted);
  return {
    bound,
    kept,
    costBound: bound * first.cost,
    boundKind: counted >= inSheets ? 'area' : found.boundKind,
  };
};

/** Any layout is one on as many sheets that every kind fits in; and the largest kinds hold the area in the fewest. */
const leastOf = (sheets: readonly ClothSheet[], demands: readonly Demand[]): number => {
  const side = (which: 0 | 1): Length => length(Math.max(0, ...sheets.map(({ size }) => size[which])));
  const enclosed = leastSheets({ size: [side(0), side(1)], demands });
  const area = demands.reduce((sum, { across, along, count }) => sum + across * along * count, 0);
  let missing = area * (1 - 1e-9);
  let count = 0;
  for (const { size, stock } of sheets.toSorted((a, b) => b.size[0] * b.size[1] - a.size[0] * a.size[1])) {
    const each = size[0] * size[1];
    const taken = Math.min(stock ?? Number.POSITIVE_INFINITY, Math.max(0, Math.ceil(missing / each)));
    count += taken;
    missing -= taken * each;
  }
  return Math.max(enclosed, count);
};

/** Pieces of a kind are taken by its demands in their order; what is left is the last ones'. */
const leftOf = ({ scaled }: ScaledSheets, { left }: SheetsFound, demands: readonly Demand[]): LaidSheets['left'] =>
  scaled.demandsOf
    .flatMap((list, kind) => {
      let missing = left[kind] as number;
      return list.toReversed().flatMap((of) => {
        const count = Math.min(missing, demands[of]?.count ?? 0);
        missing -= count;
        return count > 0 ? [{ of, count }] : [];
      });
    })
    .sort((a, b) => a.of - b.of);
