// The order of joining a block: a tree of divisions. Set-in seams are avoided first, then partial seams, then curved ones;
// then least different units, least depth, rows before columns, reading order. Blocks of up to nine patches have the
// least of all orders in each of these; straight-seam blocks of up to twelve the least number of different units;
// beyond, the order is the best of a search (and said to be one).

import { type ChoiceCost, comesBefore, compareCosts, costsFrom, improved, searchChoices } from './choice.ts';
import type { Choice, JoinTask, JoinTree, Ways } from './join.ts';
import { laidOut } from './laid-out.ts';
import { bestMakings } from './making.ts';
import { everyWayUpTo, waysToJoin } from './ways.ts';
import { chosenIn, type Picked, type WeighedWays, weighed } from './weighed.ts';

/** Blocks of up to so many patches have their number of different units proven least. */
export const provenUpTo = 12;
/** Steps of the proof up to `provenUpTo` patches and beyond, and of the choice among equals. */
const proofSteps = { small: 400_000, large: 5_000 } as const;
const choiceSteps = 5_000;

/** @param unit patches that lie together, in rising order */
export const planJoins = (task: JoinTask, unit: readonly number[]): JoinTree => {
  const ways = waysToJoin(task, unit);
  const { root } = ways;
  const all = weighed(task, ways);
  const start = bestMakings(ways, all);
  const kinds = new Set(unit.map((patch) => task.kindOf[patch] as number)).size;
  const search = { task, ways, root, weighed: all, kinds, patches: unit.length, costOf: costsFrom(root, all.length) };
  const { choice, isProven } = unit.length <= everyWayUpTo ? leastOfAll(search, start) : fewestUnits(search, start);
  return { ...laidOut(task, ways, choice), leastUnits: isProven ? 'proven' : 'searched' };
};

interface Search {
  readonly task: JoinTask;
  readonly ways: Ways;
  readonly root: number;
  readonly weighed: WeighedWays;
  readonly kinds: number;
  readonly patches: number;
  readonly costOf: (picked: Picked) => ChoiceCost;
}

interface Chosen {
  readonly choice: Choice;
  readonly isProven: boolean;
}

/** Looks at every choice of no more units than the best found: all of them cost the same corners and rings. */
const leastOfAll = (search: Search, start: Picked): Chosen => {
  let best = { choice: chosenIn(start), cost: search.costOf(start) };
  const isProven = searchChoices({
    ...search,
    steps: proofSteps.small,
    worthwhile: (least) => least <= best.cost.units,
    found: (picked) => {
      const cost = search.costOf(picked);
      const difference = compareCosts(cost, best.cost);
      if (difference > 0) return;
      const choice = chosenIn(picked);
      if (difference < 0 || comesBefore({ ...search, a: choice, b: best.choice })) best = { choice, cost };
    },
  });
  return { choice: best.choice, isProven };
};

/** Fewer units first, as far as the steps allow; then, among equals, less depth. */
const fewestUnits = (search: Search, start: Picked): Chosen => {
  const { costOf, patches } = search;
  const first = improved({ ...search, start });
  let best = { choice: chosenIn(first), cost: costOf(first) };
  if (best.cost.corners + best.cost.rings + best.cost.curves > 0) return { choice: best.choice, isProven: false };
  const found = (picked: Picked): void => {
    const cost = costOf(picked);
    if (compareCosts(cost, best.cost) < 0) best = { choice: chosenIn(picked), cost };
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
