// Patches joined: a seam between them is taken out again.
import { type CrossedEdge, pointOnArc } from '#ground/arc';
import { isNear, type Side, sidesOf, splitAt } from '#ground/outline';
import { type Polygon, signedArea, withoutStraightCorners } from '#ground/plane';
import { arcsKept, edgesIn, patchIn } from './curves.ts';
import type { DrawnPatch } from './patch.ts';

/**
 * One outline round several that share edges. Null where they do not make one patch: some lie apart, meet at a corner alone, or close
 * round a hole.
 */
export const unionOf = (outlines: readonly Polygon[], slack: number): Polygon | null => {
  const outer = walkedSides(outlines, slack)
    .filter(({ isBetween }) => !isBetween)
    .map(({ side }) => side);
  const [first, ...rest] = outer;
  if (first === undefined) return null;
  const ring = [first[0]];
  let end = first[1];
  const left = [...rest];
  while (!isNear(end, first[0], slack)) {
    const next = left.findIndex(([a]) => isNear(a, end, slack));
    if (next < 0) return null;
    ring.push(end);
    end = (left.splice(next, 1)[0] as Side)[1];
  }
  if (left.length > 0) return null;
  const isTwice = ring.some((p, i) => ring.some((q, k) => k > i && isNear(p, q, slack)));
  const outline = withoutStraightCorners(ring, slack);
  return isTwice || outline.length < 3 || signedArea(outline) <= 0 ? null : outline;
};

/** The seams between patches: each stretch once, straight or along an arc. */
export const seamsBetween = (patches: readonly DrawnPatch[], slack: number): readonly CrossedEdge[] => {
  const bent = patches.flatMap(edgesIn).flatMap(({ from, to, arc }) => (arc === null ? [] : [{ from, to, arc }]));
  const curves = bent.filter(({ arc }, i) => {
    const middle = pointOnArc(arc, 0.5);
    return bent.slice(0, i).some((other) => isNear(pointOnArc(other.arc, 0.5), middle, 4 * slack));
  });
  const corners = new Set(patches.flatMap((patch) => edgesIn(patch).flatMap(({ arc, chords }) => (arc ? chords : []))));
  const straight = walkedSides(
    patches.map(({ points }) => points),
    slack,
  )
    .filter(({ isBetween }) => isBetween)
    .map(({ side }) => side)
    // chords are no seams
    .filter((side) => !side.some((p) => corners.has(p)))
    .filter(([a, b], i, all) => !all.slice(0, i).some(([c, d]) => isNear(a, d, slack) && isNear(b, c, slack)))
    .map(([from, to]): CrossedEdge => ({ from, to, arc: null }));
  return [...straight, ...curves];
};

/** Every side from corner to corner, whichever outline the corner is of. An edge that is walked both ways lies between two of them. */
const walkedSides = (
  outlines: readonly Polygon[],
  slack: number,
): readonly { readonly side: Side; readonly isBetween: boolean }[] => {
  const corners = outlines.flat();
  const sides = outlines.flatMap((outline) => sidesOf(outline).flatMap((side) => splitAt(side, corners, slack)));
  return sides.map((side) => ({
    side,
    isBetween: sides.some(([c, d]) => isNear(side[0], d, slack) && isNear(side[1], c, slack)),
  }));
};

/** The seams between the chosen patches are taken out: they become one, in the tone of the first. Null where they make no one patch. */
export const joined = (
  patches: readonly DrawnPatch[],
  chosen: readonly number[],
  slack: number,
): readonly DrawnPatch[] | null => {
  const own = chosen.flatMap((index) => patches[index] ?? []);
  const [first] = own;
  if (first === undefined || own.length < 2) return null;
  const points = unionOf(
    own.map((patch) => patch.points),
    slack,
  );
  if (points === null) return null;
  const outline = arcsKept(points, own.flatMap(edgesIn));
  if (outline === null) return null;
  const whole = patchIn(outline, first.tone);
  const place = Math.min(...chosen);
  return patches.flatMap((patch, index) => (index === place ? [whole] : chosen.includes(index) ? [] : [patch]));
};
