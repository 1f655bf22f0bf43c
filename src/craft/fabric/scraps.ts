// Which cloth does each patch of a scrappy tone get? Drawn at random, yet never the same on both sides of a seam where the
// lists allow it, and every cloth of a list about equally often. The same task gives the same draw.
import { type Chance, chanceFrom } from '#ground/chance';

export interface ScrapTask {
  /** For each patch the cloths that it may get; patches of one list, whatever its order, share its cloths out evenly. */
  readonly lists: readonly (readonly string[])[];
  /** Patches that share an edge. */
  readonly neighbours: readonly (readonly [number, number])[];
  readonly seed: number;
}

export interface ScrapDraw {
  /** For each patch its cloth. */
  readonly drawn: readonly string[];
  /** Neighbours that got the same cloth: the fewest found. */
  readonly equal: number;
}

/**
 * First in an order in which every patch has few neighbours before it (so that six cloths suffice for any flat drawing) or,
 * where that leaves equal pairs, from neighbour to neighbour (so that two suffice for a chequerboard); then mended by
 * moving patches to other cloths, then evened out without making a new equal pair.
 *
 * @source smallest-last ordering, tabu search and two-colour chains of graph colouring; from memory
 */
export const drawScraps = (task: ScrapTask): ScrapDraw => {
  const chance = chanceFrom(task.seed);
  const draw = [smallestLast, outward]
    .map((orderOf) => drawnInOrder(task, orderOf, chance))
    .reduce((a, b) => (equalPairs(b) < equalPairs(a) ? b : a));
  mend(draw, chance);
  evenOut(draw, chance);
  return {
    drawn: draw.cloth.map((cloth) => draw.names[cloth] as string),
    equal: equalPairs(draw),
  };
};

/** A draw under way. Cloths and lists are numbers. */
interface Draw {
  readonly names: readonly string[];
  readonly choices: readonly (readonly number[])[];
  readonly beside: readonly (readonly number[])[];
  readonly poolOf: readonly number[];
  /** The cloth of each patch; −1 before its turn. */
  readonly cloth: number[];
  /** By patch and cloth: how many neighbours have it. */
  readonly near: readonly Map<number, number>[];
  /** By list and cloth: how many patches have it. */
  readonly counts: readonly Map<number, number>[];
}

const openDraw = ({ lists, neighbours }: ScrapTask): Draw => {
  const names = [...new Set(lists.flat())].toSorted();
  const place = new Map(names.map((name, i) => [name, i]));
  const beside: number[][] = lists.map(() => []);
  for (const [a, b] of neighbours) {
    beside[a]?.push(b);
    beside[b]?.push(a);
  }
  const choices = lists.map((list) => list.map((name) => place.get(name) as number).toSorted((a, b) => a - b));
  const pools = new Map<string, number>();
  const poolOf = choices.map((list) => {
    const pool = pools.get(list.join()) ?? pools.size;
    pools.set(list.join(), pool);
    return pool;
  });
  const counts = [...pools.keys()].map((list) => new Map(list.split(',').map((cloth) => [Number(cloth), 0])));
  return { names, choices, beside, poolOf, cloth: lists.map(() => -1), near: lists.map(() => new Map()), counts };
};

const countOf = (counts: ReadonlyMap<number, number>, cloth: number): number => counts.get(cloth) ?? 0;

const give = (draw: Draw, patch: number, cloth: number): void => {
  const before = draw.cloth[patch] as number;
  if (before === cloth) return;
  const counts = draw.counts[draw.poolOf[patch] as number] as Map<number, number>;
  if (before >= 0) counts.set(before, countOf(counts, before) - 1);
  counts.set(cloth, countOf(counts, cloth) + 1);
  for (const next of draw.beside[patch] ?? []) {
    const near = draw.near[next] as Map<number, number>;
    if (before >= 0) near.set(before, countOf(near, before) - 1);
    near.set(cloth, countOf(near, cloth) + 1);
  }
  draw.cloth[patch] = cloth;
};

const equalBeside = (draw: Draw, patch: number): number =>
  countOf(draw.near[patch] as Map<number, number>, draw.cloth[patch] as number);

const equalPairs = (draw: Draw): number => draw.cloth.reduce((all, _, patch) => all + equalBeside(draw, patch), 0) / 2;

type Order = (draw: Draw, chance: Chance) => readonly number[];

const drawnInOrder = (task: ScrapTask, orderOf: Order, chance: Chance): Draw => {
  const draw = openDraw(task);
  for (const patch of orderOf(draw, chance)) give(draw, patch, bestFirst(draw, patch, chance));
  return draw;
};

