// The linear program over strips: the least length when strips may be cut in fractions. Strips are added as prices ask for
// them; rows on the number of strips of a level or higher carry what is known of whole strips.
import { type LinearProgram, linearProgramFor } from '#ground/search';
import { type Column, heightAt } from './column.ts';
import { type Pricer, pricerFor } from './pricing.ts';
import type { Task } from './task.ts';

/** A program in the course of being solved; `copyOf` one to try something out. */
export interface Master {
  readonly task: Task;
  readonly pricer: Pricer;
  readonly lp: LinearProgram;
  /** By their number in the program. */
  readonly columns: Column[];
  /** Pieces still needed of each kind: the needs of the first rows, and what a new strip may hold at most. */
  readonly left: Int32Array;
  /** Row on "at least so many strips of this level or higher", -1 where there is none; and its need. */
  readonly floorRow: Int32Array;
  readonly floors: Float64Array;
  /** The same for "at most so many". */
  readonly ceilingRow: Int32Array;
  readonly ceilings: Float64Array;
}

/** No limit: as many strips as ever. */
export const manyStrips = 1e6;

/** Stands in for strips not yet known, so that limits on their number cannot be missed for lack of them. It is no strip. */
const stopgapLevel = -1;

/** Starts with one strip for each piece, so that every need can be met. */
export const masterFor = (task: Task, left: Int32Array = task.demand): Master => {
  const levels = task.heights.length;
  const master: Master = {
    task,
    pricer: pricerFor(task),
    lp: linearProgramFor(left),
    columns: [],
    left: left.slice(),
    floorRow: new Int32Array(levels).fill(-1),
    floors: new Float64Array(levels),
    ceilingRow: new Int32Array(levels).fill(-1),
    ceilings: new Float64Array(levels).fill(manyStrips),
  };
  for (let kind = 0; kind < task.kinds; kind++) {
    if (left[kind] === 0) continue;
    const level = task.lowest[kind] as number;
    addColumn(master, { level, kinds: [kind], counts: [1] });
  }
  return master;
};

export const copyOf = (master: Master): Master => ({
  ...master,
  lp: master.lp.copy(),
  columns: master.columns.slice(),
  left: master.left.slice(),
  floorRow: master.floorRow.slice(),
  floors: master.floors.slice(),
  ceilingRow: master.ceilingRow.slice(),
  ceilings: master.ceilings.slice(),
});

export const addColumn = (master: Master, column: Column): number => {
  const rows = [...column.kinds];
  const factors = [...column.counts];
  for (let k = 0; k <= column.level; k++) {
    const floor = master.floorRow[k] as number;
    const ceiling = master.ceilingRow[k] as number;
    if (floor >= 0) {
      rows.push(floor);
      factors.push(1);
    }
    if (ceiling >= 0) {
      rows.push(ceiling);
      factors.push(-1);
    }
  }
  master.columns.push(column);
  return master.lp.addColumn(heightAt(master.task, column), rows, factors);
};

/**
 * Lets the program meet every row at a price that no layout has. Barred as soon as pieces are cut: it holds more than is left.
 *
 * @param cost above every length of interest
 */
export const addStopgap = (master: Master, cost: number): void => {
  const kinds = [...master.left.keys()];
  const rows = [...kinds];
  const factors = Array.from(master.left);
  for (const row of master.floorRow) {
    if (row < 0) continue;
    rows.push(row);
    factors.push(1);
  }
  master.columns.push({ level: stopgapLevel, kinds, counts: factors.slice(0, kinds.length).map((n) => n + 1) });
  master.lp.addColumn(cost, rows, factors);
};

const floorFactor = (column: Column, level: number): number =>
  column.level >= level || column.level === stopgapLevel ? 1 : 0;

/** Asks for at least so many strips of this level or higher. */
export const setFloor = (master: Master, level: number, strips: number): void => {
  master.floors[level] = strips;
  const row = master.floorRow[level] as number;
  if (row >= 0) master.lp.setLeast(row, strips);
  else if (strips > 0)
    master.floorRow[level] = master.lp.addRow(strips, (c) => floorFactor(master.columns[c] as Column, level));
};

