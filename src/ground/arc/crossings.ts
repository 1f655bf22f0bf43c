// Where an arc crosses or touches another edge, between the ends of both.
import { isOnSide } from '#ground/outline';
import { at, distance, type Point } from '#ground/plane';
import { type Arc, isOnArc, radiusOf } from './arc.ts';

export interface CrossedEdge {
  readonly from: Point;
  readonly to: Point;
  readonly arc: Arc | null;
}

/**
 * Places on both; where they touch within the slack, the one place in the middle of it. None where both are straight, or lie on
 * one circle.
 */
export const arcCrossings = (a: CrossedEdge, b: CrossedEdge, slack: number): readonly Point[] =>
  onBothLines(a, b, slack).filter((p) => isOn(p, a, slack) && isOn(p, b, slack));

const isOn = (p: Point, { from, to, arc }: CrossedEdge, slack: number): boolean =>
  arc === null ? isOnSide(p, [from, to], slack) : isOnArc(p, arc, slack);

const onBothLines = (a: CrossedEdge, b: CrossedEdge, slack: number): readonly Point[] => {
  if (a.arc !== null && b.arc !== null) return circlesMeet(a.arc, b.arc, slack);
  if (a.arc !== null) return circleOnLine(a.arc, b, slack);
  return b.arc === null ? [] : circleOnLine(b.arc, a, slack);
};

const circleOnLine = (arc: Arc, { from, to }: CrossedEdge, slack: number): readonly Point[] => {
  const long = distance(from, to);
  const along = at((to.x - from.x) / long, (to.y - from.y) / long);
  const middle = (arc.centre.x - from.x) * along.x + (arc.centre.y - from.y) * along.y;
  const foot = at(from.x + along.x * middle, from.y + along.y * middle);
  const [far, r] = [distance(foot, arc.centre), radiusOf(arc)];
  return besides(foot, { along, far, r, slack });
};

const circlesMeet = (a: Arc, b: Arc, slack: number): readonly Point[] => {
  const apart = distance(a.centre, b.centre);
  if (apart < slack) return [];
  const toward = at((b.centre.x - a.centre.x) / apart, (b.centre.y - a.centre.y) / apart);
  const [r, other] = [radiusOf(a), radiusOf(b)];
  const far = (apart ** 2 + r ** 2 - other ** 2) / (2 * apart);
  const foot = at(a.centre.x + toward.x * far, a.centre.y + toward.y * far);
  return besides(foot, { along: at(-toward.y, toward.x), far: Math.abs(far), r, slack });
};

/** The two places of a circle beside the foot of its centre on a line; one where it only touches, none where it falls short. */
const besides = (
  foot: Point,
  of: { readonly along: Point; readonly far: number; readonly r: number; readonly slack: number },
): readonly Point[] => {
  const { along, far, r, slack } = of;
  if (Math.abs(far - r) < slack) return [foot];
  if (far > r) return [];
  const half = Math.sqrt(r ** 2 - far ** 2);
  return [-half, half].map((by) => at(foot.x + along.x * by, foot.y + along.y * by));
};
