// Which choice of ways takes least, by something that adds up over parts and lines? Branch and bound: part after part, and what the parts
// to come take by themselves, with lines that several share at a straight line below what they may cost.
import type { Choice } from './likely.ts';
import { type CutCount, type CutCounts, type CutLine, piecesIn, sharedIn } from './lines.ts';

/** What a line is charged. */
export interface LinePrice {
  /** For each piece. */
  readonly piece: number;
  /** For each strip begun, and how many pieces lie in one. */
  readonly strip: number;
  readonly perStrip: number;
}

export interface LeastTask {
  readonly lines: ReadonlyMap<string, CutLine>;
  readonly priceOf: (line: CutLine) => LinePrice;
  /** By part: what its options take besides what they cut. */
  readonly parts: readonly (readonly PartCost[])[];
  /** What is taken whichever ways are gone. */
  readonly fixed: PartCost;
  /** Only less than this is of interest. */
  readonly below: number;
  /** What is less by no more than this need not be found. */
  readonly within?: number;
  /** Choices that are of no interest any more. */
  readonly isKnown?: (choice: Choice) => boolean;
}

export interface PartCost {
  readonly own: number;
  readonly counts: CutCounts;
}

export interface Least {
  /** By part: which option; null where nothing less was found. */
  readonly choice: Choice | null;
  /** What that choice takes; else what was asked for. */
  readonly takes: number;
  /** None that is not known takes less than this. */
  readonly bound: number;
}

/** Choices half made that are looked at, at most: our own figure, for time's sake. */
const mostNodes = 300_000;

const none: CutCount = { patches: 0, pieces: 0 };

/** @source docs/formulas.md#trade-offs */
export const leastOver = (task: LeastTask): Least => {
  const { within = 0 } = task;
  const { order, options, base, shared, belows } = prepared(task);
  const depth = order.length;
  const after = options.map(() => 0).concat(0);
  for (let at = depth - 1; at >= 0; at--) after[at] = (after[at + 1] as number) + (options[at]?.[0]?.by ?? 0);
  const closing = order.map((_, at) => shared.flatMap(({ last }, line) => (last === at ? [line] : [])));
  // what is counted in each shared line, in parts of a piece
  const total = Float64Array.from(shared, ({ fixed }) => fixed);
  const taken: number[] = [];
  let best: Choice | null = null;
  let least = task.below;
  let open = Number.POSITIVE_INFINITY;
  let nodes = 0;
  const inOrder = (): Choice => task.parts.map((_, part) => taken[order.indexOf(part)] as number);
  const above = (line: number): number => {
    const count = total[line] as number;
    const { slope, from } = belows[line] as Below;
    return wholeCost(Math.ceil(count - hair), (shared[line] as Shared).price) - from - slope * count;
  };
  const go = (at: number, sum: number): void => {
    if (at === depth) {
      if (sum >= least || task.isKnown?.(inOrder())) return;
      [best, least] = [inOrder(), sum];
      return;
    }
    for (const { option, by, counts } of options[at] as readonly Option[]) {
      // the others take more
      if (sum + by + (after[at + 1] as number) >= least - within) return;
      for (const [line, count] of counts) total[line] = (total[line] as number) + count;
      let next = sum + by;
      for (const line of closing[at] as readonly number[]) next += above(line);
      if (next + (after[at + 1] as number) < least - within) {
        if (++nodes > mostNodes) open = Math.min(open, next + (after[at + 1] as number));
        else {
          taken[at] = option;
          go(at + 1, next);
        }
      }
      for (const [line, count] of counts) total[line] = (total[line] as number) - count;
    }
  };
  go(0, base);
  return { choice: best, takes: least, bound: Math.min(least - within, open) };
};

/** One option of a part, with what it takes at least by itself. */
interface Option {
  readonly option: number;
  readonly by: number;
  /** In lines that others share. */
  readonly counts: readonly (readonly [line: number, count: number])[];
}

/** A line that several parts share. */
interface Shared {
  readonly key: string;
  readonly price: LinePrice;
  readonly fixed: number;
  /** The last part that has it, in the order of choosing. */
  readonly last: number;
  /** What it costs by what is counted in it, from the least to the most that any choice has: the hull from below. */
  readonly hull: readonly { readonly x: number; readonly y: number }[];
}

/** A straight line that is nowhere above what a line of pieces costs. */
interface Below {
  readonly slope: number;
  readonly from: number;
}

const prepared = (task: LeastTask) => {
  const { lines, priceOf, parts, fixed } = task;
  const users = usersOf(parts);
  const order = inGoodOrder(users, parts.length);
  const costOf = (key: string, counts: CutCounts): number => {
    const line = lines.get(key) as CutLine;
    const [own, by] = [counts.get(key) ?? none, fixed.counts.get(key) ?? none];
    const count = { patches: own.patches + by.patches, pieces: own.pieces + by.pieces };
    return wholeCost(piecesIn(count, line), priceOf(line));
  };
  const base = [...lines.keys()].reduce((sum, key) => sum + (users.has(key) ? 0 : costOf(key, new Map())), fixed.own);
  // what one part alone shares with what is fixed is counted with the part
  const alone = parts.map((_, part) => [...users].flatMap(([key, by]) => (by.size === 1 && by.has(part) ? [key] : [])));
  const shared = [...users].flatMap(([key, by]): readonly Shared[] =>
    by.size === 1 ? [] : [sharedLine(task, { key, last: Math.max(...[...by].map((part) => order.indexOf(part))) })],
  );
  const options = order.map((part) =>
    (parts[part] as readonly PartCost[]).map(({ own, counts }, option): Option => {
      const by = (alone[part] ?? []).reduce((sum, key) => sum + costOf(key, counts), own);
      return { option, by, counts: countsIn(shared, lines, counts) };
    }),
  );
  return { order, shared, ...tightened({ shared, options, base }) };
};

