// How short could any layout be? The tree over heights of strips, looked at part by part; where a part comes to whole strips, the
// solver is asked for a layout with just these.
import { attainableFrom, type SolverLimits, type StripsFound } from '#craft/strips';
import { countingWork } from './cover.ts';
import { type Filler, fillerFor } from './fill.ts';
import { stripsOfHeights } from './given-heights.ts';
import { heightProgramFor } from './height-program.ts';
import { heightTreeFor, type WholeStrips } from './height-tree.ts';
import { foundIn, isProven, offer, raiseBound, type State } from './state.ts';
import { stripHeightsWithin } from './strip-heights.ts';

/** Tables of more cells than this for one round of strips take too long for the proof to come to anything. */
const mostCells = 2e7;

/** Ends when all is answered that can be. Bounds hold for every layout of the task. */
export function* proving(state: State): Generator<StripsFound, void, void> {
  const { lies, pool } = state;
  const heights = stripHeightsWithin(lies, state.length - 1);
  if (heights.length * lies.size * lies.width > mostCells) return;
  const round = (bound: number): number => attainableFrom(bound, [...lies.heights]);
  const filler = fillerFor(lies);
  const program = heightProgramFor({ lies, filler, heights, strips: state.best, round });
  const tree = heightTreeFor({ program, round });
  const trying = tryingFor(state, filler);
  const raise = (): void => raiseBound(state, Math.min(tree.bound(), state.length), 'integer');
  while (!isProven(state) && !tree.isOver()) {
    const looking = tree.advance({ longest: state.length - 1, retries: trying.owes() ? 'later' : 'now' });
    let looked = looking.next();
    for (; looked.done !== true; looked = looking.next()) {
      trying.pay();
      yield foundIn(state);
    }
    const whole = looked.value;
    if (whole !== null) tree.settle(whole, trying.answer(whole));
    else for (const [strip] of program.support()) pool.add(strip);
    raise();
    trying.pay();
    yield foundIn(state);
  }
  raise();
}

interface Trying {
  /** Looks for a layout with strips of these heights, and offers it where there is one. */
  readonly answer: (whole: WholeStrips) => 'none' | 'open';
  readonly owes: () => boolean;
  /** A step of the proof has been made. */
  readonly pay: () => void;
}

const tryingFor = (state: State, filler: Filler): Trying => {
  const { lies } = state;
  const solver = state.solver === null ? null : countingWork(state.solver);
  let owed = 0;
  return {
    answer: ({ heights, length, worth, tries }) => {
      if (solver === null || length >= state.length) return 'open';
      const before = solver.work();
      const answer = stripsOfHeights({ lies, filler, solver, heights, worth, ...effortFor(tries) });
      owed += solver.work() - before;
      if (answer.status === 'found') offer(state, answer.strips);
      return answer.status === 'none' ? 'none' : 'open';
    },
    owes: () => owed > 0,
    pay: () => {
      owed = Math.max(0, owed - workPerStep);
    },
  };
};

/** Of the solver, paid for by one step of the proof. */
const workPerStep = 2;

const effortFor = (tries: number): { readonly limits: SolverLimits; readonly most: number } => ({
  limits: { nodes: Math.round(firstNodes * growth ** tries), work: Math.round(firstWork * growth ** tries) },
  most: Math.round(firstParts * growth ** tries),
});

/** For the first try at strips of given heights; each further try may take `growth` times as much. */
const firstNodes = 5;
const firstWork = 400;
const firstParts = 150;
const growth = 2.5;
