// The solver that layouts ask for least cloth: HiGHS behind craft's small interface. Synchronous once opened;
// limited by nodes, so that the same program always has the same answer; by time only where a person waits for it.
import loadHighs, { type InitOptions } from 'highs';
import {
  costOf,
  type IntegerProgram,
  type IntegerSolver,
  isSolution,
  type SolverAnswer,
  type SolverLimits,
} from '#craft/strips';

type Highs = Awaited<ReturnType<typeof loadHighs>>;

export type CompiledSolver = NonNullable<InitOptions['wasmModule']>;

export interface SolverWishes {
  /**
   * Where a person waits: no answer is looked for longer than that, whatever the limits, and then the same program may have
   * another answer.
   */
  readonly secondsLeft?: () => number;
  /** Compiled before: in a page, where it does not lie beside its script, and where each new worker would compile it again. */
  readonly compiled?: CompiledSolver;
}

/** Loads the solver (about 40 ms); keep the answer, it may be asked any number of times. */
export const openSolver = async ({ secondsLeft, compiled }: SolverWishes = {}): Promise<IntegerSolver> => {
  const highs = await loadHighs(compiled === undefined ? {} : { wasmModule: compiled });
  return {
    minimise: (program, limits) => {
      const seconds = secondsLeft?.() ?? null;
      return seconds !== null && seconds <= 0 ? none : answerFor({ highs, program, limits, seconds });
    },
  };
};

const none: SolverAnswer = { status: 'none' };

const answerFor = (of: {
  readonly highs: Highs;
  readonly program: IntegerProgram;
  readonly limits: SolverLimits;
  readonly seconds: number | null;
}): SolverAnswer => {
  const { highs, program, limits, seconds } = of;
  if (program.cost.length === 0) return none;
  // costs up to 1: large ones have been seen to end a run with an error
  const scale = Math.max(1, ...program.cost);
  const model = highs.createModel(modelFor(highs, program, scale));
  try {
    model.options.set({
      output_flag: false,
      random_seed: 1,
      mip_rel_gap: 0,
      mip_abs_gap: 0.5 / scale,
      mip_max_nodes: limits.nodes,
      ...(seconds === null ? {} : { time_limit: seconds }),
      mip_heuristic_effort: 0.01,
      mip_heuristic_run_root_reduced_cost: false,
    });
    let looks = 0;
    const most = limits.work ?? Number.POSITIVE_INFINITY;
    model.run({
      [highs.constants.callbackType.mipInterrupt]: (event) => {
        looks++;
        if (workOf(looks, Number(event.data.mip_total_lp_iterations ?? 0)) > most) event.interrupt();
      },
    });
    const work = workOf(looks, Number(model.info.get('simplex_iteration_count')));
    if (model.getModelStatus() === highs.constants.modelStatus.infeasible)
      return { status: 'none', isImpossible: true, work };
    if (model.info.get('primal_solution_status') !== highs.constants.solutionStatus.feasible)
      return { status: 'none', work };
    const x = Array.from(model.getSolution().colValue, Math.round);
    if (!isSolution(program, x)) return none;
    const objective = costOf(program, x);
    const proven = model.getModelStatus() === highs.constants.modelStatus.optimal;
    const dual = Math.ceil(Number(model.info.get('mip_dual_bound')) * scale - 1e-6);
    return {
      status: proven ? 'optimal' : 'stopped',
      x,
      objective,
      work,
      bound: proven ? objective : Math.min(objective, dual),
    };
  } finally {
    model.dispose();
  }
};

/**
 * The solver looks whether it should stop after each round of cuts and each node. Measured on layouts of 10 to 40 kinds: 0.2 ms for a
 * step of the simplex, 2 ms for all that is done between two looks beside them.
 */
const workOf = (looks: number, pivots: number): number => pivots + 10 * looks;

const modelFor = (highs: Highs, program: IntegerProgram, scale: number): Parameters<Highs['createModel']>[0] => {
  const { cost, upper, rows } = program;
  const starts = [0];
  for (const row of rows) starts.push((starts.at(-1) ?? 0) + row.terms.length);
  return {
    numCols: cost.length,
    numRows: rows.length,
    sense: highs.constants.objectiveSense.minimize,
    colCost: cost.map((c) => c / scale),
    colLower: cost.map(() => 0),
    colUpper: [...upper],
    rowLower: rows.map((r) => r.least),
    rowUpper: rows.map(() => highs.infinity),
    matrix: {
      format: 'csr',
      numRows: rows.length,
      numCols: cost.length,
      starts,
      indices: rows.flatMap((r) => r.terms.map(([i]) => i)),
      values: rows.flatMap((r) => r.terms.map(([, factor]) => factor)),
    },
    integrality: cost.map(() => highs.constants.variableType.integer),
  };
};
