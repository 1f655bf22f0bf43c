// Choosing one join for every form: what a choice costs, the search of all choices for a few patches, and the
// search for better ones nearby for many.

import type { Choice, JoinTask, JoinTree, Ways } from './join.ts';
import { laidOut } from './laid-out.ts';
import type { Picked, WeighedJoin, WeighedWays } from './weighed.ts';

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

/** What picked joins cost: only the forms that the root needs count. Made once for a block, asked for every change of a join. */
export const costsFrom = (root: number, forms: number): ((picked: Picked) => ChoiceCost) => {
  const [corners, rings, curves, depths] = [0, 1, 2, 3].map(() => new Int32Array(forms)) as [Sums, Sums, Sums, Sums];
  const asked = new Int32Array(forms);
  let times = 0;
  let units = 0;
  const visit = (picked: Picked, form: number): void => {
    asked[form] = times;
    units++;
    const one = picked[form] as WeighedJoin;
    let depth = 0;
    let ownCorners = one.corners;
    let ownRings = one.rings;
    let ownCurves = one.curves;
    for (const part of one.forms) {
      if (asked[part] !== times) visit(picked, part);
      ownCorners += corners[part] as number;
      ownRings += rings[part] as number;
      ownCurves += curves[part] as number;
      if ((depths[part] as number) > depth) depth = depths[part] as number;
    }
    corners[form] = ownCorners;
    rings[form] = ownRings;
    curves[form] = ownCurves;
    depths[form] = depth + 1;
  };
  return (picked) => {
    times++;
    units = 0;
    visit(picked, root);
    return {
      corners: corners[root] as number,
      rings: rings[root] as number,
      curves: curves[root] as number,
      units,
      depth: depths[root] as number,
    };
  };
};

type Sums = Int32Array;

/** Forms visited in weighing choices nearby. */
const nearbyWork = 60_000;

/** Changes the join of one form after another as long as that makes the whole cost less. */
export const improved = (of: {
  readonly weighed: WeighedWays;
  readonly root: number;
  readonly costOf: (picked: Picked) => ChoiceCost;
  readonly start: Picked;
}): Picked => {
  const { costOf } = of;
  const picked = [...of.start];
  let cost = costOf(picked);
  let spent = 0;
  for (let isBetter = true; isBetter && spent < nearbyWork; ) {
    isBetter = false;
    for (const form of neededBy(picked, of.root)) {
      const joins = of.weighed[form] as readonly WeighedJoin[];
      if (joins.length === 1) continue;
      for (const join of joins) {
        const before = picked[form] as WeighedJoin;
        if (join === before || spent > nearbyWork) continue;
        picked[form] = join;
        const other = costOf(picked);
        spent += other.units;
        if (compareCosts(other, cost) < 0) {
          cost = other;
          isBetter = true;
        } else picked[form] = before;
      }
    }
  }
  return picked;
};

const neededBy = (picked: Picked, root: number): readonly number[] => {
  const needed = new Set([root]);
  for (const form of needed) for (const part of (picked[form] as WeighedJoin).forms) needed.add(part);
  return [...needed];
};

/**
 * Visits every choice that makes the root of at most as many different units as `worthwhile` allows; false when the
 * steps came to an end first. Bound: every form still to be made is one join, and t joins reach at most t + (forms
 * waiting) kinds or forms not met yet.
 */
export const searchChoices = (of: {
  readonly weighed: WeighedWays;
  readonly root: number;
  /** Kinds of piece in the block. */
  readonly kinds: number;
  readonly steps: number;
  readonly worthwhile: (leastUnits: number) => boolean;
  /** The picked joins as they stand: to be kept they must be copied. */
  readonly found: (picked: Picked) => void;
}): boolean => {
  const { weighed } = of;
  const picked: Picked = weighed.map(() => undefined);
  const timesMet: number[] = [];
  let missing = of.kinds;
  let steps = 0;
  const meet = (kind: number): void => {
    const before = timesMet[kind] ?? 0;
    timesMet[kind] = before + 1;
    if (before === 0) missing--;
  };
  const leave = (kind: number): void => {
    const before = timesMet[kind] as number;
    timesMet[kind] = before - 1;
    if (before === 1) missing++;
  };
  /** Forms still to be made are those from a place on: one row for all of the search, cut back on the way back. */
  const row = [of.root];
  const isInRow = new Uint8Array(weighed.length);
  isInRow[of.root] = 1;
  const visit = (from: number): boolean => {
    if (++steps > of.steps) return false;
    const waiting = row.length - from;
    if (!of.worthwhile(from + Math.max(waiting, missing - waiting))) return true;
    const form = row[from];
    if (form === undefined) {
      of.found(picked);
      return true;
    }
    for (const one of weighed[form] as readonly WeighedJoin[]) {
      picked[form] = one;
      one.kinds.forEach(meet);
      for (const need of one.forms) {
        if (isInRow[need] === 0) row.push(need);
        isInRow[need] = 1;
      }
      const went = visit(from + 1);
      while (row.length > from + waiting) isInRow[row.pop() as number] = 0;
      one.kinds.forEach(leave);
      if (!went) return false;
    }
    picked[form] = undefined;
    return true;
  };
  return visit(0);
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
