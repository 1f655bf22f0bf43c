// What is to be cut from sheets, in whole units: demands of one size merged, sheets down to what sums of pieces can use.
import type { Length } from '#craft/measure';
import type { Sheet } from '#craft/sheets';
import { gcdOf, type Kind } from '#craft/strips';
import type { ClothSheet, Demand } from './cloth.ts';
import { type Grid, gridFor, unitsUp } from './grid.ts';
import type { ScaledJob } from './kinds.ts';

export interface ScaledSheets {
  readonly scaled: ScaledJob;
  /** In the order given; costs whole. */
  readonly sheets: readonly Sheet[];
  /** One of the document's cost is so many of these. */
  readonly perCost: number;
  /** Whether a bound in whole units is one in lengths too. */
  readonly exact: boolean;
}

/** Units a side of a sheet is divided into at most; on finer grids pieces are rounded up to a coarser one. */
const mostUnits = 8192;

/** The grid is that of the pieces alone: sums of them fall on it, wherever a sheet ends. */
export const scaledSheetsFor = (of: {
  readonly sheets: readonly ClothSheet[];
  readonly demands: readonly Demand[];
}): ScaledSheets => {
  const demands = of.demands.filter(({ count }) => count > 0);
  const fine = gridFor(demands.flatMap(({ across, along }) => [across, along]));
  const merging = merged(of.demands, fine);
  const least = gcdOf(merging.flatMap(({ kind }) => [kind.width, kind.height])) || 1;
  const longest = Math.max(1, ...of.sheets.flatMap(({ size }) => size.map((side) => downTo(side, fine))));
  const grid = longest / least <= mostUnits ? fine : { per: (fine.per * mostUnits) / longest, exact: false };
  const unit = grid === fine ? least : 1;
  const kinds = grid === fine ? merging : merged(of.demands, grid);
  const costs = gridFor(of.sheets.map(({ cost }) => cost));
  const job = {
    width: Math.floor(longest / unit),
    kinds: kinds.map(({ kind }) => ({ ...kind, width: kind.width / unit, height: kind.height / unit })),
  };
  return {
    scaled: { job, grid, unit, demandsOf: kinds.map((k) => k.demands), loose: job },
    sheets: of.sheets.map(({ size, cost, stock }) => ({
      width: Math.floor(downTo(size[0], grid) / unit),
      height: Math.floor(downTo(size[1], grid) / unit),
      cost: unitsUp(cost, costs),
      stock,
    })),
    perCost: costs.per,
    exact: grid.exact && costs.exact,
  };
};

/** A side that lies within 1e-9 of a unit is on it. */
const downTo = (side: Length, { per }: Grid): number => Math.floor((side + 1e-9) * per);

const merged = (
  demands: readonly Demand[],
  grid: Grid,
): readonly { readonly kind: Kind; readonly demands: readonly number[] }[] => {
  const found = new Map<string, { kind: Kind; demands: number[] }>();
  demands.forEach(({ across, along, count, mayTurn }, index) => {
    if (count === 0) return;
    const [w, h] = [unitsUp(across, grid), unitsUp(along, grid)];
    const turns = mayTurn && w !== h;
    const [width, height] = turns ? [Math.min(w, h), Math.max(w, h)] : [w, h];
    const key = `${width} ${height} ${turns}`;
    const before = found.get(key);
    found.set(key, {
      kind: { width, height, count: count + (before?.kind.count ?? 0), mayTurn: turns },
      demands: [...(before?.demands ?? []), index],
    });
  });
  return [...found.values()].sort(
    ({ kind: a }, { kind: b }) => b.height - a.height || b.width - a.width || Number(a.mayTurn) - Number(b.mayTurn),
  );
};
