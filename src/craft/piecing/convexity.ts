// Which units are convex.
import { hullOf, type Polygon, perimeter, signedArea } from '#ground/plane';

/** A unit is convex when its patches fill their convex outline; asked often, so remembered. */
export const convexityOf = (outlines: readonly Polygon[], slack: number): ((unit: readonly number[]) => boolean) => {
  const areas = outlines.map(signedArea);
  const known = new Map<string, boolean>();
  return (unit) => {
    const key = unit.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    const hull = hullOf(
      unit.flatMap((i) => outlines[i] as Polygon),
      slack,
    );
    const bare = signedArea(hull) - unit.reduce((all, i) => all + (areas[i] as number), 0);
    const convex = bare < 8 * slack * perimeter(hull);
    known.set(key, convex);
    return convex;
  };
};
