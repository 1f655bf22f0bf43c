// Every seam of a block where it lies: a unit that is made four times has its seams in four places, turned.
import { centroid, type Point, type Polygon, quarterTurned, signedArea, turned } from '#ground/plane';
import { type Branch, type Join, type JoinTree, patchesOf } from './join.ts';
import { wholeTurn } from './machine.ts';
import type { SeamInPlace, SewingStep } from './pieced.ts';

/** Of a form's first unit: the steps that join it, first and one past the last, as places in the block's steps. */
export type StepsOfForm = ReadonlyMap<number, readonly [from: number, to: number]>;

/** Brings the first unit of a form to a place where it is needed. */
interface Place {
  /** Radians, clockwise, about `from`, which then lies at `to`. */
  readonly turn: number;
  readonly from: Point;
  readonly to: Point;
}

/**
 * The seams of all units that a tree makes, each in its place, a unit's own after those of its parts.
 *
 * @param outlines of the block's patches
 * @param steps    of the first unit of every form
 */
export const seamsInPlace = (of: {
  readonly outlines: readonly Polygon[];
  readonly tree: JoinTree;
  readonly steps: readonly SewingStep[];
  readonly stepsOfForm: StepsOfForm;
}): readonly SeamInPlace[] => {
  const { outlines, tree, steps, stepsOfForm } = of;
  const middleOf = middlesOf(outlines);
  const joinOf = (form: number): Join => tree.joins.get(form) as Join;
  const seams: SeamInPlace[] = [];
  const lay = (form: number, place: Place): void => {
    for (const branch of joinOf(form).branches) if ('form' in branch) lay(branch.form, placeOf(branch, place));
    const [from, to] = stepsOfForm.get(form) as readonly [number, number];
    for (let step = from; step < to; step++) seams.push(laid(steps[step] as SewingStep, step, place));
  };
  const placeOf = (branch: Extract<Branch, { form: number }>, within: Place): Place => ({
    turn: within.turn + branch.turn,
    from: middleOf(joinOf(branch.form).branches.flatMap(patchesOf)),
    to: moved(within, middleOf(branch.patches)),
  });
  const middle = middleOf(joinOf(tree.root).branches.flatMap(patchesOf));
  lay(tree.root, { turn: 0, from: middle, to: middle });
  return seams;
};

const laid = (step: SewingStep, index: number, place: Place): SeamInPlace => ({
  step: index,
  path: step.line.map((p) => moved(place, p)),
  heading: wholeTurn(step.heading + (place.turn * 180) / Math.PI),
});

const moved = ({ turn, from, to }: Place, p: Point): Point => {
  const quarters = turn / (Math.PI / 2);
  const off = { x: p.x - from.x, y: p.y - from.y };
  const isQuarter = Math.abs(quarters - Math.round(quarters)) < 1e-9;
  const { x, y } = isQuarter ? quarterTurned(off, Math.round(quarters)) : turned(off, turn);
  return { x: to.x + x, y: to.y + y };
};

/** The middle of a unit's cloth. */
const middlesOf = (outlines: readonly Polygon[]): ((patches: readonly number[]) => Point) => {
  const areas = outlines.map(signedArea);
  const centres = outlines.map(centroid);
  return (patches) => {
    let [all, x, y] = [0, 0, 0];
    for (const patch of patches) {
      const area = areas[patch] as number;
      all += area;
      x += area * (centres[patch] as Point).x;
      y += area * (centres[patch] as Point).y;
    }
    return { x: x / all, y: y / all };
  };
};
