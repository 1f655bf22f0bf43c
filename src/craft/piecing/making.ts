// The best few ways to make each form, built up from the best few of every smaller one. What two parts share is
// counted once; where they make it differently, the first part's way stands.

import { type Choice, curvesOf, formsIn, type Join, type Ways } from './join.ts';

/** One way to make a form, all its parts included. */
interface Making {
  readonly form: number;
  readonly join: Join;
  readonly parts: readonly Making[];
  /** The forms made on the way, a bit for each by its place in order. */
  readonly forms: Uint32Array;
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
export const bestMakings = (ways: Ways): Choice => {
  const order = smallestFirst(ways);
  const joins = [...ways.joins.values()].reduce((all, some) => all + some.length, 0);
  const most = Math.max(1, Math.min(mostKept, Math.floor(Math.sqrt(pairs / joins))));
  const known = new Map<number, readonly Making[]>();
  const scratch = new Uint32Array((order.length >> 5) + 1);
  const tellsLies = order.length <= manyForms;
  order.forEach((form, place) => {
    const kept: Making[] = [];
    for (const join of ways.joins.get(form) as readonly Join[]) {
      for (const parts of partsOf(join, known)) {
        const units = unite(scratch, place, parts);
        const cost = costOf({ join, parts, units, tellsLies });
        if (kept.length < most || isLess(cost, (kept.at(-1) as Making).cost))
          keep(kept, { form, join, parts, forms: scratch.slice(), cost }, most);
      }
    }
    known.set(form, kept);
  });
  const choice = new Map<number, Join>();
  take((known.get(ways.root) as readonly Making[])[0] as Making, choice);
  for (const form of order) {
    if (!choice.has(form)) choice.set(form, ((known.get(form) as readonly Making[])[0] as Making).join);
  }
  return choice;
};

const take = (making: Making, choice: Map<number, Join>): void => {
  if (choice.has(making.form)) return;
  choice.set(making.form, making.join);
  for (const part of making.parts) take(part, choice);
};

/** Every choice of kept makings for the forms that a join takes; of more than two parts only the best. */
const partsOf = (join: Join, known: ReadonlyMap<number, readonly Making[]>): readonly (readonly Making[])[] => {
  const waysOf = (form: number): readonly Making[] => known.get(form) as readonly Making[];
  const forms = formsIn(join);
  const [first, second] = forms;
  if (first === undefined) return [[]];
  if (forms.length > 2) return [[...new Set(forms)].map((form) => waysOf(form)[0] as Making)];
  if (second === undefined || second === first) return waysOf(first).map((making) => [making]);
  return waysOf(first).flatMap((a) => waysOf(second).map((b) => [a, b]));
};

/** The forms of the parts and the one that they make, put into `forms`; returns how many there are. */
const unite = (forms: Uint32Array, place: number, parts: readonly Making[]): number => {
  let all = 0;
  for (let i = 0; i < forms.length; i++) {
    let word = place >> 5 === i ? 1 << (place & 31) : 0;
    for (const part of parts) word |= part.forms[i] as number;
    forms[i] = word;
    for (; word !== 0; word &= word - 1) all++;
  }
  return all;
};

const costOf = (of: {
  readonly join: Join;
  readonly parts: readonly Making[];
  readonly units: number;
  readonly tellsLies: boolean;
}): MakingCost => {
  const { join, units } = of;
  let corners = join.kind === 'seam' ? join.bends : 0;
  let rings = join.kind === 'ring' ? 1 : 0;
  let curves = curvesOf(join);
  let depth = 0;
  let lies = join.kind === 'seam' ? `${join.line.lie}` : '3';
  for (const branch of join.branches) {
    if ('patch' in branch) continue;
    const { cost } = of.parts.find(({ form }) => form === branch.form) as Making;
    corners += cost.corners;
    rings += cost.rings;
    curves += cost.curves;
    depth = Math.max(depth, cost.depth);
    if (of.tellsLies) lies += cost.lies;
  }
  return { corners, rings, curves, units, depth: depth + 1, lies };
};

/** Puts a making among the best, one for each set of forms. */
const keep = (kept: Making[], making: Making, most: number): void => {
  const same = kept.findIndex((other) => isSameSet(other.forms, making.forms));
  if (same >= 0) {
    if (!isLess(making.cost, (kept[same] as Making).cost)) return;
    kept.splice(same, 1);
  }
  const place = kept.findIndex((other) => isLess(making.cost, other.cost));
  kept.splice(place < 0 ? kept.length : place, 0, making);
  if (kept.length > most) kept.pop();
};

const isLess = (a: MakingCost, b: MakingCost): boolean => {
  const difference =
    a.corners - b.corners || a.rings - b.rings || a.curves - b.curves || a.units - b.units || a.depth - b.depth;
  return difference === 0 ? a.lies < b.lies : difference < 0;
};

const isSameSet = (a: Uint32Array, b: Uint32Array): boolean => {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
};

/** Forms so ordered that parts come before what is made of them. */
const smallestFirst = ({ joins, firstUnits }: Ways): readonly number[] =>
  [...joins.keys()].sort(
    (a, b) => (firstUnits.get(a) as readonly number[]).length - (firstUnits.get(b) as readonly number[]).length,
  );