/** From a patch to its neighbours, their neighbours, and so on. */
const outward: Order = (draw, chance) => {
  const order = new Set<number>();
  for (const first of shuffled(draw.beside.length, chance)) {
    if (order.has(first)) continue;
    const ring = [first];
    order.add(first);
    for (const patch of ring) {
      for (const next of draw.beside[patch] ?? []) {
        if (order.has(next)) continue;
        order.add(next);
        ring.push(next);
      }
    }
  }
  return [...order];
};

/** The patch with fewest neighbours is taken away again and again; the last taken is drawn first. */
const smallestLast: Order = (draw, chance) => {
  const left = draw.beside.map((beside) => beside.length);
  const buckets: number[][] = [];
  const file = (patch: number): void => {
    const degree = left[patch] as number;
    while (buckets.length <= degree) buckets.push([]);
    buckets[degree]?.push(patch);
  };
  for (const patch of shuffled(draw.beside.length, chance)) file(patch);
  const isTaken = draw.beside.map(() => false);
  const taken: number[] = [];
  let degree = 0;
  while (taken.length < isTaken.length) {
    while ((buckets[degree]?.length ?? 0) === 0) degree++;
    const patch = buckets[degree]?.pop() as number;
    if (isTaken[patch] || left[patch] !== degree) continue;
    isTaken[patch] = true;
    taken.push(patch);
    for (const next of draw.beside[patch] ?? []) {
      if (isTaken[next]) continue;
      left[next] = (left[next] as number) - 1;
      file(next);
      degree = Math.min(degree, left[next] as number);
    }
  }
  return taken.toReversed();
};

const shuffled = (count: number, chance: Chance): readonly number[] => {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(chance() * (i + 1));
    [order[i], order[j]] = [order[j] as number, order[i] as number];
  }
  return order;
};

/** Fewest equal neighbours, then the cloth used least; chance among those. */
const bestFirst = (draw: Draw, patch: number, chance: Chance): number => {
  const counts = draw.counts[draw.poolOf[patch] as number] as Map<number, number>;
  const near = draw.near[patch] as Map<number, number>;
  let best: number[] = [];
  let least: readonly [number, number] = [Number.POSITIVE_INFINITY, 0];
  for (const cloth of draw.choices[patch] ?? []) {
    const worth = [countOf(near, cloth), countOf(counts, cloth)] as const;
    const difference = worth[0] - least[0] || worth[1] - least[1];
    if (difference < 0) {
      best = [cloth];
      least = worth;
    } else if (difference === 0) best.push(cloth);
  }
  return best[Math.floor(chance() * best.length)] as number;
};

/** Steps of mending for each patch; our own choice. */
const mendingSteps = 30;

/** Moves patches of equal pairs to other cloths, also for the worse, but not back at once; the best draw is kept. */
const mend = (draw: Draw, chance: Chance): void => {
  let equal = equalPairs(draw);
  if (equal === 0) return;
  let best = [...draw.cloth];
  let fewest = equal;
  const barred = new Map<string, number>();
  const unequal = (patch: number): boolean => equalBeside(draw, patch) === 0;
  const open = new Set(draw.cloth.flatMap((_, patch) => (unequal(patch) ? [] : [patch])));
  const steps = Math.min(60_000, 300 + mendingSteps * draw.cloth.length);
  for (let step = 0; step < steps && fewest > 0; step++) {
    const move = mendingMove({ draw, open, chance, step, barred, room: fewest - equal });
    // all moves barred for a while
    if (move === null) continue;
    const before = draw.cloth[move.patch] as number;
    give(draw, move.patch, move.cloth);
    equal += move.gain;
    for (const patch of [move.patch, ...(draw.beside[move.patch] ?? [])]) {
      if (unequal(patch)) open.delete(patch);
      else open.add(patch);
    }
    barred.set(`${move.patch},${before}`, step + 3 + Math.floor(chance() * 8));
    if (equal < fewest) {
      fewest = equal;
      best = [...draw.cloth];
    }
  }
  best.forEach((cloth, patch) => {
    give(draw, patch, cloth);
  });
};

interface Move {
  readonly patch: number;
  readonly cloth: number;
  /** Equal pairs more. */
  readonly gain: number;
}

