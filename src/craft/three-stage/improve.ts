// A layout made shorter, round after round: strips laid anew, dives into the linear program over all good strips seen on the
// way, and integer programs over these. Each finds strips that the others use.
import type { StripsFound } from '#craft/strips';
import { countingWork, coverOf } from './cover.ts';
import { addPriced, choiceAmong, divedFrom } from './dive.ts';
import { relaid } from './neighbours.ts';
import { foundIn, isProven, offer, type State } from './state.ts';
import { lengthOfStrips, type Strip, timesWithin } from './strip.ts';

type Steps = Generator<StripsFound, void, void>;

/** Cells of tables worked out in one step: a few milliseconds. */
const stepCells = 2_000_000;
/** Rounds without a shorter layout after which the search has nothing more to try. */
const idleRounds = 80;

/** Ends when the layout is proven, or after many rounds in vain. */
export function* improving(state: State): Steps {
  const asking = askingFor(state);
  let idle = 0;
  for (let round = 0; idle < idleRounds && !isProven(state); round++) {
    const before = state.length;
    yield* layingAnew({ state, start: state.best, round });
    if (round % 2 === 1 && !isProven(state)) yield* diving(state, round);
    if (asking.isTime(round) && !isProven(state)) {
      asking.ask();
      yield foundIn(state);
    }
    idle = state.length < before ? 0 : idle + 1;
  }
}

/** Cells of the first round; later ones take up to `longestRound` times as many. */
const roundCells = 30_000_000;
const longestRound = 6;
const sizeOf = (round: number): number => Math.min(longestRound, 1 + round / 4);

/** By what share the layout may get longer at a round's beginning, in turn. Measured: nothing to half a hundredth is best. */
const shares: readonly number[] = [0, 0.005];

/**
 * Strips of a layout are laid anew for a while. At first it may get longer by a small share, which shrinks to nothing: so the
 * search leaves places where every small change makes it longer.
 */
export function* layingAnew(of: {
  readonly state: State;
  readonly start: readonly Strip[];
  readonly round: number;
}): Steps {
  const { state, round } = of;
  const { lies, filler, chance, pool } = state;
  const strips = [...of.start];
  let length = lengthOfStrips(strips);
  const cells = roundCells * sizeOf(round);
  const share = shares[round % shares.length] as number;
  const from = filler.work();
  let yieldAt = from + stepCells;
  while (!isProven(state)) {
    const left = 1 - (filler.work() - from) / cells;
    if (left <= 0) return;
    const most = Math.floor(state.length * (1 + share * left * left));
    const slack = Math.max(0, most - length);
    const gained = relaid({ lies, filler, chance, worth: state.soft, strips, slack, seen: pool.add });
    if (gained !== null) {
      length -= gained;
      if (length < state.length) offer(state, strips);
    }
    if (filler.work() < yieldAt) continue;
    yieldAt = filler.work() + stepCells;
    yield foundIn(state);
  }
}

/** Strips that a dive may choose from, at first. */
const known = 800;
const dives = 8;
/** Of these, so many are places from which strips are laid anew. */
const begun = 2;
/** Strips whose heights new strips may have, beside those of pieces. */
const heightsFrom = 120;
/** Rounds of new strips before the dives. */
const pricedBefore = 20;

function* diving(state: State, round: number): Steps {
  const { lies, filler, chance, pool, worth, soft } = state;
  const demand = lies.demand;
  const fits = (strip: Strip): boolean => timesWithin(strip, demand) > 0;
  const strips = [...new Set([...state.best, ...pool.best(worth, known)])].filter(fits);
  const choice = choiceAmong(lies, strips, demand);
  const heights = new Set([...lies.heights, ...strips.slice(0, heightsFrom).map((strip) => strip.height)]);
  yield foundIn(state);
  for (let i = 0; i < pricedBefore; i++) {
    if (addPriced({ lies, filler, left: demand.slice(), choice, heights }) === 0) break;
    choice.program.solve();
    yield foundIn(state);
  }
  for (const strip of choice.strips.slice(strips.length)) pool.add(strip);
  const found: (readonly Strip[])[] = [];
  for (let i = 0; i < dives; i++) {
    const limit = state.length + Math.ceil(state.length / 100);
    const dive = divedFrom({ lies, filler, chance, worth: soft, choice, heights, demand, limit, seen: pool.add });
    for (;;) {
      const { value, done } = dive.next();
      if (done === true) {
        offer(state, value);
        if (value !== null) found.push(value);
        break;
      }
      yield foundIn(state);
    }
    if (isProven(state)) return;
  }
  found.sort((a, b) => lengthOfStrips(a) - lengthOfStrips(b));
  for (const start of found.slice(0, begun)) yield* layingAnew({ state, start, round: Math.floor(round / 4) * 2 });
}

/** An integer program over the strips worth most; larger and with more nodes every time. */
const askingFor = (state: State): { readonly isTime: (round: number) => boolean; readonly ask: () => void } => {
  const { lies, pool } = state;
  let owed = 0;
  let next = { most: 100, nodes: 3, work: 600 };
  return {
    isTime: (round) => {
      owed = Math.max(0, owed - workPerRound * sizeOf(round));
      return state.solver !== null && round >= firstAsked && owed === 0;
    },
    ask: () => {
      if (state.solver === null) return;
      const solver = countingWork(state.solver);
      const strips = [...new Set([...state.best, ...pool.best(state.worth, next.most)])];
      const limits = { nodes: Math.floor(next.nodes), work: Math.floor(next.work) };
      offer(state, coverOf({ lies, solver, strips, demand: lies.demand, below: state.length, limits }));
      owed += solver.work();
      next = { most: Math.min(600, next.most * 1.25), nodes: Math.min(200, next.nodes * 1.5), work: next.work * 1.5 };
    },
  };
};

/** Round after which the solver is asked first. */
const firstAsked = 3;
/** Of the solver, paid for by a round as long as the first: about a third of its time. */
const workPerRound = 100;