const countsIn = (
  shared: readonly Shared[],
  lines: ReadonlyMap<string, CutLine>,
  counts: CutCounts,
): Option['counts'] =>
  shared.flatMap(({ key }, line) => {
    const count = counts.get(key);
    return count === undefined ? [] : [[line, sharedIn(count, lines.get(key) as CutLine)] as const];
  });

const sharedLine = ({ lines, priceOf, parts, fixed }: LeastTask, own: Pick<Shared, 'key' | 'last'>): Shared => {
  const line = lines.get(own.key) as CutLine;
  const inFixed = sharedIn(fixed.counts.get(own.key) ?? none, line);
  const counts = parts.map((options) => options.map((one) => sharedIn(one.counts.get(own.key) ?? none, line)));
  const low = counts.reduce((sum, list) => sum + Math.min(...list), inFixed);
  const high = counts.reduce((sum, list) => sum + Math.max(...list), inFixed);
  const price = priceOf(line);
  return { ...own, price, fixed: inFixed, hull: hullBelow({ low, high, gives: line.gives, price }) };
};

/** Rounds of laying straight lines where the choice that is least by the last ones counts. Our own figure. */
const rounds = 5;

/** Straight lines below the shared ones, such that what all parts take at least by themselves is much; options from the least on. */
const tightened = (of: {
  readonly shared: readonly Shared[];
  readonly options: readonly (readonly Option[])[];
  readonly base: number;
}): { readonly belows: readonly Below[]; readonly options: readonly (readonly Option[])[]; readonly base: number } => {
  const { shared, options, base } = of;
  const laid = (belows: readonly Below[]) => {
    const own = options.map((list) =>
      list
        .map((one) => ({
          ...one,
          by: one.counts.reduce((sum, [line, count]) => sum + (belows[line] as Below).slope * count, one.by),
        }))
        .toSorted((a, b) => a.by - b.by || a.option - b.option),
    );
    const bare = shared.reduce((sum, { fixed }, line) => {
      const { slope, from } = belows[line] as Below;
      return sum + from + slope * fixed;
    }, base);
    return { belows, options: own, base: bare, root: own.reduce((sum, [first]) => sum + (first?.by ?? 0), bare) };
  };
  let now = laid(shared.map(({ price }) => ({ slope: price.piece + price.strip / price.perStrip, from: 0 })));
  let best = now;
  for (let round = 0; round < rounds; round++) {
    const counts = shared.map(({ fixed }) => fixed);
    for (const [first] of now.options)
      for (const [line, count] of first?.counts ?? []) counts[line] = (counts[line] as number) + count;
    now = laid(shared.map(({ hull }, line) => edgeAt(hull, counts[line] as number)));
    if (now.root > best.root) best = now;
  }
  return best;
};

/** The parts that each line is cut for. */
const usersOf = (parts: LeastTask['parts']): ReadonlyMap<string, ReadonlySet<number>> => {
  const users = new Map<string, Set<number>>();
  parts.forEach((options, part) => {
    for (const { counts } of options)
      for (const key of counts.keys()) users.set(key, (users.get(key) ?? new Set()).add(part));
  });
  return users;
};

/** Parts so that lines are closed as soon as may be: always the one that closes most lines and opens fewest. */
const inGoodOrder = (users: ReadonlyMap<string, ReadonlySet<number>>, parts: number): readonly number[] => {
  const shared = [...users.values()].filter((by) => by.size > 1);
  const order: number[] = [];
  const worth = (part: number): number =>
    shared
      .filter((by) => by.has(part))
      .reduce((all, by) => {
        const left = [...by].filter((other) => other !== part && !order.includes(other)).length;
        return all + (left === 0 ? 1 : 0) - (left === by.size - 1 ? 1 : 0);
      }, 0);
  while (order.length < parts) {
    const left = Array.from({ length: parts }, (_, part) => part).filter((part) => !order.includes(part));
    order.push(left.reduce((best, part) => (worth(part) > worth(best) ? part : best)));
  }
  return order;
};

const hair = 1e-9;

const wholeCost = (pieces: number, { piece, strip, perStrip }: LinePrice): number =>
  pieces * piece + strip * Math.ceil(pieces / perStrip - hair);

const hullBelow = (of: {
  readonly low: number;
  readonly high: number;
  readonly gives: number;
  readonly price: LinePrice;
}): Shared['hull'] => {
  const { low, high, gives, price } = of;
  const hull: { readonly x: number; readonly y: number }[] = [];
  // up to whole pieces, so that no half one at the end bends it
  for (let k = Math.round(low * gives); k <= Math.ceil(high - hair) * gives; k++) {
    const p = { x: k / gives, y: wholeCost(Math.ceil(k / gives - hair), price) };
    for (;;) {
      const [a, b] = [hull.at(-2), hull.at(-1)];
      if (a === undefined || b === undefined || (b.y - a.y) * (p.x - b.x) < (p.y - b.y) * (b.x - a.x)) break;
      hull.pop();
    }
    hull.push(p);
  }
  return hull;
};

/** The straight line along the edge over a count. */
const edgeAt = (hull: Shared['hull'], count: number): Below => {
  const at = Math.max(
    1,
    hull.findIndex(({ x }) => x >= count - hair),
  );
  const [a, b] = [hull[at - 1], hull[at]];
  if (a === undefined || b === undefined) return { slope: 0, from: a?.y ?? 0 };
  const slope = (b.y - a.y) / (b.x - a.x);
  return { slope, from: a.y - slope * a.x };
};
