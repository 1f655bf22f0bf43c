// What would move the purchase of a cloth: a wider or narrower cloth, pieces that keep their grain, a print that may lie any
// way, ends cut straight, washing first, sheets in place of a length? Each is laid out anew; only what moves the purchase is told.

import { type FabricPlan, type QuiltPlan, type Recutting, recut } from '#craft';
import { type ClothPurchase, lengthHeld, purchaseFor } from '#craft/cutting';
import type { Fabric, Quilt } from '#craft/design';
import { convert, type Length, length, type Unit } from '#craft/measure';
import type { IntegerSolver } from '#craft/strips';
import { add, compare, type Rational, rational, sub, toNumber, zero } from '#ground/exact';

export type Change =
  /** The cloth is so wide between its selvages. */
  | { readonly code: 'shopping/usable-width'; readonly width: Length }
  /** Every piece lies as it is listed, none the other way round. */
  | { readonly code: 'shopping/no-turning' }
  /** The print may lie any way. */
  | { readonly code: 'shopping/any-way' }
  /** Nothing is lost to squaring up. */
  | { readonly code: 'shopping/straight-ends' }
  /** The cloth shrinks by that share. */
  | { readonly code: 'shopping/shrinkage'; readonly share: number }
  | { readonly code: 'shopping/in-fat-quarters' }
  /** By the length, so wide. */
  | { readonly code: 'shopping/by-length'; readonly width: Length };

export type PurchaseChange = Change & {
  readonly fabric: string;
  readonly before: ClothPurchase;
  /** `proven`: no layout under the change does with less. */
  readonly after: ClothPurchase;
  /** After less before; null where the one is a length and the other sheets. */
  readonly difference: number | null;
};

export interface ChangesTask {
  readonly plan: QuiltPlan;
  /** As the plan was searched: what comes out dearer is looked for again that hard. */
  readonly search: { readonly steps: number; readonly solver: IntegerSolver | null };
}

/** Steps of search for every change, before one that costs cloth is looked for as hard as the plan was. Our own figure. */
const quickSteps = 6;

/**
 * Of all cloths, in the plan's order; of one cloth the largest difference first. None of a cloth that comes in pieces which
 * the document names.
 *
 * What a wider cloth, leave to turn or a print without an upright would need is never more than what the plan needs: it
 * can be cut as the plan says. A saving is a layout that was found; a cost is one too, and the least where it is proven.
 */
export const purchaseChanges = ({ plan, search }: ChangesTask): readonly PurchaseChange[] =>
  // what a maker says a cloth comes in is not sold otherwise, and ends at hand would have to be laid anew each time
  plan.fabrics.flatMap((cloth) =>
    cloth.parts === null && cloth.ends === null && !cloth.fold?.chosen ? changesOf(cloth, { plan, search }) : [],
  );

interface Trial {
  readonly change: Change;
  readonly as?: Recutting['as'];
  readonly turning?: Recutting['turning'];
  /** What may come out: what the plan does can be done on a wider cloth, and what is done on a narrower one in the plan. */
  readonly way: 'no-more' | 'no-less' | 'either';
}

const changesOf = (cloth: FabricPlan, task: ChangesTask): readonly PurchaseChange[] => {
  const { quilt } = task.plan;
  const fabric = quilt.fabrics.find(({ id }) => id === cloth.id) as Fabric;
  if (fabric.bought.kind !== 'yardage' && fabric.bought.kind !== 'sheets') return [];
  const tried = [
    ...widthChanges(cloth, fabric, task),
    ...layoutTrials(cloth, fabric, quilt.unit).flatMap((trial) => changed(cloth, trial, task)),
    ...buyingChanges(cloth, quilt),
  ];
  return tried.toSorted((a, b) => Math.abs(b.difference ?? 0) - Math.abs(a.difference ?? 0));
};

/** Usable widths that cloth is commonly reckoned with, and the step either side of the document's. Common practice, no source. */
const usual: Readonly<Record<Unit, { readonly widths: readonly Rational[]; readonly step: Rational }>> = {
  in: { widths: [rational(40), rational(42)], step: rational(1) },
  cm: { widths: [rational(1016, 10), rational(1067, 10)], step: rational(5, 2) },
};

/** From the narrowest up, so that a wider cloth takes no more than a narrower one is known to. */
const widthChanges = (cloth: FabricPlan, fabric: Fabric, task: ChangesTask): readonly PurchaseChange[] => {
  if (fabric.bought.kind !== 'yardage') return [];
  const own = fabric.usableWidth;
  const { widths, step } = usual[task.plan.quilt.unit];
  const asked = [...widths, sub(own, step), add(own, step)]
    .filter((width) => compare(width, zero) > 0 && compare(width, own) !== 0)
    .toSorted(compare)
    .filter((width, i, all) => i === 0 || compare(width, all[i - 1] as Rational) !== 0);
  let known: ClothPurchase | null = null;
  return asked.flatMap((width): readonly PurchaseChange[] => {
    const way = compare(width, own) > 0 ? 'no-more' : 'no-less';
    const trial: Trial = {
      change: { code: 'shopping/usable-width', width: length(toNumber(width)) },
      as: { usableWidth: width },
      way,
    };
    const found = purchaseUnder(cloth, trial, task);
    const after: ClothPurchase | null = found && known && known.amount < found.amount ? known : found;
    if (after === null) return [];
    known = after;
    return moved(cloth, trial.change, after);
  });
};

