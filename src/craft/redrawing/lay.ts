// A patch laid on others: what lies under it is cut away. And what of a block lies bare, or double.
import { type Edge, reversedEdge } from '#ground/arc';
import { clockwise, isNear, type Side, sidesOf } from '#ground/outline';
import {
  at,
  type Box,
  boxOf,
  distance,
  innerPoint,
  isInside,
  type Point,
  type Polygon,
  signedArea,
} from '#ground/plane';
import { arcsKept, dividedAlike, edgesIn, patchIn } from './curves.ts';
import { cutOutline } from './cut.ts';
import { unionOf } from './join.ts';
import { type Drawn, type DrawnPatch, slackOf } from './patch.ts';

/**
 * The patch is the last; those under it end at its edge.
 *
 * @returns null where one of them would end within an arc, or at one
 */
export const laidOn = (
  patches: readonly DrawnPatch[],
  laid: DrawnPatch,
  slack: number,
): readonly DrawnPatch[] | null => {
  const box = boxOf(laid.points);
  const left = patches.map((patch): readonly DrawnPatch[] | null => {
    if (!liesIn(box, patch.points, slack)) return [patch];
    const { outside, inside } = partedBy(patch.points, laid.points, slack);
    if (inside.length === 0 || outside.length === 0) return inside.length === 0 ? [patch] : [];
    const edges = [patch, laid].flatMap(edgesBothWays);
    const parts = outside.map((points) => arcsKept(points, edges));
    if (parts.includes(null)) return null;
    return parts.flatMap((part) => (part === null ? [] : [patchIn(part, patch.tone)]));
  });
  return left.includes(null) ? null : dividedAlike([...left.flatMap((own) => own ?? []), laid], slack);
};

/** What ends at a patch runs along its edges the other way. */
const edgesBothWays = (patch: DrawnPatch): readonly Edge[] =>
  edgesIn(patch).flatMap((edge) => [edge, reversedEdge(edge)]);

interface Parted {
  readonly inside: readonly Polygon[];
  readonly outside: readonly Polygon[];
}

/** An outline cut where another lies over it. Both run clockwise. */
const partedBy = (outline: Polygon, over: Polygon, slack: number): Parted => {
  if (!touches(outline, over, slack)) return { inside: [], outside: [outline] };
  const ring = [...over, over[0] as Point];
  const parts = cutOutline(outline, ring, slack);
  const sorted = sortedBy(parts, over);
  if (parts.length > 1 || !isWithin(over, outline, slack)) return sorted;
  // it lies inside and touches the edge at one corner or none: a line along one of its sides reaches it
  const reached = cutOutline(outline, throughSide(over, outline), slack);
  if (reached.length === 1) return sorted;
  const again = reached.map((part) => partedBy(part, over, slack));
  // no more of that line stays than is needed
  const outside = again.flatMap((part) => part.outside);
  return { inside: again.flatMap(({ inside }) => inside), outside: merged(outside, slack) };
};

const sortedBy = (parts: readonly Polygon[], over: Polygon): Parted => {
  const isUnder = (part: Polygon): boolean => isInside(innerPoint(part), over);
  return { inside: parts.filter(isUnder), outside: parts.filter((part) => !isUnder(part)) };
};

const isWithin = (inner: Polygon, outer: Polygon, slack: number): boolean => {
  const box = boxOf(outer);
  const own = boxOf(inner);
  return (
    own.x > box.x - slack &&
    own.y > box.y - slack &&
    own.x + own.width < box.x + box.width + slack &&
    own.y + own.height < box.y + box.height + slack &&
    isInside(innerPoint(inner), outer) &&
    !isSame(inner, outer, slack)
  );
};

const isSame = (a: Polygon, b: Polygon, slack: number): boolean =>
  Math.abs(signedArea(a) - signedArea(b)) < slack && a.every((p) => b.some((q) => isNear(p, q, slack)));

/** A line along the longest side of one outline, through all of another. */
const throughSide = (over: Polygon, outline: Polygon): readonly Point[] => {
  const far = ([from, to]: Side): number => distance(from, to);
  const [a, b] = sidesOf(over).reduce((best, side) => (far(side) > far(best) + 1e-9 ? side : best));
  const box = boxOf(outline);
  const reach = (2 * Math.hypot(box.width, box.height)) / far([a, b]);
  const [dx, dy] = [(b.x - a.x) * reach, (b.y - a.y) * reach];
  return [at(a.x - dx, a.y - dy), at(b.x + dx, b.y + dy)];
};

/** Whether the boxes round two outlines lie over each other. */
const touches = (a: Polygon, b: Polygon, slack: number): boolean => liesIn(boxOf(a), b, slack);

/** Whether an outline has something within a box, or may have. */
const liesIn = ({ x, y, width, height }: Box, points: Polygon, slack: number): boolean => {
  let [left, right, above, below] = [true, true, true, true];
  for (const p of points) {
    left &&= p.x <= x + slack;
    right &&= p.x >= x + width - slack;
    above &&= p.y <= y + slack;
    below &&= p.y >= y + height - slack;
  }
  return !(left || right || above || below);
};

/** Parts of one thing that share an edge are one again, where that makes a plain outline. */
const merged = (parts: readonly Polygon[], slack: number): readonly Polygon[] => {
  const left = [...parts];
  for (let i = 0; i < left.length; i++) {
    for (let k = i + 1; k < left.length; k++) {
      const both = unionOf([left[i] as Polygon, left[k] as Polygon], slack);
      if (both === null) continue;
      left.splice(k, 1);
      left[i] = both;
      k = i;
    }
  }
  return left;
};

export interface Faults {
  /** Where no patch lies. */
  readonly bare: readonly Polygon[];
  /** Where two lie, the later over the earlier. */
  readonly double: readonly { readonly patches: readonly [number, number]; readonly points: Polygon }[];
}

const apart: Parted = { inside: [], outside: [] };

export const faultsOf = ({ grid, patches }: Drawn): Faults => {
  const slack = slackOf(grid);
  const outlines = patches.map(({ points }) => clockwise(points));
  const whole: Polygon = [at(0, 0), at(grid[0], 0), at(grid[0], grid[1]), at(0, grid[1])];
  let bare: readonly Polygon[] = [whole];
  for (const points of outlines) bare = bare.flatMap((part) => partedBy(part, points, slack).outside);
  const boxes = outlines.map(boxOf);
  const double = outlines.flatMap((over, later) =>
    outlines.slice(0, later).flatMap((under, earlier) =>
      (liesIn(boxes[later] as Box, under, slack) ? partedBy(under, over, slack) : apart).inside.map((points) => ({
        patches: [earlier, later] as const,
        points,
      })),
    ),
  );
  const least = slack * Math.max(...grid);
  return {
    bare: merged(
      bare.filter((part) => signedArea(part) > least),
      slack,
    ),
    double: double.filter(({ points }) => signedArea(points) > least),
  };
};
