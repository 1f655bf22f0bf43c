// What is to be cut from sheets, in whole units: demands of one size merged, sheets down to what sums of pieces can use.
import type { Length } from '#craft/measure';
import type { Sheet } from '#craft/sheets';
import { gcdOf, type Kind } from '#craft/strips';
import type { ClothSheet, Demand } from './cloth.ts';
import { gridFor, unitsUp } from './grid.ts';
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

/** Units a side of a sheet is divided into at most; on finer grids pieces are rounded up to coarser ones. */
const mostUnits = 4096;

/** The grid is that of the pieces alone: sums of them fall on it, wherever a sheet ends. */
export const scaledSheetsFor = (of: {
  readonly sheets: readonly ClothSheet[];
  readonly demands: readonly Demand[];
}): ScaledSheets => {
  const demands = of.demands.filter(({ count }) => count > 0);
  const grid = gridFor(demands.flatMap(({ across, along }) => [across, along]));
  const sides = of.sheets.flatMap(({ size }) => size.map((side) => downTo(side, grid.per)));
  const kinds = merged(of.demands, (side) => unitsUp(side, grid));
  const least = gcdOf(kinds.flatMap(({ kind }) => [kind.width, kind.height])) || 1;
  const unit = Math.max(least, coarse(Math.max(1, ...sides), least));
  const exact = grid.exact && unit === least;
  const room = (side: Length): number => Math.floor(downTo(side, grid.per) / unit);
  const costs = gridFor(of.sheets.map(({ cost }) => cost));
  const job = {
    width: Math.max(0, ...of.sheets.map(({ size }) => room(size[0]))),
    kinds: kinds.map(({ kind }) => ({
      ...kind,
      width: Math.ceil(kind.width / unit),
      height: Math.ceil(kind.height / unit),
    })),
  };
  return {
    scaled: { job, grid, unit, demandsOf: kinds.map((k) => k.demands), loose: job },
    sheets: of.sheets.map(({ size, cost, stock }) => ({
      width: room(size[0]),
      height: room(size[1]),
      cost: unitsUp(cost, costs),
      stock,
    })),
    perCost: costs.per,
    exact: exact && costs.exact,
  };
};

/** A side that lies within 1e-9 of a unit is on it. */
const downTo = (side: Length, per: number): number => Math.floor((side + 1e-9) * per);

/** The unit that brings the longest side to the most units; never a part of the finer one. */
const coarse = (longest: number, unit: number): number =>
  longest / unit <= mostUnits ? unit : Math.ceil(longest / mostUnits);

const merged = (
  demands: readonly Demand[],
  units: (side: Length) => number,
): readonly { readonly kind: Kind; readonly demands: readonly number[] }[] => {
  const found = new Map<string, { kind: Kind; demands: number[] }>();
  demands.forEach(({ across, along, count, mayTurn }, index) => {
    if (count === 0) return;
    const [w, h] = [units(across), units(along)];
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
