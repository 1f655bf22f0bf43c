// The order of joining a block: a tree of divisions. Set-in seams are avoided first, then partial seams, then curved ones;
// then least different units, least depth, rows before columns, reading order. Blocks of up to nine patches have the
// least of all orders in each of these; straight-seam blocks of up to twelve the least number of different units;
// beyond, the order is the best of a search (and said to be one).

import { comesBefore, compareCosts, costOfChoice, improved, searchChoices } from './choice.ts';
import type { Choice, JoinTask, JoinTree, Ways } from './join.ts';
import { laidOut } from './laid-out.ts';
import { bestMakings } from './making.ts';
import { everyWayUpTo, waysToJoin } from './ways.ts';

/** Blocks of up to so many patches have their number of different units proven least. */
export const provenUpTo = 12;
/** Steps of the proof up to `provenUpTo` patches and beyond, and of the choice among equals. */
const proofSteps = { small: 400_000, large: 5_000 } as const;
const choiceSteps = 5_000;

/** @param unit patches that lie together, in rising order */
export const planJoins = (task: JoinTask, unit: readonly number[]): JoinTree => {
  const ways = waysToJoin(task, unit);
  const start = bestMakings(ways);
  const kinds = new Set(unit.map((patch) => task.kindOf[patch] as number)).size;
  const search = { task, ways, kinds, patches: unit.length };
  const { choice, isProven } = unit.length <= everyWayUpTo ? leastOfAll(search, start) : fewestUnits(search, start);
  return { ...laidOut(task, ways, choice), leastUnits: isProven ? 'proven' : 'searched' };
};

interface Search {
  readonly task: JoinTask;
  readonly ways: Ways;
  readonly kinds: number;
  readonly patches: number;
}

interface Chosen {
  readonly choice: Choice;
  readonly isProven: boolean;
}

/** Looks at every choice of no more units than the best found: all of them cost the same corners and rings. */
const leastOfAll = (search: Search, start: Choice): Chosen => {
  const { root } = search.ways;
  let best = { choice: start, cost: costOfChoice(start, root) };
  const isProven = searchChoices({
    ...search,
    steps: proofSteps.small,
    worthwhile: (least) => least <= best.cost.units,
    found: (choice) => {
      const cost = costOfChoice(choice, root);
      const difference = compareCosts(cost, best.cost);
      if (difference < 0 || (difference === 0 && comesBefore({ ...search, a: choice, b: best.choice })))
        best = { choice, cost };
    },
  });
  return { choice: best.choice, isProven };
};

/** Fewer units first, as far as the steps allow; then, among equals, less depth. */
const fewestUnits = (search: Search, start: Choice): Chosen => {
  const { ways, patches } = search;
  const first = improved(ways, start);
  let best = { choice: first, cost: costOfChoice(first, ways.root) };
  if (best.cost.corners + best.cost.rings + best.cost.curves > 0) return { choice: best.choice, isProven: false };
  const found = (choice: Choice): void => {
    const cost = costOfChoice(choice, ways.root);
    if (compareCosts(cost, best.cost) < 0) best = { choice, cost };
  };
  const isProven = searchChoices({
    ...search,
    steps: patches <= provenUpTo ? proofSteps.small : proofSteps.large,
    worthwhile: (least) => least < best.cost.units,
    found,
  });
  if (patches <= provenUpTo && best.cost.depth > Math.ceil(Math.log2(patches)))
    searchChoices({ ...search, steps: choiceSteps, worthwhile: (least) => least <= best.cost.units, found });
  return { choice: best.choice, isProven };
};
