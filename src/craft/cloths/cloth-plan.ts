// The cloths of a plan: everything cut from each, its layout with a bound, and what to buy.
import {
  allowancesFor,
  type ClothLine,
  type ClothNature,
  type CuttingProblem,
  type Demand,
  demandsOf,
  type Easing,
  type LaidOut,
  type LaidSheets,
  layoutBySteps,
  ledgerOf,
  onSmallerSheets,
  planLayout,
  planOnMotifs,
  purchaseFor,
  sheetsBySteps,
  shopStepFor,
} from '#craft/cutting';
import type { Fabric, Quilt } from '#craft/design';
import { directionsFor } from '#craft/directions';
import { lightnessOf, type Value, valuesOf } from '#craft/fabric';
import type { Length } from '#craft/measure';
import type { CostPlan, FabricPlan, PieceUse } from '#craft/plan';
import type { IntegerSolver, ShopStep } from '#craft/strips';
import { fromDecimal, sum, toNumber } from '#ground/exact';
import type { Recall } from '#ground/recall';
import { drained } from '#ground/search';
import { stockBought, stockOf } from './bought-as.ts';
import { noLongerThanApart } from './cloth-apart.ts';
import { costOfCloth, easingFor, ladderOf } from './cloth-ease.ts';
import { layWithEnds } from './cloth-ends.ts';
import { laidAs, layOnFold } from './cloth-fold.ts';
import type { Natures } from './natures.ts';
import type { WantedPiece } from './wanted-pieces.ts';

export interface ClothSearch {
  /** Steps of layout search a cloth; 0: level heuristics only. */
  readonly steps: number;
  readonly solver: IntegerSolver | null;
  /** Where only what has to be bought is of interest, and not how it is cut. */
  readonly until?: 'purchase';
  /** Of cloth by the length: a layout as short as this ends the search. */
  readonly enough?: Length;
  /** Cutting on the fold is looked into only where the document asks for it; else everywhere, for what it would cost and save. */
  readonly fold?: 'where-asked';
  /** Of layouts that were laid before. */
  readonly memory?: Recall;
}

/**
 * Hears of a cloth as often as a better layout of it or a better bound is found, and at last of the cloth as the plan has it. What is
 * heard before that is a whole cloth, cut as it lies, without the ladder and the fold.
 */
export type ClothWatch = (cloth: FabricPlan) => void;

export interface ClothsTask {
  readonly quilt: Quilt;
  readonly pieces: readonly WantedPiece[];
  readonly natures: Natures;
  readonly search: ClothSearch;
  /** None: every piece lies as it is listed. */
  readonly turning?: 'as-they-may' | 'none';
  readonly watch?: ClothWatch;
}

export interface ClothsPlanned {
  readonly fabrics: readonly FabricPlan[];
  readonly problems: readonly CuttingProblem[];
}

/** One entry per used cloth in the document's order, or every piece that does not fit its cloth. */
export const planCloths = (of: ClothsTask): ClothsPlanned => drained(clothsBySteps(of));

/** The same, for who has other things to do between the steps of the search. */
export function* clothsBySteps(of: ClothsTask): Generator<void, ClothsPlanned, void> {
  const { lines, problems } = ledgerOf(of.pieces, of.natures);
  if (problems.length > 0) return { fabrics: [], problems };
  const lightness = new Map(
    of.quilt.fabrics.flatMap(({ id, colour }) => (lines.has(id) ? [[id, lightnessOf(colour)] as const] : [])),
  );
  const values = valuesOf(lightness);
  const fabrics: FabricPlan[] = [];
  const short: CuttingProblem[] = [];
  for (const fabric of of.quilt.fabrics) {
    const own = lines.get(fabric.id);
    if (!own) continue;
    const isStill = of.turning === 'none' || fabric.turning === 'none';
    const { cloth, left } = yield* clothBySteps({
      ...of,
      fabric,
      lines: isStill ? own.map((line) => ({ ...line, mayTurn: false })) : own,
      nature: of.natures.get(fabric.id) as ClothNature,
      lightness: lightness.get(fabric.id) as number,
      value: values.get(fabric.id) as Value,
    });
    if (cloth !== null) fabrics.push(cloth);
    else short.push(stockShort({ quilt: of.quilt, fabric, lines: own, left }));
  }
  return { fabrics, problems: short };
}

interface ClothTask extends ClothFacts {
  readonly nature: ClothNature;
  readonly search: ClothSearch;
  readonly watch?: ClothWatch;
}

