// One value for each of several variables, so that what single values and pairs of them cost together is least.
// Exact where few variables hang together at a time (variables are taken out one after another, the rest pays for
// what they then cost at the least), else a search by steps, and said to be one. Says nothing of what is chosen.

export interface Choices {
  /** By variable: what each of its values costs. Whole numbers; a tie goes to the value that stands first. */
  readonly single: readonly (readonly number[])[];
  readonly pairs: readonly PairCost[];
}

/** By the value of `a`, then of `b`: two different variables. */
export interface PairCost {
  readonly a: number;
  readonly b: number;
  readonly cost: readonly (readonly number[])[];
}

export interface Chosen {
  /** By variable: the place of its value. */
  readonly values: readonly number[];
  readonly cost: number;
  /** Whether nothing costs less. */
  readonly proven: boolean;
}

interface Factor {
  /** Rising. */
  readonly scope: readonly number[];
  /** By the values of the scope, the last one counting fastest. */
  readonly table: Float64Array;
}

/** Largest table of what is left to pay: so many values together. */
const largestTable = 4_096;
/** Values tried by the search. */
const searchSteps = 40_000;

/**
 * @param starts choices that the search begins from, where it comes to that: its answer costs no more than any of them
 */
export const leastCost = (choices: Choices, starts: readonly (readonly number[])[] = []): Chosen => {
  const pairs = together(choices);
  const values = choices.single.map(() => 0);
  let proven = true;
  for (const group of groupsOf(choices.single.length, pairs)) {
    const own = pairs.filter(({ a }) => group.has(a));
    const exact = eliminated({ single: choices.single, pairs: own }, group);
    if (exact === null) proven = false;
    const found = exact ?? searched({ single: choices.single, pairs: own }, { group, starts });
    for (const [variable, value] of found) values[variable] = value;
  }
  return { values, cost: costOf(choices, values), proven };
};

/** What a choice costs. */
export const costOf = ({ single, pairs }: Choices, values: readonly number[]): number =>
  single.reduce((all, costs, variable) => all + (costs[values[variable] as number] as number), 0) +
  pairs.reduce((all, { a, b, cost }) => all + (cost[values[a] as number]?.[values[b] as number] as number), 0);

/** Pairs of the same two variables as one, the lower first. */
const together = ({ pairs }: Choices): readonly PairCost[] => {
  const known = new Map<string, { a: number; b: number; cost: number[][] }>();
  for (const { a, b, cost } of pairs) {
    const [low, high] = a < b ? [a, b] : [b, a];
    const turned =
      a < b ? cost.map((row) => [...row]) : (cost[0] ?? []).map((_, j) => cost.map((row) => row[j] as number));
    const key = `${low},${high}`;
    const before = known.get(key);
    if (!before) known.set(key, { a: low, b: high, cost: turned });
    else before.cost = before.cost.map((row, i) => row.map((one, j) => one + (turned[i]?.[j] as number)));
  }
  return [...known.values()];
};

/** Variables that hang together by pairs, each group in the order of its first. */
const groupsOf = (count: number, pairs: readonly PairCost[]): readonly ReadonlySet<number>[] => {
  const near: number[][] = Array.from({ length: count }, () => []);
  for (const { a, b } of pairs) {
    near[a]?.push(b);
    near[b]?.push(a);
  }
  const seen = new Set<number>();
  return near.flatMap((_, first) => {
    if (seen.has(first)) return [];
    const group = new Set([first]);
    for (const variable of group) for (const next of near[variable] as readonly number[]) group.add(next);
    for (const variable of group) seen.add(variable);
    return [group];
  });
};

interface Left {
  readonly variable: number;
  readonly scope: readonly number[];
  /** By the values of the scope: the best value of the variable. */
  readonly best: Uint8Array;
}

/** Null where more variables hang together than a table has room for. */
const eliminated = ({ single, pairs }: Choices, group: ReadonlySet<number>): ReadonlyMap<number, number> | null => {
  const sizeOf = (variable: number): number => single[variable]?.length as number;
  const factors = pairs.map(({ a, b, cost }): Factor => ({ scope: [a, b], table: Float64Array.from(cost.flat()) }));
  const at = new Map([...group].map((variable) => [variable, new Set<Factor>()]));
  for (const factor of factors) for (const variable of factor.scope) at.get(variable)?.add(factor);
  const scopeOf = (variable: number): readonly number[] => {
    const near = new Set<number>();
    for (const { scope } of at.get(variable) as ReadonlySet<Factor>) for (const other of scope) near.add(other);
    near.delete(variable);
    return [...near].sort((a, b) => a - b);
  };
  const roomOf = (scope: readonly number[]): number => scope.reduce((all, other) => all * sizeOf(other), 1);
  const rooms = new Map([...group].map((variable) => [variable, roomOf(scopeOf(variable))]));
  const order: Left[] = [];
  while (rooms.size > 0) {
    let next = -1;
    for (const [variable, room] of rooms) {
      if (next < 0 || room < (rooms.get(next) as number) || (room === rooms.get(next) && variable < next))
        next = variable;
    }
    if ((rooms.get(next) as number) * sizeOf(next) > largestTable) return null;
    const scope = scopeOf(next);
    const own = [...(at.get(next) as ReadonlySet<Factor>)];
    const { table, best } = takenOut({ variable: next, own, scope, costs: single[next] as readonly number[], sizeOf });
    order.push({ variable: next, scope, best });
    rooms.delete(next);
    for (const factor of own) for (const other of factor.scope) at.get(other)?.delete(factor);
    const left: Factor = { scope, table };
    for (const other of scope) at.get(other)?.add(left);
    for (const other of scope) rooms.set(other, roomOf(scopeOf(other)));
  }
  const values = new Map<number, number>();
  for (const { variable, scope, best } of order.reverse()) {
    const place = scope.reduce((all, other) => all * sizeOf(other) + (values.get(other) as number), 0);
    values.set(variable, best[place] as number);
  }
  return values;
};

