// Where strips may have any height: the search for a shorter layout, and beside it the one among strips as high as some piece. Those are far
// fewer layouts, so in the same time it gets further among them.
import type { StripsFound } from '#craft/strips';
import { improving } from './improve.ts';
import { liesOf } from './lies.ts';
import { roundedFrom, type Taken } from './rounding.ts';
import { foundIn, offer, type State, stateFor } from './state.ts';
import { type Strip, stripOf } from './strip.ts';

/** Of so many steps one is of strips as high as some piece, after so many in vain. Measured on reference problems. */
const plainEvery = 3;
const patience = 60;

/** Ends when both do. Takes over the best of the one beside where it is shorter. */
export function* improvingBoth(state: State, support: readonly Taken[]): Generator<StripsFound, void, void> {
  const all = improving(state);
  let isImproving = true;
  for (let inVain = 0; isImproving && inVain < patience; inVain++) {
    const before = state.length;
    isImproving = all.next().done !== true;
    if (state.length < before) inVain = 0;
    yield foundIn(state);
  }
  const plain = plainOf(state, support);
  const beside = improving(plain);
  let isBeside = true;
  for (let step = 0; isImproving || isBeside; step++) {
    if (isBeside && step % plainEvery === 0) {
      isBeside = beside.next().done !== true;
      if (plain.length < state.length) offer(state, inAnyHeight(state, plain));
    } else if (isImproving) isImproving = all.next().done !== true;
    yield foundIn(state);
  }
}

const inAnyHeight = ({ lies }: State, { best }: State): readonly Strip[] =>
  best.map(({ piles }) => stripOf(lies, piles));

/** Layouts near the program's answer, of which the shortest is the one to begin with. */
const beginnings = 12;

/** The search for strips as high as some piece, from where the program that both have in common has led. */
const plainOf = (state: State, support: readonly Taken[]): State => {
  const lies = liesOf(state.lies.job, 'piece');
  const plain = stateFor({ lies, solver: state.solver, start: null });
  plain.worth = state.worth;
  plain.soft = state.soft;
  const own = support.map(([strip, times]) => [stripOf(lies, strip.piles), times] as const);
  const { filler, chance, soft: worth } = plain;
  for (let i = 0; i < beginnings; i++)
    offer(plain, roundedFrom({ lies, filler, chance, worth, support: own, demand: lies.demand, limit: plain.length }));
  return plain;
};
