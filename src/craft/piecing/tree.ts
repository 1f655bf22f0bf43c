// The order of joining a block: a tree of divisions. Set-in seams are avoided first, then partial seams, then curved ones;
// then least different units, least depth, rows before columns, reading order. For straight-seam blocks of
// up to twelve patches the number of different units is proven least by search over sets of forms; beyond,
// each form takes the best of its own divisions (a search, and said to be one).

import { type Chord, chordsOf, type Drawing, type SeamLine } from '#craft/chords';
import type { Arc } from '#ground/arc';
import type { Polygon } from '#ground/plane';
import { bentDivisions } from './bent.ts';
import type { UnitForm } from './congruence.ts';
import type { PatchGraph } from './graph.ts';
import { ringOf } from './ring.ts';
import { sparing } from './whole.ts';

/** A part of a join: a single patch, or a unit of a form. */
export type Branch =
  | { readonly patch: number }
  | { readonly form: number; readonly turn: number; readonly patches: readonly number[] };

export type Join = SeamJoin | RingJoin;

export interface SeamJoin {
  readonly kind: 'seam';
  /** Inside corners to set in. */
  readonly bends: number;
  readonly line: SeamLine;
  /** The seam itself where it bends or runs through a unit that is not convex; null: all of the line. */
  readonly path: Polygon | null;
  /** Where the path runs over arcs, as they are walked along it. */
  readonly arcs: readonly Arc[];
  /** Of the path; null where that is. */
  readonly length: number | null;
  /** Above or left of the seam, then below or right of it, as they lie in the form's first unit. */
  readonly branches: readonly [Branch, Branch];
}

export interface RingJoin {
  readonly kind: 'ring';
  /** The centre, then the arms in sewing order. */
  readonly branches: readonly [Branch, ...(readonly Branch[])];
  /** By arm: its whole seam, and how much of it lies on the centre and on the arm before it. */
  readonly seams: readonly { readonly line: SeamLine; readonly onCentre: number; readonly onNeighbour: number }[];
}

export interface JoinTree {
  /** How each form in the tree is made. */
  readonly joins: ReadonlyMap<number, Join>;
  readonly root: number;
  readonly leastUnits: 'proven' | 'searched';
}

/** One way to make a form, all its parts included. */
interface Making {
  readonly joins: ReadonlyMap<number, Join>;
  /** Inside corners, and rings, over the whole unit. */
  readonly setIn: number;
  readonly partial: number;
  /** Seams over arcs. */
  readonly curved: number;
  readonly depth: number;
  /** The lie of every seam, the last sewn first: the smaller text has rows before columns. */
  readonly lies: string;
}

/** Blocks of up to so many patches have their number of different units proven least. */
export const provenUpTo = 12;
/** Work spent on trying every chord of a unit (lines × patches); from then on a unit is divided at its most even chord. */
const chordWork = 400_000;
/** With more forms than this, what two parts share is not followed into their making. */
const manyForms = 1_200;
/** Bent seams tried for one form, and forms after which only the first is. */
const mostBent = 16;
const manyBentForms = 300;
/** Makings kept for each form: many while forms are few. */
const keptMakings = (forms: number): number => (forms <= 200 ? 8 : forms <= 400 ? 3 : 1);
/** Steps of the proof up to `provenUpTo` patches and beyond, and of the choice among equals after it. */
const proofSteps = { small: 400_000, large: 5_000 } as const;
const choiceSteps = 5_000;

/** What is to be joined. The graph is asked for only where no plain chord divides a unit. */
export interface JoinTask {
  readonly drawing: Drawing;
  readonly graph: () => PatchGraph;
  readonly formOf: (unit: readonly number[]) => UnitForm;
  readonly kindOf: readonly number[];
  readonly isConvex: (unit: readonly number[]) => boolean;
  /** Patches that are a unit of their own: no seam divides them before it is all that is left. Missing for none. */
  readonly whole?: readonly (readonly number[])[];
}

