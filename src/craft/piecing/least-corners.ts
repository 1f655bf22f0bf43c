// The fewest inside corners, then the fewest partial seams, then the least costly curves, that a unit can be joined with, and every division that
// leads there. Looks at every order of joining: for units of a few patches.

import { bestFirst, chordAlong, splitsOf } from '#craft/chords';
import { bentDivisions, mostBends } from './bent.ts';
import { alongChord, type Division } from './division.ts';
import { curveCost, type JoinTask } from './join.ts';
import { ringsOf } from './ring.ts';
import { sparing } from './whole.ts';

interface Trouble {
  readonly corners: number;
  readonly rings: number;
  readonly curves: number;
}

/**
 * For each unit its divisions of least trouble, parts and all.
 *
 * Where a straight seam divides a unit, it is part of an order of least trouble (so is a ring, for the corners): every
 * other order can be followed on both sides of it.
 *
 * @source docs/formulas.md#joining-order
 */
export const leastDivisions = (
  task: JoinTask,
): ((unit: { readonly patches: readonly number[] }) => readonly Division[]) => {
  const known = new Map<number, Trouble>();
  const straightOf = straightDivisions(task);

  const troubleWith = (division: Division): Trouble =>
    division.parts.map(troubleOf).reduce(sum, {
      corners: division.kind === 'seam' ? division.bends : 0,
      rings: division.kind === 'ring' ? 1 : 0,
      curves: division.kind === 'seam' ? curveCost(division.arcs) : 0,
    });
  const troubleOf = (unit: readonly number[]): Trouble => {
    if (unit.length === 1) return none;
    const { form } = task.formOf(unit);
    const found = known.get(form) ?? leastOf(unit);
    known.set(form, found);
    return found;
  };
  const leastOf = (unit: readonly number[]): Trouble => {
    const straight = straightOf(unit);
    if (straight[0] && !task.isCurved) return troubleWith(straight[0]);
    const graph = task.graph();
    let least = [...straight, ...ringsOf(graph, unit)].map(troubleWith).reduce(lesser, most);
    for (let bends = 1; bends <= Math.min(least.corners, mostBends); bends++)
      least = bentDivisions({ graph, unit, bends }).map(troubleWith).reduce(lesser, least);
    return least;
  };
  return ({ patches: unit }) => {
    const least = troubleOf(unit);
    const straight = straightOf(unit);
    if (least.corners + least.rings + least.curves === 0 && !task.isCurved) return straight;
    const graph = task.graph();
    const bent = Array.from({ length: Math.min(least.corners, mostBends) }, (_, i) =>
      bentDivisions({ graph, unit, bends: i + 1 }),
    );
    return [...straight, ...ringsOf(graph, unit), ...bent.flat()].filter((division) => {
      const trouble = troubleWith(division);
      return lesser(least, trouble) === least && lesser(trouble, least) === trouble;
    });
  };
};

/** Along chords where the unit is convex, else along any run of edges from rim to rim that does not bend. */
const straightDivisions =
  (task: JoinTask) =>
  (unit: readonly number[]): readonly Division[] =>
    task.isConvex(unit) && !task.isCurved
      ? sparing({ ...task, splits: splitsOf(task.drawing, unit).toSorted(bestFirst), unit }).map((split) =>
          alongChord(chordAlong(task.drawing, split, unit)),
        )
      : bentDivisions({ graph: task.graph(), unit, bends: 0 });

const none: Trouble = { corners: 0, rings: 0, curves: 0 };
const most: Trouble = { corners: Number.POSITIVE_INFINITY, rings: 0, curves: 0 };

const sum = (a: Trouble, b: Trouble): Trouble => ({
  corners: a.corners + b.corners,
  rings: a.rings + b.rings,
  curves: a.curves + b.curves,
});

/** The first where they are alike. */
const lesser = (a: Trouble, b: Trouble): Trouble =>
  (b.corners - a.corners || b.rings - a.rings || b.curves - a.curves) < 0 ? b : a;
