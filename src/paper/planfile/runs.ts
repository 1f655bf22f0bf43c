// Outlines and seams as the plan file has them: a pair for each corner, and for an arc, as in the document, where it leads to,
// round which centre and which way.
import { type Arc, edgesOf, type Outline } from '#ground/arc';
import type { Point, Polygon } from '#ground/plane';

type Pair = readonly [number, number];

export type RunEntry =
  | Pair
  | { readonly to: Pair; readonly centre: Pair; readonly sweep: 'clockwise' | 'counterclockwise' };

export const pair = ({ x, y }: Point): Pair => [x, y];

/** An arc that leads back to the first corner stands in its place. */
export const outlineEntries = (outline: Outline): readonly RunEntry[] => {
  const edges = edgesOf(outline);
  return edges.map(({ from }, i) => entry(from, edges.at(i - 1)?.arc ?? null));
};

/** From end to end. */
export const lineEntries = (points: Polygon, arcs: readonly Arc[]): readonly RunEntry[] => {
  const [first, last] = [points[0] as Point, points.at(-1) as Point];
  const edges = edgesOf({ points, arcs });
  const back = edges.findIndex(({ from, arc }) => arc === null && from.x === last.x && from.y === last.y);
  const walked = [...edges.slice(back + 1), ...edges.slice(0, back)];
  return [pair(first), ...walked.map(({ to, arc }) => entry(to, arc))];
};

const entry = (at: Point, arc: Arc | null): RunEntry =>
  arc === null
    ? pair(at)
    : { to: pair(at), centre: pair(arc.centre), sweep: arc.clockwise ? 'clockwise' : 'counterclockwise' };
