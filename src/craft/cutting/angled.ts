// Can a patch be cut from strips at an angle, side by side with its like, and from which? Says nothing of how many fit a
// strip (`angled-row.ts`) nor whether that saves cloth (`angled-choice.ts`).
import { type Length, length, toNearestMark, upToMark } from '#craft/measure';
import { type Rational, toNumber } from '#ground/exact';
import { at, distance, grown, isConvex, offLine, type Point, type Polygon } from '#ground/plane';
import type { Row } from './angled-row.ts';
import type { CutRule } from './rule.ts';

/** One way to lie in a strip: with this side, or these two parallel ones, along the strip's edges. */
export interface StripWay {
  /** Pieces that share it are cut from one strip; a mirror image has its own, which is `mirrorKey` here. */
  readonly key: string;
  readonly mirrorKey: string;
  /** Cuts that are all parallel, or that lean by turns one way and the other, each second piece turned by a half turn. */
  readonly cuts: 'parallel' | 'alternate';
  /**
   * Width of the strip, then what is measured from cut to cut: for parallel cuts their distance, square to them, else the
   * longer edge along the strip.
   */
  readonly finished: readonly [Length, Length];
  readonly exact: readonly [Length, Length];
  /** On marks: the nearest where a ruler cuts it, else up, for a template keeps its outline. */
  readonly size: readonly [Length, Length];
  /** Degrees between the strip's edge and the cut at the left and right end of the longer edge, inside the piece. */
  readonly angles: readonly [number, number];
  /** With a template where the angle or the size is none that a ruler shows. */
  readonly cutBy: 'ruler' | 'template';
  /** How the strip's edges lie in the block. */
  readonly lies: 'across' | 'along' | 'slanted';
  /** The piece as it is cut, in its strip. */
  readonly row: Row;
  /**
   * Outward: the piece looks the same turned, but only its sides along the strip are on the straight grain, and one of
   * these must come to lie on the block's edge. Any: it does not matter, or no other side fits.
   */
  readonly edge: 'any' | 'outward';
  /** The finished outline in it, where it is the first of the row. */
  readonly seamLine: Polygon;
  /** Marks that the length of a strip goes up to. */
  readonly ruler: Rational;
}

/** Lines that rulers for rotary cutting carry, and the other side of them: common practice, no source. */
const rulerAngles = [30, 45, 60, 90, 120, 135, 150];
/** Our own: over 10 in it moves a cut by less than 0.01 in. */
const angleTolerance = 0.05;
/** Of the finest mark: 1/32 in at marks of 1/8 in, the error that S34 warns of in the diamonds of a large star. */
const markShare = 1 / 4;
/** Two sides are parallel, and two lengths one, to this share of the patch. */
const tolerance = 1e-6;

/** A way, and the side of the outline that it lies on. */
export interface WayOnSide {
  readonly way: StripWay;
  readonly side: readonly [Point, Point];
}

/**
 * Triangles lie on each of their sides, blunted at the strip's other edge; parallelograms on either pair of sides,
 * trapezoids on the parallel one. None for any other shape.
 *
 * @param outline clockwise, finished, without corners on straight sides
 * @source docs/formulas.md#strips-at-an-angle
 */
export const stripWaysFor = (outline: Polygon, rule: CutRule): readonly WayOnSide[] => {
  const size = Math.max(...outline.map((p, i) => distance(p, outline[(i + 1) % outline.length] as Point)));
  if (!isConvex(outline, tolerance * size)) return [];
  return basesOf(outline, tolerance * size).map((base) => {
    const side = [outline[base], outline[(base + 1) % outline.length]] as [Point, Point];
    return { way: wayFor(seenFrom(outline, base, rule.seam), rule, liesOf(side)), side };
  });
};

/** Sides that may lie along a strip; of a pair of parallel ones the first. */
const basesOf = (outline: Polygon, slack: number): readonly number[] => {
  if (outline.length === 3) return [0, 1, 2];
  if (outline.length !== 4) return [];
  return [0, 1].filter((i) => {
    const [a, b, c, d] = [0, 1, 2, 3].map((k) => outline[(i + k) % 4]) as [Point, Point, Point, Point];
    return Math.abs(offLine(a, b, c) - offLine(a, b, d)) <= slack;
  });
};

const liesOf = ([a, b]: readonly [Point, Point]): StripWay['lies'] => {
  const slack = tolerance * distance(a, b);
  return Math.abs(b.y - a.y) < slack ? 'across' : Math.abs(b.x - a.x) < slack ? 'along' : 'slanted';
};

/** A piece on its base, longer edge below: what the lean of a side is for one unit upward, and lengths along the edges. */
interface OnBase {
  readonly height: { readonly finished: number; readonly cut: number };
  readonly bottom: { readonly finished: number; readonly cut: number };
  readonly left: number;
  readonly right: number;
  /** The finished outline, from the lower left corner of the cut piece; x to the right, y downward. */
  readonly seamLine: Polygon;
}

