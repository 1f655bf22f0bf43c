// The best few ways to make each form, built up from the best few of every smaller one. What two parts share is
// counted once; where they make it differently, the first part's way stands.

import type { Ways } from './join.ts';
import type { Picked, WeighedJoin, WeighedWays } from './weighed.ts';

/** One way to make a form, all its parts included. */
interface Making {
  readonly join: WeighedJoin;
  readonly parts: readonly Making[];
  /** Where the set of forms made on the way stands, and how many words it fills. */
  readonly set: number;
  readonly words: number;
  readonly cost: MakingCost;
}

interface MakingCost {
  /** Inside corners, rings and curved seams, over the whole unit. */
  readonly corners: number;
  readonly rings: number;
  readonly curves: number;
  /** Different units. */
  readonly units: number;
  readonly depth: number;
  /** The lie of every seam, the last sewn first: the smaller text has rows before columns. */
  readonly lies: string;
}

/** Makings kept for each form at most, and as many as keep the pairs of parts that are put together below this. */
const mostKept = 8;
const pairs = 40_000;
/** With more forms than this, makings that cost the same are not told apart by their rows and columns. */
const manyForms = 400;

/** A join for every form: those of the root's best making, and each other form's own best. */
export const bestMakings = (ways: Ways, weighed: WeighedWays): Picked => {
  const order = smallestFirst(ways);
  const joins = order.reduce((all, form) => all + (weighed[form] as readonly WeighedJoin[]).length, 0);
  const most = Math.max(1, Math.min(mostKept, Math.floor(Math.sqrt(pairs / joins))));
  const known = new Array<readonly Making[]>(weighed.length).fill([]);
  const sets = formSets(order.length, most);
  const tellsLies = order.length <= manyForms;
  order.forEach((form, place) => {
    const kept: Making[] = [];
    const weigh = (join: WeighedJoin, parts: readonly Making[]): void => {
      const worst = kept.length < most ? null : (kept[most - 1] as Making).cost;
      // most of them need not be looked at closely
      if (worst !== null && isFree(worst) && leastUnits(parts) > worst.units) return;
      const trouble = troubleOf(join, parts);
      const easier = worst === null ? -1 : compareTrouble(trouble, worst);
      if (easier > 0) return;
      const units = sets.unite(place, parts, easier < 0 ? order.length : (worst as MakingCost).units);
      if (units === null) return;
      const { corners, rings, curves, depth } = trouble;
      const cost = { corners, rings, curves, units, depth, lies: tellsLies ? liesOf(join, parts) : '' };
      if (worst === null || isLess(cost, worst)) keep({ kept, join, parts: [...parts], cost, place, most, sets });
    };
    for (const join of weighed[form] as readonly WeighedJoin[]) eachParts(join, known, weigh);
    known[form] = kept;
  });
  const picked: Picked = weighed.map(() => undefined);
  take((known[ways.root] as readonly Making[])[0] as Making, picked);
  for (const form of order) picked[form] ??= ((known[form] as readonly Making[])[0] as Making).join;
  return picked;
};

const take = ({ join, parts }: Making, picked: Picked): void => {
  if (picked[join.form] !== undefined) return;
  picked[join.form] = join;
  for (const part of parts) take(part, picked);
};

/** Every choice of kept makings for the forms that a join takes, in one list that changes; of more than two parts only the best. */
const eachParts = (
  join: WeighedJoin,
  known: readonly (readonly Making[])[],
  weigh: (join: WeighedJoin, parts: readonly Making[]) => void,
): void => {
  const { forms } = join;
  const waysOf = (form: number): readonly Making[] => known[form] as readonly Making[];
  const [first, second] = forms;
  if (first === undefined) weigh(join, []);
  else if (forms.length > 2) {
    const best = [...new Set(forms)].map((form) => waysOf(form)[0] as Making);
    weigh(join, best);
  } else {
    const seconds = second === undefined || second === first ? [null] : waysOf(second);
    const parts: Making[] = [];
    for (const a of waysOf(first)) {
      parts[0] = a;
      for (const b of seconds) {
        if (b !== null) parts[1] = b;
        weigh(join, parts);
      }
    }
  }
};

/** The sets of forms of all makings in one row of words, a bit for each form by its place in order: those kept, and the one being made. */
interface FormSets {
  /** Makes the set of the parts and of the form at a place that they make; returns how many are in it, null where more than `upTo`. */
  readonly unite: (place: number, parts: readonly Making[], upTo: number) => number | null;
  readonly isSame: (set: number, words: number) => boolean;
  /** Puts the set that was made to where a kept one stands. */
  readonly put: (set: number, words: number) => void;
  readonly setOf: (place: number, kept: number) => number;
}

