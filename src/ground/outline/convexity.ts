// Which units are convex, and their outlines.
import { hullOf, type Point, type Polygon, perimeter, signedArea } from '#ground/plane';

/** The outline of a unit that is convex, null of any other: its patches fill their convex outline. Asked often, so remembered. */
export const convexOutlines = (
  outlines: readonly Polygon[],
  slack: number,
): ((unit: readonly number[]) => Polygon | null) => {
  const areas = outlines.map(signedArea);
  const known = new Map<string, Polygon | null>();
  const cornersOf = cornersOnce(outlines);
  return (unit) => {
    const key = unit.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    const hull = hullOf(cornersOf(unit), slack);
    const bare = signedArea(hull) - unit.reduce((all, i) => all + (areas[i] as number), 0);
    const outline = bare < 8 * slack * perimeter(hull) ? hull : null;
    known.set(key, outline);
    return outline;
  };
};

/** The corners of a unit's patches, those that several patches share to the last bit once. */
const cornersOnce = (outlines: readonly Polygon[]): ((unit: readonly number[]) => readonly Point[]) => {
  const known = new Map<number, Map<number, number>>();
  const points: Point[] = [];
  const indexOf = (p: Point): number => {
    const column = known.get(p.x) ?? new Map<number, number>();
    known.set(p.x, column);
    const index = column.get(p.y) ?? points.push(p) - 1;
    column.set(p.y, index);
    return index;
  };
  const cornersOf = outlines.map((outline) => outline.map(indexOf));
  const asked = new Int32Array(points.length);
  let times = 0;
  return (unit) => {
    times++;
    const corners: Point[] = [];
    for (const patch of unit) {
      for (const index of cornersOf[patch] as readonly number[]) {
        if (asked[index] === times) continue;
        asked[index] = times;
        corners.push(points[index] as Point);
      }
    }
    return corners;
  };
};