const seenFrom = (outline: Polygon, base: number, seam: Length): OnBase => {
  const n = outline.length;
  const [right, left, next, last] = [0, 1, 2, n - 1].map((k) => outline[(base + k) % n]) as [
    Point,
    Point,
    Point,
    Point,
  ];
  const long = distance(right, left);
  /** From the left end of the base to the right, and upward. */
  const along = (p: Point): number =>
    ((p.x - left.x) * (right.x - left.x) + (p.y - left.y) * (right.y - left.y)) / long;
  const up = (p: Point): number => offLine(right, left, p);
  const sharp = grown(outline, seam);
  const height = up(next);
  const cut = height + 2 * seam;
  const leans = { left: along(next) / up(next), right: (along(last) - long) / up(last) };
  const bottom = along(sharp[base] as Point) - along(sharp[(base + 1) % n] as Point);
  const top = bottom + cut * (leans.right - leans.left);
  const start = along(sharp[(base + 1) % n] as Point);
  const seamLine = outline.map((p) => at(along(p) - start, -up(p) - seam));
  const onBase = { height: { finished: height, cut }, bottom: { finished: long, cut: bottom }, ...leans, seamLine };
  if (top <= bottom + tolerance * bottom) return onBase;
  // turned by a half turn, its other parallel side is the longer one
  const other = long + height * (leans.right - leans.left);
  const end = cut * leans.left + top;
  return {
    ...onBase,
    bottom: { finished: other, cut: top },
    left: leans.right,
    right: leans.left,
    seamLine: seamLine.map((p) => at(end - p.x, -cut - p.y)),
  };
};

const wayFor = (of: OnBase, rule: CutRule, lies: StripWay['lies']): StripWay => {
  const isParallel = Math.abs(of.left - of.right) * of.height.cut <= tolerance * of.bottom.cut;
  const sine = 1 / Math.hypot(1, of.left);
  const measured = (edge: number): Length => length(isParallel ? edge * sine : edge);
  const finished = [length(of.height.finished), measured(of.bottom.finished)] as const;
  const exact = [length(of.height.cut), measured(of.bottom.cut)] as const;
  const nearest = [toNearestMark(exact[0], rule.ruler).size, toNearestMark(exact[1], rule.ruler).size] as const;
  const angles = [angleOf(of.left), angleOf(-of.right)] as const;
  const leans = { left: leanOf(angles[0]), right: -leanOf(angles[1]) };
  const across = 1 / Math.hypot(1, leans.left);
  const ruled = rowFor(leans, nearest[0], isParallel ? nearest[1] / across : nearest[1]);
  const row = rowFor(of, of.height.cut, of.bottom.cut);
  const isOn = exact.every(
    (side, i) => Math.abs(side - (nearest[i] as number)) <= markShare * toNumber(rule.ruler) + 1e-9,
  );
  const isRuled =
    isOn && ruled.top > 0 && nearest.every((side) => side > 0) && angles.every((angle) => rulerAngles.includes(angle));
  return {
    ...keysFor(of, isParallel),
    cuts: isParallel ? 'parallel' : 'alternate',
    finished,
    exact,
    size: isRuled ? nearest : [upToMark(exact[0], rule.ruler).size, upToMark(exact[1], rule.ruler).size],
    angles,
    cutBy: isRuled ? 'ruler' : 'template',
    lies,
    row: isRuled ? ruled : row,
    edge: 'any',
    seamLine: of.seamLine.map((p) => at(p.x - Math.min(0, row.lean), p.y + row.height)),
    ruler: rule.ruler,
  };
};

const rowFor = (of: Pick<OnBase, 'left' | 'right'>, height: number, bottom: number): Row => ({
  height,
  bottom,
  top: bottom + height * (of.right - of.left),
  lean: height * of.left,
});

/** Degrees of a side that moves so far sideways for one upward; those near a line of the ruler are its. */
const angleOf = (lean: number): number => {
  const angle = (Math.atan2(1, lean) * 180) / Math.PI;
  return rulerAngles.find((known) => Math.abs(known - angle) <= angleTolerance) ?? angle;
};

const leanOf = (angle: number): number => (angle === 90 ? 0 : 1 / Math.tan((angle * Math.PI) / 180));

/** A rhombus is its own mirror image, whichever way it leans. */
const keysFor = (of: OnBase, isParallel: boolean): Pick<StripWay, 'key' | 'mirrorKey'> => {
  const { height, bottom, left, right } = of;
  const isRhombus = isParallel && Math.abs(bottom.cut / Math.hypot(1, left) - height.cut) <= 1e-5 * height.cut;
  const key = (a: number, b: number): string =>
    [height.cut, bottom.cut, a * height.cut, b * height.cut].map((side) => rounded(side)).join(' ');
  if (isRhombus) {
    const either = key(Math.abs(left), Math.abs(left));
    return { key: either, mirrorKey: either };
  }
  return { key: key(left, right), mirrorKey: key(-right, -left) };
};

/** The shift keeps simple fractions away from the places where rounding changes. */
const rounded = (side: number): number => Math.floor(side * 1e4 + 0.3183);