const formSets = (forms: number, most: number): FormSets => {
  const words = (forms >> 5) + 1;
  const kept = new Uint32Array(forms * most * words);
  const made = new Uint32Array(words);
  return {
    unite: (place, parts, upTo) => {
      const own = place >> 5;
      made.fill(0, 0, own + 1);
      made[own] = 1 << (place & 31);
      // what is made of them comes after all parts in order
      for (const part of parts)
        for (let i = 0; i < part.words; i++) (made[i] as number) |= kept[part.set + i] as number;
      let all = 0;
      for (let i = 0; i <= own; i++) all += bitsIn(made[i] as number);
      return all > upTo ? null : all;
    },
    isSame: (set, length) => {
      for (let i = 0; i < length; i++) if (kept[set + i] !== made[i]) return false;
      return true;
    },
    put: (set, length) => {
      for (let i = 0; i < length; i++) kept[set + i] = made[i] as number;
    },
    setOf: (place, one) => (place * most + one) * words,
  };
};

/** How many bits of a word are set: counted in pairs, fours and bytes (common practice, from memory). */
const bitsIn = (word: number): number => {
  const twos = word - ((word >>> 1) & 0x55555555);
  const fours = (twos & 0x33333333) + ((twos >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
};

const isFree = ({ corners, rings, curves }: MakingCost): boolean => corners + rings + curves === 0;

const leastUnits = (parts: readonly Making[]): number => {
  let most = 0;
  for (const { cost } of parts) if (cost.units > most) most = cost.units;
  return most + 1;
};

type Trouble = Pick<MakingCost, 'corners' | 'rings' | 'curves' | 'depth'>;

const troubleOf = (join: WeighedJoin, parts: readonly Making[]): Trouble => {
  let { corners, rings, curves } = join;
  let depth = 0;
  for (const form of join.forms) {
    const { cost } = madeFrom(parts, form);
    corners += cost.corners;
    rings += cost.rings;
    curves += cost.curves;
    depth = Math.max(depth, cost.depth);
  }
  return { corners, rings, curves, depth: depth + 1 };
};

const madeFrom = (parts: readonly Making[], form: number): Making => {
  for (const part of parts) if (part.join.form === form) return part;
  throw new Error('every form of a join has its making');
};

const liesOf = ({ join, forms }: WeighedJoin, parts: readonly Making[]): string =>
  forms.reduce((all, form) => all + madeFrom(parts, form).cost.lies, join.kind === 'seam' ? `${join.line.lie}` : '3');

/** Puts a making among the best, one for each set of forms. */
const keep = (of: {
  readonly kept: Making[];
  readonly join: WeighedJoin;
  readonly parts: readonly Making[];
  readonly cost: MakingCost;
  readonly place: number;
  readonly most: number;
  readonly sets: FormSets;
}): void => {
  const { kept, join, parts, cost, place, most, sets } = of;
  const words = (place >> 5) + 1;
  const same = kept.findIndex((other) => other.cost.units === cost.units && sets.isSame(other.set, words));
  if (same >= 0 && !isLess(cost, (kept[same] as Making).cost)) return;
  const gone = same >= 0 ? kept.splice(same, 1)[0] : kept.length === most ? kept.pop() : undefined;
  const set = gone?.set ?? sets.setOf(place, kept.length);
  sets.put(set, words);
  const before = kept.findIndex((other) => isLess(cost, other.cost));
  kept.splice(before < 0 ? kept.length : before, 0, { join, parts, set, words, cost });
};

const compareTrouble = (a: Trouble, b: Trouble): number =>
  a.corners - b.corners || a.rings - b.rings || a.curves - b.curves;

const isLess = (a: MakingCost, b: MakingCost): boolean => {
  const difference = compareTrouble(a, b) || a.units - b.units || a.depth - b.depth;
  return difference === 0 ? a.lies < b.lies : difference < 0;
};

/** Forms so ordered that parts come before what is made of them. */
const smallestFirst = ({ joins, firstUnits }: Ways): readonly number[] =>
  [...joins.keys()]
    .map((form) => ({ form, patches: (firstUnits.get(form) as readonly number[]).length }))
    .sort((a, b) => a.patches - b.patches)
    .map(({ form }) => form);
