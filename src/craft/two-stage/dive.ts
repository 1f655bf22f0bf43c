// A whole layout from the linear program: strips that it takes whole are cut, then the strip whose cutting costs the rest
// least, and the program is solved again for the pieces left, until none is. Where that ends too long, the next best
// strip is taken instead, as often as is allowed.
import type { Chance } from '#ground/chance';
import { type Column, type ColumnUse, heightAt, lengthOfUses, takeFrom, timesWithin } from './column.ts';
import { askByWidth } from './level-bounds.ts';
import { copyOf, type Master, type Relaxed, setCeiling, setFloor, setLeft, solveByColumns } from './master.ts';

export interface DiveOrder {
  /** Not changed; must have been solved. */
  readonly master: Master;
  /** A layout longer than this is of no use. */
  readonly cutoff: number;
  /** How many strips are tried out at each choice. */
  readonly tries: number;
  /** Choices at most, those after turning back included. Without turning back there is one for each strip. */
  readonly choices: number;
  /** Chance from 0 to 1 added to each strip's share before the largest are tried; none when absent. */
  readonly chance?: Chance;
}

interface Place {
  readonly master: Master;
  readonly left: Int32Array;
  readonly uses: readonly ColumnUse[];
  readonly length: number;
}

/** @returns a layout no longer than the cutoff, or null; yields between choices */
export function* dive(order: DiveOrder): Generator<void, readonly ColumnUse[] | null, void> {
  const master = copyOf(order.master);
  setLeft(master, master.left);
  return yield* diveFrom(order, { master, left: master.left.slice(), uses: [], length: 0 }, { choices: order.choices });
}

function* diveFrom(
  order: DiveOrder,
  from: Place,
  left: { choices: number },
): Generator<void, readonly ColumnUse[] | null, void> {
  const place = yield* withWholeParts(order, from);
  if (place === null) return null;
  if (place.left.every((n) => n === 0)) return place.uses;
  left.choices--;
  yield;
  for (const next of yield* nextPlaces(order, place)) {
    if (next.left.every((n) => n === 0)) return next.uses;
    const found = yield* diveFrom(order, next, left);
    if (found !== null || left.choices <= 0) return found;
  }
  return null;
}

/** Solves, and cuts what the program takes whole, until it takes nothing whole; null when it ends too long. */
function* withWholeParts(order: DiveOrder, from: Place): Generator<void, Place | null, void> {
  const { master } = from;
  const rest = from.left.slice();
  let { length } = from;
  const uses = [...from.uses];
  for (;;) {
    const cutoff = order.cutoff - length + 1e-6;
    const relaxed = yield* solveLeft(master, { rounds: 12, cutoff });
    if (relaxed.status === 'infeasible' || relaxed.bound > cutoff) return null;
    const whole = wholeParts(master, rest);
    if (whole.length === 0) return { master, left: rest, uses, length };
    uses.push(...whole);
    length += lengthOfUses(master.task, whole);
    for (const { column, times } of whole) {
      takeFrom(rest, column, times);
      lessStrips(master, column, times);
    }
    if (rest.every((n) => n === 0)) return length > order.cutoff ? null : { master, left: rest, uses, length };
    setLeft(master, rest);
  }
}

/** Solves for the pieces left, with the strips that their widths ask for. */
function* solveLeft(
  master: Master,
  { rounds, cutoff }: { readonly rounds: number; readonly cutoff: number },
): Generator<void, Relaxed, void> {
  const slow = master.task.kinds > slowKinds;
  for (let left = rounds; ; ) {
    const relaxed = solveByColumns(master, { rounds: slow ? Math.min(slowRounds, left) : left, cutoff });
    if (slow) yield;
    if (relaxed.status === 'infeasible' || relaxed.bound > cutoff) return relaxed;
    left -= slowRounds;
    if (slow && relaxed.status === 'cut' && left > 0) continue;
    if (!askByWidth(master)) return relaxed;
    left = rounds;
  }
}

/** With so many kinds one program takes as long as a whole choice with few, and a step is to be short. */
const slowKinds = 50;
const slowRounds = 3;

/** Strips of which the program takes one or more. Together they hold no more than is needed. */
const wholeParts = (master: Master, left: Int32Array): ColumnUse[] => {
  const rest = left.slice();
  const whole: ColumnUse[] = [];
  for (const [c, x] of master.lp.support()) {
    const column = master.columns[c] as Column;
    const times = Math.min(Math.floor(x + 1e-6), timesWithin(column, rest));
    if (times <= 0) continue;
    takeFrom(rest, column, times);
    whole.push({ column, times });
  }
  return whole;
};

/** What was cut counts toward the strips that levels ask for. */
const lessStrips = (master: Master, column: Column, times: number): void => {
  for (let k = 0; k <= column.level; k++) {
    if ((master.floorRow[k] as number) >= 0) setFloor(master, k, Math.max(0, (master.floors[k] as number) - times));
    if ((master.ceilingRow[k] as number) >= 0) setCeiling(master, k, (master.ceilings[k] as number) - times);
  }
};

/** One strip more, cheapest with the rest first. */
function* nextPlaces(order: DiveOrder, { master, left, uses, length }: Place): Generator<void, readonly Place[], void> {
  const { chance } = order;
  const ranked = master.lp
    .support()
    .map(([c, x]) => ({ column: master.columns[c] as Column, standing: x + (chance === undefined ? 0 : chance()) }))
    .filter(({ column }) => timesWithin(column, left) >= 1)
    .sort((a, b) => b.standing - a.standing)
    .slice(0, order.tries);
  const places: { readonly place: Place; readonly cost: number }[] = [];
  for (const { column } of ranked) {
    const trial = copyOf(master);
    const rest = left.slice();
    takeFrom(rest, column, 1);
    lessStrips(trial, column, 1);
    const reached = length + heightAt(trial.task, column);
    const place = { master: trial, left: rest, uses: [...uses, { column, times: 1 }], length: reached };
    if (rest.every((n) => n === 0)) {
      if (reached <= order.cutoff) places.push({ place, cost: reached });
      continue;
    }
    setLeft(trial, rest);
    const relaxed = yield* solveLeft(trial, { rounds: 3, cutoff: order.cutoff - reached + 1e-6 });
    if (relaxed.status === 'infeasible' || reached + relaxed.bound > order.cutoff + 1e-6) continue;
    places.push({ place, cost: reached + relaxed.value });
  }
  return places.sort((a, b) => a.cost - b.cost).map(({ place }) => place);
}
