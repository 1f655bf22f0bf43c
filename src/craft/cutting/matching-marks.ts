// Where are two pieces laid on each other along a curved seam? At the middle of every arc, at its quarters where it is long, and
// where a seam of the other side comes to it: the same places on both pieces, since both have the same arcs.
import { type Arc, arcDirection, arcLength, type Outline, pointOnArc } from '#ground/arc';
import { at, type Point } from '#ground/plane';

/** On the seam line, and square to it on the cut edge. */
export interface MatchingMark {
  readonly on: Point;
  readonly out: Point;
}

/** Arcs longer than so many allowances have marks at their quarters too: 6 in at ¼. Our own figure. */
const longArc = 24;

/** @param outline clockwise, its arcs divided at the corners of its neighbours. @source docs/formulas.md#curved-template */
export const matchingMarks = ({ arcs }: Outline, seam: number): readonly MatchingMark[] => {
  const starts = new Set(arcs.map(({ from, centre }) => placeOf(from, centre, seam)));
  return arcs.flatMap((arc) => {
    const shares = arcLength(arc) > longArc * seam ? [0.25, 0.5, 0.75] : [0.5];
    const meets = starts.has(placeOf(arc.to, arc.centre, seam)) ? [1] : [];
    return [...shares, ...meets].map((share) => markAt(arc, share, seam));
  });
};

/** An arc that goes on round the same centre: a corner of the other side lies between. */
const placeOf = (p: Point, centre: Point, seam: number): string =>
  [p.x, p.y, centre.x, centre.y].map((v) => Math.round((v / seam) * 1e3)).join();

const markAt = (arc: Arc, share: number, seam: number): MatchingMark => {
  const on = share === 1 ? arc.to : pointOnArc(arc, share);
  const { x, y } = arcDirection({ ...arc, to: on }, 'to');
  return { on, out: at(on.x + y * seam, on.y - x * seam) };
};
