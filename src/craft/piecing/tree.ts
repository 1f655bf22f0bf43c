// The order of joining a straight-seam block: a tree of chords. Least different units first, then least
// depth, then rows before columns, then reading order. For blocks of up to twelve patches the number of
// different units is proven least by search over sets of forms; beyond, each form takes the best of its
// own chords (a search, and said to be one).
import { type Chord, chordsOf, type Drawing, type SeamLine } from './chords.ts';
import type { UnitForm } from './congruence.ts';

/** A part of a join: a single patch, or a unit of a form. */
export type Branch =
  | { readonly patch: number }
  | { readonly form: number; readonly turn: number; readonly patches: readonly number[] };

export interface Join {
  readonly line: SeamLine;
  /** Above or left of the seam, then below or right of it, as they lie in the form's first unit. */
  readonly first: Branch;
  readonly second: Branch;
}

export interface JoinTree {
  /** How each form in the tree is made. */
  readonly joins: ReadonlyMap<number, Join>;
  readonly root: number;
  readonly leastUnits: 'proven' | 'searched';
}

/** A unit that no straight seam divides. */
export interface Stuck {
  readonly stuck: readonly number[];
}

/** One way to make a form, all its parts included. */
interface Making {
  readonly joins: ReadonlyMap<number, Join>;
  readonly depth: number;
  /** The lie of every seam, the last sewn first: the smaller text has rows before columns. */
  readonly lies: string;
}

/** Blocks of up to so many patches have their number of different units proven least. */
export const provenUpTo = 12;
/** A drawing with more forms than this is divided at the first chord from then on. */
const mostForms = 20_000;
/** Makings kept for each form: many while forms are few. */
const keptMakings = (forms: number): number => (forms <= 200 ? 8 : forms <= 2000 ? 3 : 1);
/** Steps of the proof up to `provenUpTo` patches and beyond, and of the choice among equals after it. */
const proofSteps = { small: 400_000, large: 5_000 } as const;
const choiceSteps = 5_000;

export const planJoins = (block: {
  readonly drawing: Drawing;
  readonly formOf: (unit: readonly number[]) => UnitForm;
  readonly kindOf: readonly number[];
}): JoinTree | Stuck => {
  const all = block.kindOf.map((_, i) => i);
  const root = block.formOf(all).form;
  const grown = growForms(block, all, root);
  if ('stuck' in grown) return grown;
  const searched = bestMaking(grown, root);
  return provenLeast({ options: grown, root, searched, kindOf: block.kindOf });
};

/** Every form that can occur, with every way to join it. */
const growForms = (
  block: { readonly drawing: Drawing; readonly formOf: (unit: readonly number[]) => UnitForm },
  all: readonly number[],
  root: number,
): ReadonlyMap<number, readonly Join[]> | Stuck => {
  const options = new Map<number, readonly Join[]>();
  // the first unit met stands for its form: turns are counted from it
  const firstUnits = new Map<number, readonly number[]>([[root, all]]);
  const waiting = [root];
  const branch = (patches: readonly number[]): Branch => {
    if (patches.length === 1) return { patch: patches[0] as number };
    const { form, turn } = block.formOf(patches);
    if (!firstUnits.has(form)) {
      firstUnits.set(form, patches);
      waiting.push(form);
    }
    return { form, turn, patches };
  };
  for (let form = waiting.pop(); form !== undefined; form = waiting.pop()) {
    const unit = firstUnits.get(form) as readonly number[];
    const chords = chordsOf(block.drawing, unit);
    if (chords.length === 0) return { stuck: unit };
    const taken = options.size < mostForms ? chords : [mostEven(chords)];
    options.set(
      form,
      taken.map((chord) => ({ line: chord.line, first: branch(chord.first), second: branch(chord.second) })),
    );
  }
  return options;
};

const mostEven = (chords: readonly Chord[]): Chord =>
  chords.reduce((a, b) =>
    Math.abs(b.first.length - b.second.length) < Math.abs(a.first.length - a.second.length) ? b : a,
  );