/** No cloth where what it comes in does not hold all of it. */
function* clothBySteps(
  task: ClothTask,
): Generator<void, { readonly cloth: FabricPlan | null; readonly left: LaidSheets['left'] }, void> {
  const { quilt, fabric, nature, lines, search, watch } = task;
  // the least work at a length is no other purchase
  const isEased = search.until !== 'purchase' || quilt.layout === 'easy';
  const laying = { nature, search, shop: shopStepFor(quilt), ...(isEased ? { easing: easingFor(quilt) } : {}) };
  const lay = (demands: readonly Demand[]): FabricPlan['laid'] => layDemands({ ...laying, demands });
  const isTold = watch !== undefined && isLaidAtOnce(quilt, fabric);
  const together = yield* laidBySteps({
    ...laying,
    demands: demandsOf(lines),
    ...(isTold ? { tell: (laid) => watch(clothLaid({ ...task, laid, ends: null, fold: null, motifs: null })) } : {}),
  });
  // an easy layout may be longer, and says so
  const whole =
    quilt.layout === 'easy' || (search.until === 'purchase' && isBoughtLeast(quilt, together))
      ? together
      : yield* noLongerThanApart({
          laid: together,
          lines,
          lay: (demands) => laidBySteps({ nature, demands, search }),
        });
  if ('sheets' in whole && whole.left.length > 0) return { cloth: null, left: whole.left };
  const { laid: unfolded, ends } = withEnds({ ...task, whole, lay, steps: search.steps });
  yield;
  const { laid, fold } = onFold({ ...task, laid: unfolded });
  const motifs = motifsIn(whole, () => lay(demandsOf(lines).map((demand) => ({ ...demand, motif: false }))));
  const cloth = clothLaid({ ...task, laid, ends, fold, motifs });
  watch?.(cloth);
  return { cloth, left: [] };
}

/** Whether what is laid is what is cut: nothing on ends at hand, nothing folded, no longer layout for less work. */
const isLaidAtOnce = ({ layout, onFold }: Quilt, { ends }: Fabric): boolean =>
  layout !== 'easy' && !onFold && ends.length === 0;

interface ClothFacts {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly lines: readonly ClothLine<Omit<PieceUse, 'count'>>[];
  readonly lightness: number;
  readonly value: Value;
}

const clothLaid = (of: ClothFacts & Pick<FabricPlan, 'laid' | 'ends' | 'fold' | 'motifs'>): FabricPlan => {
  const { quilt, fabric, laid, fold } = of;
  const bought = boughtFor({ quilt, fabric, laid });
  return {
    id: fabric.id,
    lightness: of.lightness,
    value: of.value,
    pieces: of.lines.map(clothPiece),
    laid,
    ends: of.ends,
    fold,
    motifs: of.motifs,
    ...bought,
    ladder: ladderOf(quilt, fabric, laid),
    directions: directionsFor({
      laid: fold?.chosen ? laidAs(fold.chosen.open) : laid,
      allowances: bought.allowances,
      unit: quilt.unit,
    }),
  };
};

const isBoughtLeast = ({ buying, unit }: Quilt, laid: FabricPlan['laid']): boolean =>
  purchaseFor({ laid, buying, unit }).proven;

const withEnds = (of: {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly nature: ClothNature;
  readonly whole: FabricPlan['laid'];
  readonly lay: (demands: readonly Demand[]) => FabricPlan['laid'];
  readonly lines: readonly ClothLine<object>[];
  readonly steps: number;
}): Pick<FabricPlan, 'laid' | 'ends'> => {
  const { whole, lay } = of;
  if ('sheets' in whole) return { laid: whole, ends: null };
  const byLength = (demands: readonly Demand[]): LaidOut => {
    const laid = lay(demands);
    return 'sheets' in laid ? whole : laid;
  };
  return (
    layWithEnds({ ...of, laid: whole, demands: demandsOf(of.lines), lay: byLength }) ?? { laid: whole, ends: null }
  );
};

/** Whether or not it is asked for, what it costs and saves is told; searched hard only where it is. */
const onFold = (of: {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly nature: ClothNature;
  readonly lines: readonly ClothLine<object>[];
  readonly laid: FabricPlan['laid'];
  readonly search: ClothSearch;
}): Pick<FabricPlan, 'laid' | 'fold'> => {
  const { laid, quilt } = of;
  // a motif is looked for with the cloth opened
  if ('sheets' in laid || laid.motifs !== undefined) return { laid, fold: null };
  const isAsked = of.search.until !== 'purchase' && of.search.fold !== 'where-asked';
  if (!isAsked && !quilt.onFold) return { laid, fold: null };
  const search = quilt.onFold ? of.search : { steps: Math.min(2, of.search.steps), solver: null };
  return layOnFold({
    ...of,
    laid,
    lay: (width, demands) => layDemands({ nature: { ...of.nature, width }, demands, search }).layout,
  });
};

