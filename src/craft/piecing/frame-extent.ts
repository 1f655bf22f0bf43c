// How far does a part of the top reach, and along what stretch of each of its sides could it be sewn? Seen in
// the frame of the run or round that joins it.
import { turnedBy } from '#craft/setting';
import { boxOf, type Point, type Polygon } from '#ground/plane';

export type Edge = 'left' | 'right' | 'top' | 'bottom';

type Span = readonly [from: number, to: number];

export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** What lies on each side of the box: along y at left and right, along x at top and bottom. */
  readonly edges: Readonly<Record<Edge, Span>>;
}

/** @param angle of the frame, clockwise from the top's */
export const extentOf = (of: {
  readonly outlines: readonly Polygon[];
  readonly angle: number;
  readonly slack: number;
}): Extent => {
  const points = of.outlines.flatMap((outline) => outline.map((p) => turnedBy(p, -of.angle)));
  const { x: left, y: top, width, height } = boxOf(points);
  const [right, bottom] = [left + width, top + height];
  const upright = (x: number): Span => spanOf(points.filter((p) => Math.abs(p.x - x) < of.slack).map(({ y }) => y));
  const level = (y: number): Span => spanOf(points.filter((p) => Math.abs(p.y - y) < of.slack).map(({ x }) => x));
  const edges = { left: upright(left), right: upright(right), top: level(top), bottom: level(bottom) };
  return { left, right, top, bottom, edges };
};

const spanOf = (places: readonly number[]): Span => [Math.min(...places), Math.max(...places)];

const opposite: Readonly<Record<Edge, Edge>> = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' };

/** How long a seam is that joins a second part to that side of the first: where the two lie against each other. */
export const seamBetween = (first: Extent, second: Extent, side: Edge): number => {
  const mine = first.edges[side];
  const its = second.edges[opposite[side]];
  return Math.min(mine[1], its[1]) - Math.max(mine[0], its[0]);
};

/** That seam's ends, in the frame: from the top down, or from left to right. */
export const seamAlong = (first: Extent, second: Extent, side: Edge): readonly [Point, Point] => {
  const [mine, its] = [first.edges[side], second.edges[opposite[side]]];
  const [from, to] = [Math.max(mine[0], its[0]), Math.min(mine[1], its[1])];
  const at = first[side];
  return side === 'left' || side === 'right'
    ? [
        { x: at, y: from },
        { x: at, y: to },
      ]
    : [
        { x: from, y: at },
        { x: to, y: at },
      ];
};

/**
 * The extent of both together.
 *
 * @param across what the second reaches beyond the first along the seam: counted in a run, left hanging in a
 *               round (the ends of a border that is still to be mitred)
 */
export const joinedExtent = (of: {
  readonly first: Extent;
  readonly second: Extent;
  readonly side: Edge;
  readonly across: 'counted' | 'hanging';
  readonly slack: number;
}): Extent => {
  const { first, second, side, slack } = of;
  const along = side === 'left' || side === 'right' ? (['left', 'right'] as const) : (['top', 'bottom'] as const);
  const box = { left: first.left, right: first.right, top: first.top, bottom: first.bottom };
  for (const edge of ['left', 'right', 'top', 'bottom'] as const) {
    if (of.across === 'hanging' && !(along as readonly Edge[]).includes(edge)) continue;
    const further = edge === 'left' || edge === 'top' ? Math.min : Math.max;
    box[edge] = further(first[edge], second[edge]);
  }
  const edge = (name: Edge): Span => {
    const spans = [first, second]
      .filter((one) => Math.abs(one[name] - box[name]) < slack)
      .map(({ edges }) => edges[name]);
    return spanOf(spans.flat());
  };
  return { ...box, edges: { left: edge('left'), right: edge('right'), top: edge('top'), bottom: edge('bottom') } };
};

/** In the frame; every point turned back from it. */
export const inFrame = (points: Polygon, angle: number): Polygon => points.map((p: Point) => turnedBy(p, -angle));
