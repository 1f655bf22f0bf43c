// The shortest layout that given strips can make, as an integer program. Beside the strips, the numbers of strips of each
// level or higher are whole variables of their own: the length is a sum over them, and they are what a solver decides first.
import {
  type IntegerProgram,
  type IntegerRow,
  type IntegerSolver,
  isSolution,
  type SolverLimits,
  type SolverWork,
} from '#craft/strips';
import type { Column, ColumnUse } from './column.ts';
import { manyStrips } from './master.ts';
import type { Task } from './task.ts';

export interface Cover {
  readonly task: Task;
  readonly columns: readonly Column[];
  readonly left: Int32Array;
  readonly floors: Float64Array;
  readonly ceilings: Float64Array;
  /** Of no use above this length. */
  readonly cutoff: number;
}

/** 'none' is proven: these strips make no layout within the cutoff. */
export type CoverAnswer =
  | { readonly status: 'found'; readonly uses: readonly ColumnUse[]; readonly bound: number }
  | { readonly status: 'none' }
  | { readonly status: 'stopped' };

/** The solver with its share of the work: what it owes must be paid back by other work before it is asked again. */
export interface Helper {
  readonly solver: IntegerSolver | null;
  owed: SolverWork;
}

/** There is a solver, but other work comes first. */
export const isBusy = ({ solver, owed }: Helper): boolean => solver !== null && owed > 0;

/** Of a call that does not tell. */
const workUntold = 500;
/** A call costs about as much as so much work before its first step. */
const workToStart = 800;

export const coverBy = (helper: Helper, cover: Cover, limits: SolverLimits): CoverAnswer => {
  const { solver } = helper;
  if (solver === null || isBusy(helper)) return { status: 'stopped' };
  const program = programFor(cover);
  const answer = solver.minimise(program, limits);
  helper.owed += workToStart + (answer.work ?? workUntold);
  if (answer.status === 'none') return { status: answer.isImpossible === true ? 'none' : 'stopped' };
  if (!isSolution(program, answer.x)) return { status: 'stopped' };
  const uses = cover.columns.flatMap((column, c) =>
    (answer.x[c] as number) > 0 ? [{ column, times: answer.x[c] as number }] : [],
  );
  return { status: 'found', uses, bound: answer.bound };
};

const programFor = ({ task, columns, left, floors, ceilings, cutoff }: Cover): IntegerProgram => {
  const inUse = [...new Set(columns.map((c) => c.level))].sort((a, b) => a - b);
  const cost = columns.map(() => 0);
  const upper = columns.map((c) => timesOfUse(c, left));
  const rows: IntegerRow[] = [...left].map((least, kind) => ({
    least,
    terms: columns.flatMap((c, at): [number, number][] => {
      const e = c.kinds.indexOf(kind);
      return e < 0 ? [] : [[at, c.counts[e] as number]];
    }),
  }));
  let below = 0;
  let from = 0;
  for (const level of inUse) {
    const height = task.heights[level] as number;
    const counter = cost.length;
    cost.push(height - below);
    upper.push(Math.floor(cutoff / height));
    rows.push({
      least: 0,
      terms: [[counter, 1], ...columns.flatMap((c, at): [number, number][] => (c.level >= level ? [[at, -1]] : []))],
    });
    // levels between two in use have the count of the upper one
    let floor = 0;
    let ceiling = manyStrips;
    for (let k = from; k <= level; k++) {
      floor = Math.max(floor, floors[k] as number);
      ceiling = Math.min(ceiling, ceilings[k] as number);
    }
    if (floor > 0) rows.push({ least: floor, terms: [[counter, 1]] });
    if (ceiling < manyStrips) rows.push({ least: -ceiling, terms: [[counter, -1]] });
    below = height;
    from = level + 1;
  }
  rows.push({
    least: -cutoff,
    terms: cost.flatMap((c, at): [number, number][] => (c > 0 ? [[at, -c]] : [])),
  });
  return { cost, upper, rows };
};

/** How often a strip can be of use: until it has given all that is needed of everything it holds. */
const timesOfUse = (column: Column, left: Int32Array): number =>
  Math.max(...column.kinds.map((kind, e) => Math.ceil((left[kind] as number) / (column.counts[e] as number))));