/** @param unit patches that lie together, in rising order */
export const planJoins = (task: JoinTask, unit: readonly number[]): JoinTree => {
  const root = task.formOf(unit).form;
  const options = growForms(task, unit, root);
  const searched = bestMaking(options, root);
  const kindOf = unit.map((patch) => task.kindOf[patch] as number);
  if (searched.setIn + searched.partial + searched.curved > 0)
    return { joins: searched.joins, root, leastUnits: 'searched' };
  return provenLeast({
    options,
    root,
    searched,
    kinds: new Set(kindOf).size,
    patches: unit.length,
    kindOf: task.kindOf,
  });
};

/** Every form that can occur, with every way to join it. */
const growForms = (task: JoinTask, all: readonly number[], root: number): ReadonlyMap<number, readonly Join[]> => {
  const options = new Map<number, readonly Join[]>();
  // the first unit met stands for its form: turns are counted from it
  const firstUnits = new Map<number, UnitToJoin>([[root, { patches: all, isConvex: task.isConvex(all) }]]);
  const waiting = [root];
  const branchOf =
    (isConvex: (patches: readonly number[]) => boolean) =>
    (patches: readonly number[]): Branch => {
      if (patches.length === 1) return { patch: patches[0] as number };
      const { form, turn } = task.formOf(patches);
      if (!firstUnits.has(form)) {
        firstUnits.set(form, { patches, isConvex: isConvex(patches) });
        waiting.push(form);
      }
      return { form, turn, patches };
    };
  // what a straight seam cuts off a convex unit is convex
  const cutOff = branchOf(() => true);
  const taken = branchOf(task.isConvex);
  let spent = 0;
  for (let form = waiting.pop(); form !== undefined; form = waiting.pop()) {
    const unit = firstUnits.get(form) as UnitToJoin;
    const chords = unit.isConvex ? sparing(chordsOf(task.drawing, unit.patches), unit.patches, task.whole) : [];
    spent += chords.length * unit.patches.length;
    const chosen = spent > chordWork && chords.length > 1 ? [mostEven(chords)] : chords;
    options.set(
      form,
      chosen.length > 0
        ? straightJoins(chosen, cutOff)
        : otherJoins({ task, unit, branch: taken, forms: options.size }),
    );
  }
  return options;
};

interface UnitToJoin {
  readonly patches: readonly number[];
  readonly isConvex: boolean;
}

const straightJoins = (chords: readonly Chord[], branch: (patches: readonly number[]) => Branch): readonly Join[] =>
  chords.map(({ line, first, second }) => ({
    kind: 'seam',
    bends: 0,
    line,
    path: null,
    arcs: [],
    length: null,
    branches: [branch(first), branch(second)],
  }));

/** Where no straight seam divides a unit: a ring; else the seams with the fewest bends. */
const otherJoins = (of: {
  readonly task: JoinTask;
  readonly unit: UnitToJoin;
  readonly branch: (patches: readonly number[]) => Branch;
  readonly forms: number;
}): readonly Join[] => {
  const { task, unit, branch, forms } = of;
  const ring = unit.isConvex ? ringOf(task.graph(), unit.patches) : null;
  if (ring) {
    return [
      {
        kind: 'ring',
        branches: [branch(ring.centre), ...ring.arms.map((arm) => branch(arm.patches))],
        seams: ring.arms,
      },
    ];
  }
  const bent = bentDivisions(task.graph(), unit.patches).slice(0, forms < manyBentForms ? mostBent : 1);
  return bent.map(({ line, path, arcs, length, bends, first, second }) => ({
    kind: 'seam',
    bends,
    line,
    path,
    arcs,
    length,
    branches: [branch(first), branch(second)],
  }));
};

const mostEven = (chords: readonly Chord[]): Chord =>
  chords.reduce((a, b) =>
    Math.abs(b.first.length - b.second.length) < Math.abs(a.first.length - a.second.length) ? b : a,
  );

const formsIn = (join: Join): readonly number[] => join.branches.flatMap((b) => ('form' in b ? [b.form] : []));