/** What is left to pay without a variable, by the values of all that it hangs together with. */
const takenOut = (of: {
  readonly variable: number;
  readonly own: readonly Factor[];
  readonly scope: readonly number[];
  readonly costs: readonly number[];
  readonly sizeOf: (variable: number) => number;
}): { readonly table: Float64Array; readonly best: Uint8Array } => {
  const { variable, own, scope, costs, sizeOf } = of;
  const room = scope.reduce((all, other) => all * sizeOf(other), 1);
  const table = new Float64Array(room);
  const best = new Uint8Array(room);
  const digits = scope.map(() => 0);
  const steps = own.map((factor) => stridesIn(factor, [...scope, variable], sizeOf));
  for (let place = 0; place < room; place++) {
    let least = Number.POSITIVE_INFINITY;
    for (let value = 0; value < costs.length; value++) {
      let cost = costs[value] as number;
      own.forEach((factor, f) => {
        const strides = steps[f] as readonly number[];
        let offset = value * (strides[scope.length] as number);
        for (let i = 0; i < digits.length; i++) offset += (digits[i] as number) * (strides[i] as number);
        cost += factor.table[offset] as number;
      });
      if (cost < least) {
        least = cost;
        best[place] = value;
      }
    }
    table[place] = least;
    for (let i = digits.length - 1; i >= 0; i--) {
      digits[i] = (digits[i] as number) + 1;
      if ((digits[i] as number) < sizeOf(scope[i] as number)) break;
      digits[i] = 0;
    }
  }
  return { table, best };
};

/** How far a factor's table moves on for one step of each of these variables. */
const stridesIn = (
  factor: Factor,
  variables: readonly number[],
  sizeOf: (variable: number) => number,
): readonly number[] =>
  variables.map((variable) => {
    const place = factor.scope.indexOf(variable);
    return place < 0 ? 0 : factor.scope.slice(place + 1).reduce((all, other) => all * sizeOf(other), 1);
  });

/** Steps down from every start, then from every single value turned, as long as that saves anything. */
const searched = (
  { single, pairs }: Choices,
  of: { readonly group: ReadonlySet<number>; readonly starts: readonly (readonly number[])[] },
): ReadonlyMap<number, number> => {
  const members = [...of.group].sort((a, b) => a - b);
  const near = new Map<number, PairCost[]>(members.map((variable) => [variable, []]));
  for (const pair of pairs) {
    near.get(pair.a)?.push(pair);
    near.get(pair.b)?.push(pair);
  }
  let steps = 0;
  const priceOf = (values: Map<number, number>, variable: number, value: number): number => {
    steps++;
    let cost = single[variable]?.[value] as number;
    for (const { a, b, cost: costs } of near.get(variable) as readonly PairCost[]) {
      cost +=
        a === variable
          ? (costs[value]?.[values.get(b) as number] as number)
          : (costs[values.get(a) as number]?.[value] as number);
    }
    return cost;
  };
  const wholeOf = (values: ReadonlyMap<number, number>): number =>
    members.reduce((all, variable) => all + (single[variable]?.[values.get(variable) as number] as number), 0) +
    pairs.reduce(
      (all, { a, b, cost }) => all + (cost[values.get(a) as number]?.[values.get(b) as number] as number),
      0,
    );
  const descend = (values: Map<number, number>, kept: number | null): Map<number, number> => {
    for (let moved = true; moved; ) {
      moved = false;
      for (const variable of members) {
        if (variable === kept) continue;
        const now = values.get(variable) as number;
        let [best, least] = [now, priceOf(values, variable, now)];
        for (let value = 0; value < (single[variable] as readonly number[]).length; value++) {
          if (value === now) continue;
          const cost = priceOf(values, variable, value);
          if (cost < least) [best, least] = [value, cost];
        }
        if (best !== now) {
          values.set(variable, best);
          moved = true;
        }
      }
    }
    return values;
  };
  const starts = [
    members.map(() => 0),
    ...of.starts.map((start) => members.map((variable) => start[variable] as number)),
  ];
  const ends = starts.map((start) =>
    descend(new Map(members.map((variable, i) => [variable, start[i] as number])), null),
  );
  let best = ends.reduce((a, b) => (wholeOf(b) < wholeOf(a) ? b : a));
  for (let better = true; better && steps < searchSteps; ) {
    better = false;
    for (const variable of members) {
      for (let value = 0; value < (single[variable] as readonly number[]).length && steps < searchSteps; value++) {
        if (value === best.get(variable)) continue;
        const tried = descend(descend(new Map(best).set(variable, value), variable), null);
        if (wholeOf(tried) < wholeOf(best)) {
          best = tried;
          better = true;
        }
      }
    }
  }
  return best;
};
