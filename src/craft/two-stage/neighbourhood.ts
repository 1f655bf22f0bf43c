// Can a handful of strips be filled anew in less length? The rest of the layout stays; the pieces of the handful are a small
// job of their own, with its own linear program, bound and dives.
import type { Chance } from '#ground/chance';
import { type Column, type ColumnUse, columnOf, heightAt } from './column.ts';
import { dive } from './dive.ts';
import { levelBoundsFor, solveWithLevels } from './level-bounds.ts';
import { addColumn, masterFor } from './master.ts';
import { type Task, taskFor } from './task.ts';

/** Some strips of a layout, set free. */
export interface Freed {
  readonly strips: readonly Column[];
  readonly length: number;
  readonly rest: readonly ColumnUse[];
}

/**
 * A handful of strips, each as likely as its standing.
 *
 * @param standings of one strip of each use, above zero
 */
export const freeStrips = (of: {
  readonly task: Task;
  readonly uses: readonly ColumnUse[];
  readonly standings: readonly number[];
  readonly size: number;
  readonly chance: Chance;
}): Freed => {
  const { task, uses, standings, size, chance } = of;
  const left = uses.map((u) => u.times);
  const strips: Column[] = [];
  let length = 0;
  while (strips.length < size) {
    let sum = 0;
    for (let u = 0; u < uses.length; u++) sum += (left[u] as number) * (standings[u] as number);
    if (sum <= 0) break;
    let at = chance() * sum;
    let chosen = uses.length - 1;
    for (let u = 0; u < uses.length; u++) {
      at -= (left[u] as number) * (standings[u] as number);
      if (at < 0) {
        chosen = u;
        break;
      }
    }
    while ((left[chosen] as number) === 0) chosen--;
    left[chosen] = (left[chosen] as number) - 1;
    const { column } = uses[chosen] as ColumnUse;
    strips.push(column);
    length += heightAt(task, column);
  }
  const rest = uses.flatMap(({ column }, u) => ((left[u] as number) > 0 ? [{ column, times: left[u] as number }] : []));
  return { strips, length, rest };
};

/** @returns strips for the freed pieces that are no longer than the cutoff, or null; yields between parts of the work */
export function* refill(of: {
  readonly task: Task;
  readonly freed: Freed;
  readonly cutoff: number;
  readonly tries: number;
  readonly choices: number;
  readonly chance: Chance;
}): Generator<void, readonly ColumnUse[] | null, void> {
  const { task, freed, tries, choices, chance } = of;
  const small = smallTask(task, freed.strips);
  const cutoff = Math.floor((of.cutoff * task.heightUnit) / small.task.heightUnit);
  const master = masterFor(small.task);
  for (const strip of freed.strips) {
    const column = columnOf(small.task, small.inward(strip));
    if (column !== null) addColumn(master, column);
  }
  const solving = solveWithLevels(master, levelBoundsFor(small.task));
  for (;;) {
    const { value, done } = solving.next();
    if (value.status === 'infeasible' || Math.ceil(value.bound - 1e-6) > cutoff) return null;
    if (done) break;
    yield;
  }
  const uses = yield* dive({ master, cutoff, tries, choices, chance });
  return uses?.map(({ column, times }) => ({ column: small.outward(column), times })) ?? null;
}

interface SmallTask {
  readonly task: Task;
  /** Counts by the small task's kinds. */
  readonly inward: (column: Column) => Int32Array;
  readonly outward: (column: Column) => Column;
}

const smallTask = (task: Task, strips: readonly Column[]): SmallTask => {
  const counts = new Int32Array(task.kinds);
  for (const { kinds, counts: each } of strips)
    for (let e = 0; e < kinds.length; e++) {
      const kind = kinds[e] as number;
      counts[kind] = (counts[kind] as number) + (each[e] as number);
    }
  const kinds = [...counts.keys()].filter((kind) => (counts[kind] as number) > 0);
  const places = new Map(kinds.map((kind, place) => [kind, place]));
  const small = taskFor({
    width: task.job.width,
    kinds: kinds.map((kind) => ({ ...kindAt(task, kind), count: counts[kind] as number })),
  });
  return {
    task: small,
    inward: (column) => {
      const own = new Int32Array(kinds.length);
      column.kinds.forEach((kind, e) => {
        own[places.get(kind) as number] = column.counts[e] as number;
      });
      return own;
    },
    outward: (column) => {
      const outer = new Int32Array(task.kinds);
      column.kinds.forEach((kind, e) => {
        outer[kinds[kind] as number] = column.counts[e] as number;
      });
      return columnOf(task, outer) as Column;
    },
  };
};

const kindAt = (task: Task, kind: number): Task['job']['kinds'][number] => task.job.kinds[kind] as never;
