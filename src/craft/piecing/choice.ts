// Choosing one join for every form: what a choice costs, the search of all choices for a few patches, and the
// search for better ones nearby for many.

import { type Choice, curvesOf, formsIn, type Join, type JoinTask, type JoinTree, type Ways } from './join.ts';
import { laidOut } from './laid-out.ts';

export interface ChoiceCost {
  /** Inside corners, rings and curved seams, over the whole block. */
  readonly corners: number;
  readonly rings: number;
  readonly curves: number;
  /** Different units that are needed. */
  readonly units: number;
  readonly depth: number;
}

export const compareCosts = (a: ChoiceCost, b: ChoiceCost): number =>
  a.corners - b.corners || a.rings - b.rings || a.curves - b.curves || a.units - b.units || a.depth - b.depth;

/** Only the forms that the root needs count. */
export const costOfChoice = (choice: Choice, root: number): ChoiceCost => {
  const known = new Map<number, Omit<ChoiceCost, 'units'>>();
  const visit = (form: number): Omit<ChoiceCost, 'units'> => {
    const before = known.get(form);
    if (before) return before;
    const join = choice.get(form) as Join;
    let corners = join.kind === 'seam' ? join.bends : 0;
    let rings = join.kind === 'ring' ? 1 : 0;
    let curves = curvesOf(join);
    let depth = 0;
    for (const branch of join.branches) {
      if ('patch' in branch) continue;
      const part = visit(branch.form);
      corners += part.corners;
      rings += part.rings;
      curves += part.curves;
      depth = Math.max(depth, part.depth);
    }
    const cost = { corners, rings, curves, depth: depth + 1 };
    known.set(form, cost);
    return cost;
  };
  return { ...visit(root), units: known.size };
};

/** Forms visited in weighing choices nearby. */
const nearbyWork = 60_000;

/** Changes the join of one form after another as long as that makes the whole cost less. */
export const improved = (ways: Ways, start: Choice): Choice => {
  const choice = new Map(start);
  let cost = costOfChoice(choice, ways.root);
  let spent = 0;
  for (let isBetter = true; isBetter && spent < nearbyWork; ) {
    isBetter = false;
    for (const form of neededBy(choice, ways.root)) {
      const joins = ways.joins.get(form) as readonly Join[];
      if (joins.length === 1) continue;
      for (const join of joins) {
        const before = choice.get(form) as Join;
        if (join === before || spent > nearbyWork) continue;
        choice.set(form, join);
        const other = costOfChoice(choice, ways.root);
        spent += other.units;
        if (compareCosts(other, cost) < 0) {
          cost = other;
          isBetter = true;
        } else choice.set(form, before);
      }
    }
  }
  return choice;
};

const neededBy = (choice: Choice, root: number): readonly number[] => {
  const needed = new Set([root]);
  for (const form of needed) for (const part of formsIn(choice.get(form) as Join)) needed.add(part);
  return [...needed];
};

/**
 * Visits every choice that makes the root of at most as many different units as `worthwhile` allows; false when the
 * steps came to an end first. Bound: every form still to be made is one join, and t joins reach at most t + (forms
 * waiting) kinds or forms not met yet.
 */
export const searchChoices = (of: {
  readonly task: JoinTask;
  readonly ways: Ways;
  /** Kinds of piece in the block. */
  readonly kinds: number;
  readonly steps: number;
  readonly worthwhile: (leastUnits: number) => boolean;
  readonly found: (choice: Choice) => void;
}): boolean => {
  const { ways, task } = of;
  const chosen = new Map<number, Join>();
  const timesMet = new Map<number, number>();
  let missing = of.kinds;
  let steps = 0;
  const meet = (join: Join, times: 1 | -1): void => {
    for (const branch of join.branches) {
      if (!('patch' in branch)) continue;
      const kind = task.kindOf[branch.patch] as number;
      const before = timesMet.get(kind) ?? 0;
      timesMet.set(kind, before + times);
      if (times === 1 && before === 0) missing--;
      if (times === -1 && before === 1) missing++;
    }
  };
  const visit = (waiting: readonly number[]): boolean => {
    if (++steps > of.steps) return false;
    if (!of.worthwhile(chosen.size + Math.max(waiting.length, missing - waiting.length))) return true;
    const form = waiting[0];
    if (form === undefined) {
      of.found(new Map(chosen));
      return true;
    }
    for (const join of ways.joins.get(form) as readonly Join[]) {
      chosen.set(form, join);
      meet(join, 1);
      const next = waiting.slice(1);
      for (const part of formsIn(join)) if (!chosen.has(part) && !next.includes(part)) next.push(part);
      const went = visit(next);
      meet(join, -1);
      chosen.delete(form);
      if (!went) return false;
    }
    return true;
  };
  return visit([ways.root]);
};

/** Rows before columns, then reading order: the last seam first, a unit before its parts, each form once. */
export const comesBefore = (of: {
  readonly task: JoinTask;
  readonly ways: Ways;
  readonly a: Choice;
  readonly b: Choice;
}): boolean => {
  const [a, b] = [laidOut(of.task, of.ways, of.a), laidOut(of.task, of.ways, of.b)].map(seamsOf) as [
    readonly Seam[],
    readonly Seam[],
  ];
  const byLie = firstDifference(a, b, (m, n) => m.lie - n.lie);
  return (byLie || firstDifference(a, b, (m, n) => (Math.abs(m.place - n.place) < 1e-6 ? 0 : n.place - m.place))) < 0;
};

interface Seam {
  readonly lie: number;
  readonly place: number;
}

const ringLie = 3;

const seamsOf = (tree: Pick<JoinTree, 'joins'>): readonly Seam[] =>
  [...tree.joins.values()].map((join) => (join.kind === 'ring' ? { lie: ringLie, place: 0 } : join.line));

const firstDifference = (a: readonly Seam[], b: readonly Seam[], difference: (a: Seam, b: Seam) => number): number => {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    const found = difference(a[i] as Seam, b[i] as Seam);
    if (found !== 0) return found;
  }
  return 0;
};
