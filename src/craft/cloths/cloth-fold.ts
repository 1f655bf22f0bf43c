// What does it cost in cloth to cut a cloth on the fold, and how many strokes of the blade does it save?
import {
  amountToBuy,
  type ClothLine,
  type Demand,
  demandsOf,
  type FoldedWay,
  foldedWays,
  type LaidOut,
  type Layout,
  twinsOf,
} from '#craft/cutting';
import type { Fabric, Quilt } from '#craft/design';
import { type ClothDirections, directionsFor, type RightEnd, workOf } from '#craft/directions';
import { type Length, tidy } from '#craft/measure';
import type { FabricPlan, FoldPlan, FoldWay, Note } from '#craft/plan';
import { costOfCloth } from './cloth-ease.ts';

export interface FoldTask {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly lines: readonly ClothLine<object>[];
  readonly laid: LaidOut;
  readonly lay: (width: Length, demands: readonly Demand[]) => Layout;
}

interface Weighed {
  readonly way: FoldedWay;
  readonly told: FoldWay;
}

/**
 * The ways that are no dearer and no more work than another, cheapest first; the document says whether the cheapest is taken.
 *
 * @returns `laid` as it was where the cloth is not cut on the fold; `fold` null where no strip can be
 */
export const layOnFold = (task: FoldTask): { readonly laid: LaidOut; readonly fold: FoldPlan | null } => {
  const { quilt, laid } = task;
  const layout = laid.layout;
  const ways = bestOf(
    foldedWays({
      width: layout.width,
      demands: demandsIn(layout, demandsOf(task.lines)),
      twins: twinsOf(task.lines),
      least: layout,
      lay: task.lay,
    }).map((way) => weighed(way, task)),
  );
  const [first] = ways;
  if (first === undefined) return { laid, fold: null };
  const opened = {
    ...figuresOf(layout.length, task),
    strokes: directionsFor({ laid, allowances: null, unit: quilt.unit }).effort.strokes,
  };
  const { way } = first;
  const chosen = quilt.onFold
    ? { folded: way.folded, open: way.open, directions: directionsOf(way.folded, 'fold', task) }
    : null;
  return {
    laid: chosen === null ? laid : { layout: way.layout, bound: laid.bound, boundKind: laid.boundKind },
    fold: { chosen, ways: ways.map(({ told }) => told), opened },
  };
};

/** Ends at hand may have taken some of the pieces. */
const demandsIn = ({ strips }: Layout, demands: readonly Demand[]): readonly Demand[] => {
  const counts = demands.map(() => 0);
  for (const { parts } of strips)
    for (const { pieces } of parts) for (const { of } of pieces) counts[of] = (counts[of] ?? 0) + 1;
  return demands.map((demand, i) => ({ ...demand, count: counts[i] ?? 0 }));
};

const figuresOf = (long: Length, { quilt, fabric }: FoldTask): Omit<FoldWay, 'strokes'> => {
  const { amount } = amountToBuy({ length: long, buying: quilt.buying, unit: quilt.unit });
  return { length: long, amount, cost: costOfCloth(fabric, amount) };
};

const directionsOf = (layout: Layout, end: RightEnd, { quilt }: FoldTask): ClothDirections =>
  directionsFor({ laid: laidAs(layout), allowances: null, unit: quilt.unit, end });

/** For directions, which do not ask how good a layout is. */
export const laidAs = (layout: Layout): LaidOut => ({ layout, bound: layout.length, boundKind: 'area' });

const weighed = (way: FoldedWay, task: FoldTask): Weighed => ({
  way,
  told: {
    ...figuresOf(way.layout.length, task),
    strokes: workOf([...directionsOf(way.folded, 'fold', task).parts, ...directionsOf(way.open, 'edge', task).parts])
      .strokes,
  },
});

const bestOf = (ways: readonly Weighed[]): readonly Weighed[] =>
  ways
    .toSorted(({ told: a }, { told: b }) => a.amount - b.amount || a.strokes - b.strokes || a.length - b.length)
    .filter(({ told }, i, all) => all.slice(0, i).every((before) => before.told.strokes > told.strokes));

/** One for each cloth that is cut on the fold. */
export const foldNotes = (quilt: Quilt, fabrics: readonly FabricPlan[]): readonly Note[] =>
  fabrics.flatMap(({ id, fold, buy }): readonly Note[] => {
    const [taken] = fold?.ways ?? [];
    if (!fold?.chosen || taken === undefined || buy.unit === 'sheets') return [];
    return [
      {
        code: 'cutting/on-fold',
        level: 'note',
        path: `/fabrics/${quilt.fabrics.findIndex((fabric) => fabric.id === id)}`,
        fabric: id,
        more: tidy(taken.length - fold.opened.length),
        bought: tidy(taken.amount - fold.opened.amount),
        unit: buy.unit,
        strokes: fold.opened.strokes - taken.strokes,
      },
    ];
  });