const boughtFor = (of: {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly laid: FabricPlan['laid'];
}): Pick<FabricPlan, 'buy' | 'parts' | 'allowances' | 'cost'> => {
  const { laid, fabric } = of;
  const { buying, unit } = of.quilt;
  if ('sheets' in laid && stockOf(fabric, of.quilt) !== undefined)
    return { ...stockBought(laid, { fabric, buying, unit }), allowances: null };
  const buy = purchaseFor({ laid, buying, unit });
  return {
    buy,
    parts: null,
    allowances: allowancesFor({ laid, buying, unit }),
    cost: costOfCloth(fabric, buy.amount),
  };
};

/** The same layout bought another way: in other steps, with other ends, shrinking otherwise. */
export const clothBought = (quilt: Quilt, cloth: FabricPlan): FabricPlan => {
  const fabric = quilt.fabrics.find(({ id }) => id === cloth.id);
  if (fabric === undefined) throw new Error(`a plan of a cloth that its quilt lacks: ${cloth.id}`);
  const { laid } = cloth;
  return { ...cloth, ...boughtFor({ quilt, fabric, laid }), ladder: ladderOf(quilt, fabric, laid) };
};

const motifsIn = (laid: FabricPlan['laid'], anywhere: () => FabricPlan['laid']): FabricPlan['motifs'] =>
  'sheets' in laid || laid.motifs === undefined
    ? null
    : { pieces: laid.motifs.pieces, centred: laid.layout.length, anywhere: anywhere().layout.length };

const stockShort = (of: {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly lines: readonly ClothLine<object>[];
  readonly left: LaidSheets['left'];
}): CuttingProblem => ({
  code: 'cutting/stock-short',
  path: `/fabrics/${of.quilt.fabrics.indexOf(of.fabric)}/bought`,
  fabric: of.fabric.id,
  left: of.left.map(({ of: line, count }) => ({ cut: (of.lines[line] as ClothLine<object>).cut, count })),
});

interface Laying {
  readonly nature: ClothNature;
  readonly demands: readonly Demand[];
  readonly search: ClothSearch;
  /** On cloth by the length. */
  readonly easing?: Easing;
  readonly shop?: ShopStep;
  readonly tell?: (laid: LaidOut) => void;
}

/** As bought: on cloth by the length, on sheets, or on what it comes in, which may leave pieces over. */
export const laidFor = (
  of: Omit<Laying, 'demands'> & { readonly lines: readonly ClothLine<object>[] },
): FabricPlan['laid'] => layDemands({ ...of, demands: demandsOf(of.lines) });

export const layDemands = (task: Laying): FabricPlan['laid'] => drained(laidBySteps(task));

function* laidBySteps(task: Laying): Generator<void, FabricPlan['laid'], void> {
  const { memory, fold: _, ...search } = task.search;
  if (memory === undefined || search.solver !== null || task.tell !== undefined) return yield* layAnew(task);
  const { nature, demands, easing, shop } = task;
  // what the easing finds within is told by the shop's steps
  const name = JSON.stringify(['laid', nature, demands, easing?.choice, shop, search]);
  return memory.recall(name, () => drained(layAnew(task)));
}

function* layAnew({ nature, search, demands, easing, shop, tell }: Laying): Generator<void, FabricPlan['laid'], void> {
  const { solver, memory: _, fold: __, ...budget } = search;
  const how = { demands, budget, ...(solver ? { solver } : {}) };
  if (nature.stock !== undefined)
    return onSmallerSheets(yield* sheetsBySteps({ sheets: nature.stock, ...how }), nature.stock);
  const { repeat } = nature;
  if (repeat !== undefined && demands.some(({ motif, count }) => motif && count > 0)) {
    const lay = (rest: readonly Demand[]): LaidOut => planLayout({ width: nature.width, ...how, demands: rest });
    return planOnMotifs({ width: nature.width, demands, repeat, lay });
  }
  return nature.length === null
    ? yield* layoutBySteps({
        width: nature.width,
        ...how,
        ...(easing ? { easing } : {}),
        ...(shop ? { shop } : {}),
        ...(tell ? { tell } : {}),
      })
    : yield* sheetsBySteps({ sheets: [{ size: [nature.width, nature.length], cost: 1, stock: null }], ...how });
}

export const planCost = (quilt: Quilt, fabrics: readonly FabricPlan[]): CostPlan => {
  const priced = fabrics.flatMap(({ cost }) => (cost === null ? [] : [fromDecimal(cost)]));
  return {
    total: priced.length === 0 ? null : toNumber(sum(priced)),
    currency: quilt.currency,
    unpriced: fabrics.filter(({ cost }) => cost === null).map(({ id }) => id),
  };
};

const clothPiece = (line: ClothLine<Omit<PieceUse, 'count'>>): FabricPlan['pieces'][number] => ({
  cut: line.cut,
  shape: line.shape,
  count: line.count,
  mayTurn: line.mayTurn,
  gives: line.gives,
  diagonal: line.diagonal,
  way: line.way,
  outlines: line.outlines,
  ...(line.motif ? { motif: true } : {}),
  for: line.uses,
});