/** The best making of the root, built up from the best few of every smaller form. */
const bestMaking = (options: ReadonlyMap<number, readonly Join[]>, root: number): Making => {
  const makings = new Map<number, readonly Making[]>();
  const order = smallestFirst(options, root);
  if (order.length > manyForms) return plainMaking(options, order, root);
  const most = keptMakings(order.length);
  for (const form of order) {
    const found = new Map<string, Making>();
    for (const join of options.get(form) as readonly Join[]) {
      for (const making of makingsOf(form, join, makings)) {
        const key = [...making.joins.keys()].sort((a, b) => a - b).join();
        const known = found.get(key);
        if (!known || isBetter(making, known)) found.set(key, making);
      }
    }
    makings.set(
      form,
      [...found.values()].sort((a, b) => (isBetter(a, b) ? -1 : isBetter(b, a) ? 1 : 0)).slice(0, most),
    );
  }
  return (makings.get(root) as readonly Making[])[0] as Making;
};

/** For very many forms: each takes the chord of least count and depth, as if its parts shared nothing but being the same. */
const plainMaking = (options: ReadonlyMap<number, readonly Join[]>, order: readonly number[], root: number): Making => {
  const best = new Map<number, { readonly join: Join; readonly count: number; readonly depth: number }>();
  for (const form of order) {
    for (const join of options.get(form) as readonly Join[]) {
      const parts = [...new Set(formsIn(join))].map((part) => best.get(part) as { count: number; depth: number });
      const count = parts.reduce((all, part) => all + part.count, 1);
      const depth = 1 + Math.max(0, ...parts.map((part) => part.depth));
      const known = best.get(form);
      if (!known || count < known.count || (count === known.count && depth < known.depth))
        best.set(form, { join, count, depth });
    }
  }
  const joins = new Map([...best].map(([form, { join }]) => [form, join] as const));
  const needed = onlyNeeded({ ...nothing, joins }, root);
  const cornersIn = (join: Join): number => (join.kind === 'seam' ? join.bends : 0);
  const all = [...needed.joins.values()];
  return {
    ...needed,
    setIn: all.reduce((sum, join) => sum + cornersIn(join), 0),
    partial: all.filter((join) => join.kind === 'ring').length,
    curved: all.filter(isCurved).length,
  };
};

const isCurved = (join: Join): boolean => join.kind === 'seam' && join.arcs.length > 0;

const isBetter = (a: Making, b: Making): boolean => {
  const difference =
    a.setIn - b.setIn ||
    a.partial - b.partial ||
    a.curved - b.curved ||
    a.joins.size - b.joins.size ||
    a.depth - b.depth;
  return difference === 0 ? a.lies < b.lies : difference < 0;
};

const nothing: Making = { joins: new Map(), setIn: 0, partial: 0, curved: 0, depth: 0, lies: '' };

/** Every way to put together makings of the parts; where two made a shared form differently, the earlier part's way stands. */
const makingsOf = (form: number, join: Join, makings: ReadonlyMap<number, readonly Making[]>): readonly Making[] => {
  const most = join.branches.length > 2 ? 1 : Number.POSITIVE_INFINITY;
  const own: Making = {
    ...nothing,
    joins: new Map([[form, join]]),
    setIn: join.kind === 'seam' ? join.bends : 0,
    partial: join.kind === 'ring' ? 1 : 0,
    curved: isCurved(join) ? 1 : 0,
    lies: join.kind === 'seam' ? `${join.line.lie}` : '3',
  };
  const whole = join.branches.reduce<readonly Making[]>(
    (sofar, branch) => {
      const ways = 'form' in branch ? (makings.get(branch.form) as readonly Making[]).slice(0, most) : [nothing];
      return sofar.flatMap((a) => ways.map((b) => together(a, b)));
    },
    [own],
  );
  return whole.map((making) => ({ ...making, depth: making.depth + 1 }));
};

const together = (a: Making, b: Making): Making => ({
  joins: new Map([...b.joins, ...a.joins]),
  setIn: a.setIn + b.setIn,
  partial: a.partial + b.partial,
  curved: a.curved + b.curved,
  depth: Math.max(a.depth, b.depth),
  lies: a.lies + b.lies,
});

/** Forms so ordered that parts come before what is made of them. */
const smallestFirst = (options: ReadonlyMap<number, readonly Join[]>, root: number): readonly number[] => {
  const order: number[] = [];
  const state = new Map<number, 'open' | 'done'>();
  const walk: number[] = [root];
  while (walk.length > 0) {
    const form = walk.at(-1) as number;
    if (state.get(form) === 'done') {
      walk.pop();
      continue;
    }
    if (state.get(form) === 'open') {
      walk.pop();
      state.set(form, 'done');
      order.push(form);
      continue;
    }
    state.set(form, 'open');
    for (const join of options.get(form) as readonly Join[]) {
      for (const part of formsIn(join)) if (!state.has(part)) walk.push(part);
    }
  }
  return order;
};

