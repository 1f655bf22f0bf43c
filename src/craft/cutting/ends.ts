// A cloth is bought by the length and ends of it are at hand: which pieces go on the ends so that less is bought?
import { type Length, length, tidy } from '#craft/measure';
import type { ClothSheet, Demand, LaidOut, LaidSheets, Strip } from './cloth.ts';
import type { LayoutBudget } from './layout.ts';
import { planSheets } from './sheets.ts';

export interface EndsTask {
  readonly width: Length;
  readonly demands: readonly Demand[];
  /** At hand: size and number of each kind. */
  readonly ends: readonly ClothSheet[];
  /** All pieces on cloth by the length. */
  readonly without: LaidOut;
  /** Pieces on cloth by the length, as it is laid elsewhere. */
  readonly lay: (demands: readonly Demand[]) => LaidOut;
  /** What the shop is asked for, for a layout of this length; nothing for none. */
  readonly purchase: (length: Length) => number;
  readonly budget: LayoutBudget;
}

export interface LaidWithEnds {
  /** On what is bought. */
  readonly laid: LaidOut;
  /** On the ends; none are used where they would not save a step of the shop. */
  readonly onEnds: LaidSheets;
}

/**
 * The smallest purchase found; of equal ones that with fewest ends. Ends are tried in their order by area, one more each time, filled
 * with whatever fits, or with the pieces of whole strips of the layout without them, the emptiest strips first.
 *
 * @returns null where no end saves a step. `bound` of the layout holds for every choice of pieces for the ends
 * @source docs/formulas.md#ends
 */
export const planWithEnds = (task: EndsTask): LaidWithEnds | null => {
  const bound = boundOf(task);
  const least = task.purchase(length(Math.max(0, bound)));
  let best: { readonly found: LaidWithEnds; readonly bought: number } | null = null;
  const bought = ({ laid }: LaidWithEnds): number => task.purchase(laid.layout.length);
  const before = task.purchase(task.without.layout.length);
  for (const ends of moreAndMore(task.ends)) {
    for (const found of [withStrips({ ...task, ends }), withAny({ ...task, ends })]) {
      if (found === null || bought(found) >= (best?.bought ?? before) - 1e-9) continue;
      best = { found, bought: bought(found) };
      if (best.bought <= least + 1e-9) break;
    }
    if (best !== null && best.bought <= least + 1e-9) break;
  }
  if (best === null) return null;
  const { laid, onEnds } = best.found;
  return { laid: { ...laid, bound: length(Math.min(bound, laid.layout.length)), boundKind: 'area' }, onEnds };
};

/** Sets of ends tried, each a few more than the one before; our own figure. */
const mostSets = 6;

/** Largest ends first; all kinds stay in the list, so that an end is known by its place. */
const moreAndMore = (ends: readonly ClothSheet[]): readonly (readonly ClothSheet[])[] => {
  const order = ends
    .flatMap((end, kind) => Array.from({ length: end.stock ?? 0 }, () => ({ kind, area: end.size[0] * end.size[1] })))
    .toSorted((a, b) => b.area - a.area || a.kind - b.kind);
  const sizes = [
    ...new Set(Array.from({ length: mostSets }, (_, i) => Math.ceil(((i + 1) * order.length) / mostSets))),
  ];
  return sizes.map((size) => {
    const taken = order.slice(0, size);
    return ends.map((end, kind) => ({ ...end, stock: taken.filter((one) => one.kind === kind).length }));
  });
};

const onEnds = (task: EndsTask, demands: readonly Demand[]): LaidSheets | null => {
  const kinds = task.ends.filter(({ stock }) => stock !== 0);
  const fitting = demands.map((demand) => (kinds.some((end) => fits(demand, end)) ? demand : { ...demand, count: 0 }));
  if (fitting.every(({ count }) => count === 0)) return null;
  return planSheets({ sheets: task.ends, demands: fitting, budget: { steps: Math.min(2, task.budget.steps) } });
};

/** Where the motifs of an end lie is not known. */
const fits = ({ across, along, mayTurn, motif }: Demand, { size }: ClothSheet): boolean =>
  !motif &&
  ((across <= size[0] + 1e-9 && along <= size[1] + 1e-9) ||
    (mayTurn && along <= size[0] + 1e-9 && across <= size[1] + 1e-9));