/** The best move of a few patches of equal pairs; a barred one only where it makes the best draw yet. */
const mendingMove = (of: {
  readonly draw: Draw;
  /** Patches of equal pairs. */
  readonly open: ReadonlySet<number>;
  readonly chance: Chance;
  readonly step: number;
  readonly barred: ReadonlyMap<string, number>;
  readonly room: number;
}): Move | null => {
  const { draw, chance } = of;
  const equal = [...of.open];
  const tried =
    equal.length > 60 ? Array.from({ length: 60 }, () => equal[Math.floor(chance() * equal.length)] as number) : equal;
  let best: Move[] = [];
  for (const patch of tried) {
    const near = draw.near[patch] as Map<number, number>;
    for (const cloth of draw.choices[patch] ?? []) {
      if (cloth === draw.cloth[patch]) continue;
      const gain = countOf(near, cloth) - equalBeside(draw, patch);
      if ((of.barred.get(`${patch},${cloth}`) ?? -1) > of.step && gain >= of.room) continue;
      const least = best[0]?.gain ?? Number.POSITIVE_INFINITY;
      if (gain < least) best = [{ patch, cloth, gain }];
      else if (gain === least) best.push({ patch, cloth, gain });
    }
  }
  return best[Math.floor(chance() * best.length)] ?? null;
};

/** Patches looked at for evening out, for each patch of the draw; our own choice. */
const eveningLooks = 60;

/** Exchanges two cloths along chains of neighbours that have either, as long as the counts come nearer to each other. */
const evenOut = (draw: Draw, chance: Chance): void => {
  let looks = 2_000 + eveningLooks * draw.cloth.length;
  for (let idle = 0; idle < 100 && looks > 0 && spreadOf(draw) > 1; ) {
    let isBetter = false;
    for (const patch of shuffled(draw.cloth.length, chance)) {
      for (const cloth of draw.choices[patch] ?? []) {
        if (looks <= 0) return;
        const chain = chainFrom(draw, patch, cloth);
        looks -= chain?.length ?? 1;
        for (const moved of [chain, isFree(draw, patch, cloth) ? [patch] : null]) {
          if (moved === null || draw.cloth[patch] === cloth) continue;
          const gain = gainOf(draw, moved, cloth);
          // an even exchange now and then leads out of a dead end
          if (gain > 0 || (gain === 0 && (idle === 0 || chance() < 0.5))) continue;
          if (gain < 0) isBetter = true;
          exchange(draw, moved, [draw.cloth[patch] as number, cloth]);
        }
      }
    }
    idle = isBetter ? 0 : idle + 1;
  }
};

const spreadOf = ({ counts }: Draw): number =>
  Math.max(0, ...counts.map((count) => Math.max(...count.values()) - Math.min(...count.values())));

/** Whether one patch may change to a cloth without a further equal pair, though its neighbours do not change with it. */
const isFree = (draw: Draw, patch: number, cloth: number): boolean =>
  countOf(draw.near[patch] as Map<number, number>, cloth) <= equalBeside(draw, patch);

/** The patches to exchange so that this one gets the cloth and no new equal pair comes of it; null where one may not. */
const chainFrom = (draw: Draw, patch: number, cloth: number): readonly number[] | null => {
  const own = draw.cloth[patch] as number;
  if (own === cloth) return null;
  const chain = [patch];
  const seen = new Set(chain);
  for (const link of chain) {
    const other = draw.cloth[link] === own ? cloth : own;
    if (!draw.choices[link]?.includes(other)) return null;
    for (const next of draw.beside[link] ?? []) {
      if (seen.has(next) || (draw.cloth[next] !== own && draw.cloth[next] !== cloth)) continue;
      seen.add(next);
      chain.push(next);
    }
  }
  return chain;
};

/** How the sum of squared counts changes. */
const gainOf = (draw: Draw, chain: readonly number[], cloth: number): number => {
  const own = draw.cloth[chain[0] as number] as number;
  const moved = new Map<number, number>();
  for (const link of chain) {
    const pool = draw.poolOf[link] as number;
    moved.set(pool, (moved.get(pool) ?? 0) + (draw.cloth[link] === own ? 1 : -1));
  }
  return [...moved].reduce((all, [pool, by]) => {
    const counts = draw.counts[pool] as Map<number, number>;
    const [a, b] = [countOf(counts, own), countOf(counts, cloth)];
    return all + (a - by) ** 2 + (b + by) ** 2 - a ** 2 - b ** 2;
  }, 0);
};

const exchange = (draw: Draw, chain: readonly number[], [a, b]: readonly [number, number]): void => {
  for (const link of chain) give(draw, link, draw.cloth[link] === a ? b : a);
};