interface Proof {
  readonly options: ReadonlyMap<number, readonly Join[]>;
  readonly root: number;
  readonly searched: Making;
  readonly patches: number;
  readonly kinds: number;
  readonly kindOf: readonly number[];
}

/**
 * Searches sets of forms for fewer different units, then among equals for less depth.
 * Bound: every form still to be made is one join, and t joins reach at most t + (forms waiting) kinds or forms not met yet.
 */
const provenLeast = (proof: Proof): JoinTree => {
  const { root, patches } = proof;
  let best = onlyNeeded(proof.searched, root);
  const proven = searchMakings({
    ...proof,
    limit: patches <= provenUpTo ? proofSteps.small : proofSteps.large,
    worthwhile: (least) => least < best.joins.size,
    found: (making) => {
      best = making;
    },
  });
  if (best.depth > Math.ceil(Math.log2(patches))) {
    searchMakings({
      ...proof,
      limit: choiceSteps,
      worthwhile: (least) => least <= best.joins.size,
      found: (making) => {
        if (isBetter(making, best)) best = making;
      },
    });
  }
  return { joins: best.joins, root, leastUnits: proven ? 'proven' : 'searched' };
};

/** Drops the joins that are not needed: where two parts made a shared form differently, one way stands. */
const onlyNeeded = (making: Making, root: number): Making => {
  const joins = new Map<number, Join>();
  const waiting = [root];
  for (let form = waiting.pop(); form !== undefined; form = waiting.pop()) {
    if (joins.has(form)) continue;
    const join = making.joins.get(form) as Join;
    joins.set(form, join);
    waiting.push(...formsIn(join));
  }
  return { ...making, joins, depth: depthOf(joins, root), lies: liesOf(joins, root) };
};

/** Visits every set of joins that makes the root; false when the limit came first. */
const searchMakings = (task: {
  readonly options: ReadonlyMap<number, readonly Join[]>;
  readonly root: number;
  readonly kinds: number;
  readonly kindOf: readonly number[];
  readonly limit: number;
  readonly worthwhile: (leastUnits: number) => boolean;
  readonly found: (making: Making) => void;
}): boolean => {
  const chosen = new Map<number, Join>();
  let steps = 0;
  const visit = (waiting: readonly number[], met: ReadonlySet<number>): boolean => {
    if (++steps > task.limit) return false;
    const missing = task.kinds - met.size;
    if (!task.worthwhile(chosen.size + Math.max(waiting.length, missing - waiting.length))) return true;
    const form = waiting[0];
    if (form === undefined) {
      const joins = new Map(chosen);
      task.found({ ...nothing, joins, depth: depthOf(joins, task.root), lies: liesOf(joins, task.root) });
      return true;
    }
    for (const join of task.options.get(form) as readonly Join[]) {
      chosen.set(form, join);
      const next = waiting.slice(1);
      for (const part of formsIn(join)) if (!chosen.has(part) && !next.includes(part)) next.push(part);
      const seen = new Set(met);
      for (const part of join.branches) if ('patch' in part) seen.add(task.kindOf[part.patch] as number);
      const went = visit(next, seen);
      chosen.delete(form);
      if (!went) return false;
    }
    return true;
  };
  return visit([task.root], new Set());
};

const depthOf = (joins: ReadonlyMap<number, Join>, form: number, known = new Map<number, number>()): number => {
  const before = known.get(form);
  if (before !== undefined) return before;
  const depth = 1 + Math.max(0, ...formsIn(joins.get(form) as Join).map((part) => depthOf(joins, part, known)));
  known.set(form, depth);
  return depth;
};

const liesOf = (joins: ReadonlyMap<number, Join>, form: number): string => {
  const join = joins.get(form) as Join;
  return `${join.kind === 'seam' ? join.line.lie : 3}${formsIn(join)
    .map((part) => liesOf(joins, part))
    .join('')}`;
};