const without = (demands: readonly Demand[], laid: LaidSheets): readonly Demand[] => {
  const counts = countsIn(
    laid.sheets.flatMap(({ strips }) => strips),
    demands.length,
  );
  return demands.map((demand, i) => ({ ...demand, count: demand.count - (counts[i] ?? 0) }));
};

const countsIn = (strips: readonly Strip[], demands: number): readonly number[] => {
  const counts = new Array<number>(demands).fill(0);
  for (const { parts } of strips)
    for (const { pieces } of parts) for (const { of } of pieces) counts[of] = (counts[of] ?? 0) + 1;
  return counts;
};

/** Whatever fits goes on the ends, the rest is laid anew. */
const withAny = (task: EndsTask): LaidWithEnds | null => {
  const laid = onEnds(task, task.demands);
  if (laid === null) return null;
  return { laid: task.lay(without(task.demands, laid)), onEnds: laid };
};

/** As many whole strips as the ends hold, the emptiest first: what stays is no longer than it was. */
const withStrips = (task: EndsTask): LaidWithEnds | null => {
  const order = emptiestFirst(task.without.layout.strips, task.width);
  const room = task.ends.reduce((sum, { size, stock }) => sum + size[0] * size[1] * (stock ?? 0), 0);
  let held: { readonly laid: LaidSheets; readonly taken: number } | null = null;
  let tries = 0;
  for (let taken = 1; taken <= order.length && tries < mostTries; taken++) {
    const counts = countsIn(order.slice(0, taken), task.demands.length);
    const demands = task.demands.map((demand, i) => ({ ...demand, count: counts[i] ?? 0 }));
    if (demands.reduce((sum, { across, along, count }) => sum + across * along * count, 0) > room + 1e-9) break;
    const kinds = task.ends.filter(({ stock }) => stock !== 0);
    if (demands.some((demand) => demand.count > 0 && !kinds.some((end) => fits(demand, end)))) continue;
    tries++;
    const laid = onEnds(task, demands);
    if (laid !== null && laid.left.length === 0) held = { laid, taken };
  }
  if (held === null) return null;
  const kept = new Set(order.slice(held.taken));
  const anew = task.lay(without(task.demands, held.laid));
  const strips = stacked(task.without.layout.strips.filter((strip) => kept.has(strip)));
  const end = strips.at(-1);
  const long = tidy(end === undefined ? 0 : end.at + end.height);
  const same: LaidOut = { layout: { width: task.width, length: long, strips }, bound: long, boundKind: 'area' };
  return { laid: anew.layout.length <= long + 1e-9 ? anew : same, onEnds: held.laid };
};

/** Our own figure. */
const mostTries = 12;

const emptiestFirst = (strips: readonly Strip[], width: Length): readonly Strip[] => {
  const share = ({ parts, height }: Strip): number =>
    parts.reduce((all, { pieces }) => all + pieces.reduce((sum, { cut }) => sum + cut[0] * cut[1], 0), 0) /
    (height * width);
  return strips
    .map((strip, i) => ({ strip, i, share: share(strip) }))
    .toSorted((a, b) => a.share - b.share || b.i - a.i)
    .map(({ strip }) => strip);
};

const stacked = (strips: readonly Strip[]): readonly Strip[] => {
  let at = 0;
  return strips.map((strip) => {
    const placed = { ...strip, at: tidy(at) };
    at += strip.height;
    return placed;
  });
};

/** The area that the ends cannot take, over the width; and what fits no end must lie on the cloth. */
const boundOf = (task: EndsTask): number => {
  const area = (demands: readonly Demand[]): number =>
    demands.reduce((sum, { across, along, count }) => sum + across * along * count, 0);
  const room = task.ends.reduce((sum, { size, stock }) => sum + size[0] * size[1] * (stock ?? 0), 0);
  const unfit = task.demands.map((demand) =>
    task.ends.some((end) => fits(demand, end)) ? { ...demand, count: 0 } : demand,
  );
  const alone = unfit.some(({ count }) => count > 0) ? task.lay(unfit).bound : 0;
  return Math.max(alone, (area(task.demands) - room) / task.width);
};
