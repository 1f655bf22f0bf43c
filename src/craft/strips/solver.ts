// What a layout asks of an integer program's solver, which lives outside craft and comes in as an argument. The
// same program and limits must always get the same answer.

/** Minimise cost · x over whole x from 0 to upper with every row's sum of factor · x at least its need. All numbers whole. */
export interface IntegerProgram {
  readonly cost: readonly number[];
  readonly upper: readonly number[];
  readonly rows: readonly IntegerRow[];
}

export interface IntegerRow {
  readonly least: number;
  readonly terms: readonly (readonly [variable: number, factor: number])[];
}

/** Limits by work, never by time. */
export interface SolverLimits {
  readonly nodes: number;
  /** No end when absent. See `SolverWork`. */
  readonly work?: number;
}

/** What an answer took: one for each step of the simplex, and ten for each time the solver stops to think again, which takes as long. */
export type SolverWork = number;

/** `x` was checked in whole numbers against every row and limit; `bound` is below or equal to every solution's cost. */
export type SolverAnswer =
  | {
      readonly status: 'optimal' | 'stopped';
      readonly x: readonly number[];
      readonly objective: number;
      readonly bound: number;
      /** Where the solver tells. */
      readonly work?: SolverWork;
    }
  /** No solution was found; `isImpossible` when it is proven that there is none. */
  | { readonly status: 'none'; readonly isImpossible?: boolean; readonly work?: SolverWork };

export interface IntegerSolver {
  readonly minimise: (program: IntegerProgram, limits: SolverLimits) => SolverAnswer;
}

/** Whether whole numbers meet every row and limit of a program. */
export const isSolution = (program: IntegerProgram, x: readonly number[]): boolean =>
  x.length === program.cost.length &&
  x.every((v, i) => Number.isSafeInteger(v) && v >= 0 && v <= (program.upper[i] ?? 0)) &&
  program.rows.every((row) => row.terms.reduce((sum, [i, factor]) => sum + factor * (x[i] ?? 0), 0) >= row.least);

export const costOf = (program: IntegerProgram, x: readonly number[]): number =>
  x.reduce((sum, v, i) => sum + v * (program.cost[i] ?? 0), 0);