const layoutTrials = (cloth: FabricPlan, fabric: Fabric, unit: Unit): readonly Trial[] => {
  const byLength = fabric.bought.kind === 'yardage';
  const [width] = usual[unit].widths;
  const quarter = { kind: 'sheets', name: 'fat-quarter', size: fatQuarter(unit) } as const;
  return [
    ...(fabric.turning === 'none'
      ? []
      : [{ change: { code: 'shopping/no-turning' }, turning: 'none', way: 'no-less' } as const]),
    ...(fabric.print === 'none'
      ? []
      : [{ change: { code: 'shopping/any-way' }, as: { print: 'none' }, way: 'no-more' } as const]),
    ...(byLength
      ? // where the motifs of a sheet lie is not known
        cloth.motifs !== null
        ? []
        : [
            {
              change: { code: 'shopping/in-fat-quarters' },
              as: { bought: quarter, usableWidth: quarter.size[0] },
              way: 'either',
            } as const,
          ]
      : [
          {
            change: { code: 'shopping/by-length', width: length(toNumber(width as Rational)) },
            as: { bought: { kind: 'yardage' }, usableWidth: width as Rational },
            way: 'either',
          } as const,
        ]),
  ];
};

/** Usable, across and along, as docs/document.md has it. */
const fatQuarter = (unit: Unit): readonly [Rational, Rational] => [
  convert(rational(35, 2), { from: 'in', to: unit }),
  convert(rational(41, 2), { from: 'in', to: unit }),
];

const changed = (cloth: FabricPlan, trial: Trial, task: ChangesTask): readonly PurchaseChange[] => {
  const after = purchaseUnder(cloth, trial, task);
  return after === null ? [] : moved(cloth, trial.change, after);
};

/** Null where a piece then has no room. */
const purchaseUnder = (cloth: FabricPlan, trial: Trial, { plan, search }: ChangesTask): ClothPurchase | null => {
  const quickly = { steps: Math.min(quickSteps, search.steps), solver: null, ...enoughFor(cloth, trial, plan) };
  const quick = purchaseAs(cloth, trial, { plan, search: quickly });
  if (quick === null) return null;
  if (trial.way === 'either') return quick;
  if (quick.amount <= cloth.buy.amount) return trial.way === 'no-less' ? cloth.buy : quick;
  if (trial.way === 'no-more') return cloth.buy;
  return quick.proven ? quick : purchaseAs(cloth, trial, { plan, search });
};

/** Where no less can come out, a layout that the same purchase holds is as good as any. */
const enoughFor = ({ buy }: FabricPlan, { way }: Trial, { quilt }: QuiltPlan): Pick<Recutting['search'], 'enough'> =>
  way === 'no-less' && buy.unit !== 'sheets'
    ? { enough: lengthHeld({ bought: { ...buy, unit: buy.unit }, steps: 0, ...quilt }) }
    : {};

const purchaseAs = (
  cloth: FabricPlan,
  trial: Trial,
  { plan, search }: { readonly plan: QuiltPlan; readonly search: Recutting['search'] },
): ClothPurchase | null => {
  const { as = {}, turning = 'as-they-may' } = trial;
  return recut({ plan, fabric: cloth.id, as, turning, search: { ...search, until: 'purchase' } })?.buy ?? null;
};

/** How much cloth is commonly said to shrink in the wash: common practice, no source. */
const usualShrinkage = rational(5, 100);

/** What needs no new layout. */
const buyingChanges = (cloth: FabricPlan, { buying, unit }: Quilt): readonly PurchaseChange[] => {
  const { laid } = cloth;
  if ('sheets' in laid) return [];
  const shrinkage = compare(buying.shrinkage, zero) > 0 ? zero : usualShrinkage;
  return [
    ...moved(
      cloth,
      { code: 'shopping/shrinkage', share: toNumber(shrinkage) },
      purchaseFor({ laid, buying: { ...buying, shrinkage }, unit }),
    ),
    ...moved(
      cloth,
      { code: 'shopping/straight-ends' },
      purchaseFor({ laid, buying: { ...buying, squaring: zero }, unit }),
    ),
  ];
};

const moved = (cloth: FabricPlan, change: Change, after: ClothPurchase): readonly PurchaseChange[] => {
  const before = cloth.buy;
  if (before.unit !== after.unit) return [{ ...change, fabric: cloth.id, before, after, difference: null }];
  // amounts are whole steps: a billionth is no difference
  const difference = Math.round((after.amount - before.amount) * 1e9) / 1e9;
  return difference === 0 ? [] : [{ ...change, fabric: cloth.id, before, after, difference }];
};