/** Allows at most so many strips of this level or higher. */
export const setCeiling = (master: Master, level: number, strips: number): void => {
  master.ceilings[level] = strips;
  const row = master.ceilingRow[level] as number;
  if (row >= 0) master.lp.setLeast(row, -strips);
  else if (strips < manyStrips)
    master.ceilingRow[level] = master.lp.addRow(-strips, (c) =>
      (master.columns[c] as Column).level >= level ? -1 : 0,
    );
};

/** Pieces needed from now on; strips that hold more than that are barred. */
export const setLeft = (master: Master, left: Int32Array): void => {
  for (let kind = 0; kind < left.length; kind++) {
    if (left[kind] === master.left[kind]) continue;
    master.left[kind] = left[kind] as number;
    master.lp.setLeast(kind, left[kind] as number);
  }
  for (let c = 0; c < master.columns.length; c++) {
    const { kinds, counts } = master.columns[c] as Column;
    let fits = true;
    for (let e = 0; e < kinds.length && fits; e++) fits = (counts[e] as number) <= (left[kinds[e] as number] as number);
    master.lp.setBarred(c, fits ? 'free' : 'barred');
  }
};

/** What `solveByColumns` came to. */
export interface Relaxed {
  /** 'whole': no strip could lower it further. 'cut': the bound passed the cutoff, or the rounds ran out. */
  readonly status: 'whole' | 'cut' | 'infeasible';
  /** Of the program over the strips so far. */
  readonly value: number;
  /** No choice of strips in any fractions, known or not, that meets every row is shorter. */
  readonly bound: number;
}

/**
 * Solves by adding strips until none is worth more than it costs.
 *
 * The bound of a round: prices scaled down until no strip of any level is worth more than it costs are a feasible dual.
 *
 * @param cutoff stop as soon as the bound is above this
 * @source Farley 1990; from memory
 */
export const solveByColumns = (
  master: Master,
  { rounds, cutoff }: { readonly rounds: number; readonly cutoff: number },
): Relaxed => {
  const { task, lp, pricer, left } = master;
  const costs = new Float64Array(task.heights.length);
  const prices = new Float64Array(task.kinds);
  let bound = 0;
  let value = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const status = lp.solve();
    if (status === 'infeasible') return { status, value: Number.POSITIVE_INFINITY, bound };
    value = lp.objective();
    const dual = pricesOf(master, prices, costs);
    const { columns, worths } = pricer.price(prices, left, costs);
    bound = Math.max(bound, dual * shareKept(task, worths, costs));
    if (bound > cutoff) return { status: 'cut', value, bound };
    if (columns.length === 0) return { status: 'whole', value, bound };
    for (const column of columns) addColumn(master, column);
  }
  return { status: 'cut', value, bound };
};

/** Worths of pieces, and what a strip of each level costs once its worth as a strip is taken off. @returns the dual's value */
export const pricesOf = (master: Master, prices: Float64Array, costs: Float64Array): number => {
  const { task, left, floorRow, floors, ceilingRow, ceilings } = master;
  const duals = master.lp.duals();
  let dual = 0;
  for (let kind = 0; kind < task.kinds; kind++) {
    const price = Math.max(0, duals[kind] as number);
    prices[kind] = price;
    dual += price * (left[kind] as number);
  }
  let off = 0;
  for (let level = 0; level < costs.length; level++) {
    const floor = floorRow[level] as number;
    const ceiling = ceilingRow[level] as number;
    if (floor >= 0) {
      const z = Math.max(0, duals[floor] as number);
      off += z;
      dual += z * (floors[level] as number);
    }
    if (ceiling >= 0) {
      const z = Math.max(0, duals[ceiling] as number);
      off -= z;
      dual -= z * (ceilings[level] as number);
    }
    costs[level] = (task.heights[level] as number) - off;
  }
  return dual;
};

/** The share of the prices that leaves no strip worth more than it costs; strips are worth `worths` and cost `costs` at full prices. */
const shareKept = (task: Task, worths: Float64Array, costs: Float64Array): number => {
  let share = 1;
  for (let level = 0; level < costs.length; level++) {
    const height = task.heights[level] as number;
    // worth with the strip's own worth: what is scaled is all of it
    const whole = (worths[level] as number) + height - (costs[level] as number);
    if (whole > height) share = Math.min(share, height / whole);
  }
  return share * (1 - 1e-12);
};