const formsIn = (join: Join): readonly number[] =>
  [join.first, join.second].flatMap((b) => ('form' in b ? [b.form] : []));

/** The best making of the root, built up from the best few of every smaller form. */
const bestMaking = (options: ReadonlyMap<number, readonly Join[]>, root: number): Making => {
  const makings = new Map<number, readonly Making[]>();
  const order = smallestFirst(options, root);
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

const isBetter = (a: Making, b: Making): boolean => {
  const difference = a.joins.size - b.joins.size || a.depth - b.depth;
  return difference === 0 ? a.lies < b.lies : difference < 0;
};

/** Every pair of makings of the two parts that agree on the forms they share. */
const makingsOf = (form: number, join: Join, makings: ReadonlyMap<number, readonly Making[]>): readonly Making[] => {
  const nothing: readonly Making[] = [{ joins: new Map(), depth: 0, lies: '' }];
  const waysOf = (branch: Branch) => ('form' in branch ? (makings.get(branch.form) as readonly Making[]) : nothing);
  return waysOf(join.first).flatMap((first) =>
    waysOf(join.second).flatMap((second): readonly Making[] => {
      const joins = new Map([...second.joins, ...first.joins, [form, join] as const]);
      const lies = `${join.line.lie}${first.lies}${second.lies}`;
      return [{ joins, depth: 1 + Math.max(first.depth, second.depth), lies }];
    }),
  );
};

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
  readonly kindOf: readonly number[];
}

/**
 * Searches sets of forms for fewer different units, then among equals for less depth.
 * Bound: every form still to be made is one join, and t joins reach at most t + (forms waiting) kinds or forms not met yet.
 */
const provenLeast = (proof: Proof): JoinTree => {
  const { options, root, kindOf } = proof;
  const patches = kindOf.length;
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
      options,
      root,
      kindOf,
      limit: choiceSteps,
      worthwhile: (least) => least <= best.joins.size,
      found: (making) => {
        if (isBetter(making, best)) best = making;
      },
    });
  }
  return { joins: best.joins, root, leastUnits: proven ? 'proven' : 'searched' };
};

/** Where two parts made a shared form differently, one way stands; drops what is no longer needed. */
const onlyNeeded = (making: Making, root: number): Making => {
  const joins = new Map<number, Join>();
  const need = (form: number): void => {
    if (joins.has(form)) return;
    const join = making.joins.get(form) as Join;
    joins.set(form, join);
    for (const part of formsIn(join)) need(part);
  };
  need(root);
  return { joins, depth: depthOf(joins, root), lies: liesOf(joins, root) };
};

/** Visits every set of joins that makes the root; false when the limit came first. */
const searchMakings = (task: {
  readonly options: ReadonlyMap<number, readonly Join[]>;
  readonly root: number;
  readonly kindOf: readonly number[];
  readonly limit: number;
  readonly worthwhile: (leastUnits: number) => boolean;
  readonly found: (making: Making) => void;
}): boolean => {
  const kinds = new Set(task.kindOf).size;
  const chosen = new Map<number, Join>();
  let steps = 0;
  const visit = (waiting: readonly number[], met: ReadonlySet<number>): boolean => {
    if (++steps > task.limit) return false;
    const missing = kinds - met.size;
    if (!task.worthwhile(chosen.size + Math.max(waiting.length, missing - waiting.length))) return true;
    const form = waiting[0];
    if (form === undefined) {
      task.found({ joins: new Map(chosen), depth: depthOf(chosen, task.root), lies: liesOf(chosen, task.root) });
      return true;
    }
    for (const join of task.options.get(form) as readonly Join[]) {
      chosen.set(form, join);
      const next = waiting.slice(1);
      for (const part of formsIn(join)) if (!chosen.has(part) && !next.includes(part)) next.push(part);
      const seen = new Set(met);
      for (const part of [join.first, join.second]) if ('patch' in part) seen.add(task.kindOf[part.patch] as number);
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
  return `${join.line.lie}${formsIn(join)
    .map((part) => liesOf(joins, part))
    .join('')}`;
};
