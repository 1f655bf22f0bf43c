// Parts of circles on doubles. x runs right, y runs down: clockwise is as on screen.
import { at, distance, type Point } from '#ground/plane';

/** From one point to another about a centre that is equally far from both; never a whole circle. */
export interface Arc {
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly clockwise: boolean;
}

/** The arc through both ends: where its centre is not equally far from them it moves to the nearest place that is. */
export const arcThrough = ({ from, to, centre, clockwise }: Arc): Arc => {
  const far = [distance(from, centre), distance(to, centre)] as const;
  if (Math.abs(far[0] - far[1]) < 1e-14 * far[0]) return { from, to, centre, clockwise };
  const middle = at((from.x + to.x) / 2, (from.y + to.y) / 2);
  const [nx, ny] = [from.y - to.y, to.x - from.x];
  const share = ((centre.x - middle.x) * nx + (centre.y - middle.y) * ny) / (nx * nx + ny * ny);
  return { from, to, centre: at(middle.x + nx * share, middle.y + ny * share), clockwise };
};

/**
 * The arc from one point to another whose middle lies so far from the middle of its chord, to the left hand of the way there,
 * or, below zero, to the right.
 *
 * @param of.rise not zero
 */
export const arcWithRise = (of: { readonly from: Point; readonly to: Point; readonly rise: number }): Arc => {
  const { from, to, rise } = of;
  const chord = distance(from, to);
  const left = at((to.y - from.y) / chord, (from.x - to.x) / chord);
  const toCentre = rise - (chord ** 2 / 4 + rise ** 2) / (2 * rise);
  const middle = at((from.x + to.x) / 2, (from.y + to.y) / 2);
  return { from, to, centre: at(middle.x + left.x * toCentre, middle.y + left.y * toCentre), clockwise: rise > 0 };
};

/** How far its middle lies from the middle of its chord; below zero to the right hand of the way along it. */
export const riseOf = (arc: Arc): number => radiusOf(arc) * (1 - Math.cos(sweepOf(arc) / 2)) * (arc.clockwise ? 1 : -1);

export const radiusOf = ({ from, centre }: Arc): number => distance(centre, from);

/** How far it turns about its centre, in radians: above 0, below a whole turn. */
export const sweepOf = ({ from, to, centre, clockwise }: Arc): number => {
  const [ax, ay, bx, by] = [from.x - centre.x, from.y - centre.y, to.x - centre.x, to.y - centre.y];
  const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by) * (clockwise ? 1 : -1);
  return turn > 0 ? turn : turn + 2 * Math.PI;
};

export const arcLength = (arc: Arc): number => radiusOf(arc) * sweepOf(arc);

export const reversedArc = ({ from, to, centre, clockwise }: Arc): Arc => ({
  from: to,
  to: from,
  centre,
  clockwise: !clockwise,
});

/** The place at a share of its length. */
export const pointOnArc = (arc: Arc, share: number): Point => {
  const { from, centre, clockwise } = arc;
  const turn = sweepOf(arc) * share * (clockwise ? 1 : -1);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const [x, y] = [from.x - centre.x, from.y - centre.y];
  return at(centre.x + x * c - y * s, centre.y + x * s + y * c);
};

/** Unit vector in which it leaves its first end, or arrives at its last. */
export const arcDirection = (arc: Arc, end: 'from' | 'to'): Point => {
  const { centre, clockwise } = arc;
  const r = radiusOf(arc);
  const [x, y] = [(arc[end].x - centre.x) / r, (arc[end].y - centre.y) / r];
  return clockwise ? at(-y, x) : at(y, -x);
};

/** What lies between it and its chord: added to the area of a clockwise outline by a clockwise arc, taken from it by the other. */
export const bowArea = (arc: Arc): number => {
  const turn = sweepOf(arc);
  return ((radiusOf(arc) ** 2 * (turn - Math.sin(turn))) / 2) * (arc.clockwise ? 1 : -1);
};

/** Chords that none of them span more of a circle than this, however coarse they may be. Our own figure. */
const widestChord = Math.PI / 16;

/**
 * The places between its ends at which chords meet that lie no further from it than `chord`. Walked either way the same
 * doubles come out.
 */
export const chordPoints = (arc: Arc, chord: number): readonly Point[] => {
  const { from, to } = arc;
  if (from.x > to.x || (from.x === to.x && from.y > to.y)) return chordPoints(reversedArc(arc), chord).toReversed();
  const turn = sweepOf(arc);
  const widest = Math.min(widestChord, 2 * Math.acos(Math.max(0, 1 - chord / radiusOf(arc))));
  const count = Math.ceil(turn / widest - 1e-9);
  return Array.from({ length: count - 1 }, (_, i) => pointOnArc(arc, (i + 1) / count));
};

/** Whether a place on its circle lies on the arc, ends included, told with `slack` along it. */
export const isAlongArc = (p: Point, arc: Arc, slack: number): boolean => {
  const r = radiusOf(arc);
  const turn = sweepOf({ ...arc, to: p });
  return turn <= sweepOf(arc) + slack / r || turn >= 2 * Math.PI - slack / r;
};

export const isOnArc = (p: Point, arc: Arc, slack: number): boolean =>
  Math.abs(distance(p, arc.centre) - radiusOf(arc)) < slack && isAlongArc(p, arc, slack);

/** Its ends, and the places where it is furthest up, down, left and right: its box is theirs. */
export const arcExtremes = (arc: Arc): readonly Point[] => {
  const { from, to, centre } = arc;
  const r = radiusOf(arc);
  const outermost = [at(r, 0), at(0, r), at(-r, 0), at(0, -r)].map((p) => at(centre.x + p.x, centre.y + p.y));
  return [from, to, ...outermost.filter((p) => isAlongArc(p, arc, 0))];
};
