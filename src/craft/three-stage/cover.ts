// Which strips out of many cover all pieces in the least length? An integer program over the strips known, its answer with
// every piece too many taken out again.
import type { IntegerProgram, IntegerRow, IntegerSolver, SolverLimits, SolverWork } from '#craft/strips';
import type { Lies } from './lies.ts';
import { lengthOfStrips, type Pile, type Strip, stripOf } from './strip.ts';

/** The solver with a count of its work. */
export interface CountingSolver extends IntegerSolver {
  /** So far. */
  readonly work: () => SolverWork;
}

/** Of a call that does not tell. */
const workUntold = 500;
/** A call costs about as much as so much work before its first step. */
const workToStart = 100;

export const countingWork = (solver: IntegerSolver): CountingSolver => {
  let work = 0;
  return {
    minimise: (program, limits) => {
      const answer = solver.minimise(program, limits);
      work += workToStart + (answer.work ?? workUntold);
      return answer;
    },
    work: () => work,
  };
};

export interface Covering {
  readonly lies: Lies;
  readonly solver: IntegerSolver;
  readonly strips: readonly Strip[];
  /** Pieces of each kind to be covered. */
  readonly demand: Int32Array;
  /** Only covers shorter than this are wanted, in units of height. */
  readonly below: number;
  readonly limits: SolverLimits;
}

/** @returns null when the solver found no shorter one within its nodes */
export const coverOf = ({ lies, solver, strips, demand, below, limits }: Covering): readonly Strip[] | null => {
  const answer = solver.minimise(programFor({ strips, demand, below }), limits);
  if (answer.status === 'none') return null;
  const taken = answer.x.flatMap((times, i) => Array.from({ length: times }, () => strips[i] as Strip));
  const cover = exactly(lies, taken, demand);
  return lengthOfStrips(cover) < below ? cover : null;
};

const programFor = (of: Pick<Covering, 'strips' | 'demand' | 'below'>): IntegerProgram => {
  const { strips, demand, below } = of;
  const terms: (readonly [number, number])[][] = Array.from(demand, () => []);
  strips.forEach((strip, j) => {
    for (let i = 0; i < strip.gives.length; i += 2)
      terms[strip.gives[i] as number]?.push([j, strip.gives[i + 1] as number]);
  });
  const rows: IntegerRow[] = terms
    .map((list, k) => ({ least: demand[k] as number, terms: list }))
    .filter((r) => r.least > 0);
  return {
    cost: strips.map((strip) => strip.height),
    upper: strips.map((strip) => mostUseful(strip, demand)),
    rows: [...rows, { least: 1 - below, terms: strips.map((strip, j) => [j, -strip.height] as const) }],
  };
};

/** Cut more often than this, a strip gives nothing that is wanted. */
const mostUseful = (strip: Strip, demand: Int32Array): number => {
  let most = 0;
  for (let i = 0; i < strip.gives.length; i += 2)
    most = Math.max(most, Math.ceil((demand[strip.gives[i] as number] as number) / (strip.gives[i + 1] as number)));
  return most;
};

/** The strips without the pieces beyond the demand, taken out of the least filled strips first. */
export const exactly = (lies: Lies, strips: readonly Strip[], demand: Int32Array): readonly Strip[] => {
  const beyond = demand.map((n) => -n);
  for (const strip of strips)
    for (let i = 0; i < strip.gives.length; i += 2) {
      const kind = strip.gives[i] as number;
      beyond[kind] = (beyond[kind] as number) + (strip.gives[i + 1] as number);
    }
  const order = strips
    .map((strip, i) => ({ strip, i, rate: strip.filled / strip.height }))
    .sort((a, b) => a.rate - b.rate || a.i - b.i);
  const lean: Strip[] = [];
  for (const { strip } of order) {
    const one = strip.gives.some((kind, i) => i % 2 === 0 && (beyond[kind] as number) > 0)
      ? leaner(lies, strip, beyond)
      : strip;
    if (one.piles.length > 0) lean.push(one);
  }
  return lean;
};

const leaner = (lies: Lies, strip: Strip, beyond: Int32Array): Strip => {
  const piles: Pile[] = [];
  for (const pile of strip.piles) {
    const kept: number[] = [];
    for (let i = 0; i < pile.length; i += 2) {
      const lie = pile[i] as number;
      const kind = lies.kind[lie] as number;
      const out = Math.min(pile[i + 1] as number, Math.max(0, beyond[kind] as number));
      beyond[kind] = (beyond[kind] as number) - out;
      if (out < (pile[i + 1] as number)) kept.push(lie, (pile[i + 1] as number) - out);
    }
    if (kept.length > 0) piles.push(kept);
  }
  return stripOf(lies, piles);
};
