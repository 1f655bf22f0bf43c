// How one patch is cut: its shape grown by the seam allowance, brought to a shape that a ruler cuts, on
// marks. Grain lies parallel to the sides of the block.

import type { QuarterTurn } from '#craft/design';
import { type Length, length, tidy, toNearestMark, upToMark } from '#craft/measure';
import type { Outline } from '#ground/arc';
import { at, boxOf, distance, grown, type Point, type Polygon } from '#ground/plane';
import { stripWaysFor } from './angled.ts';
import type { Cut } from './cloth.ts';
import { curvedCut } from './curved.ts';
import type { CutRule } from './rule.ts';
import { templatePairFor } from './template-pairs.ts';

/** Cut of a patch with straight sides, or with arcs among them. */
export const patchCut = (outline: Outline, rule: CutRule): Cut =>
  outline.arcs.length === 0 ? cutFor(outline.points, rule) : curvedCut(outline, rule);

/**
 * Cut of a patch with straight sides, sized exactly and on marks: triangles go up (they are trimmed after sewing), squares
 * and rectangles to the nearest mark (they must match untrimmed), templates keep their outline and are
 * laid out by a box that goes up. Whether a template is cut from strips at an angle, or in pairs, is chosen later.
 *
 * @param outline clockwise, finished, in the block's frame, no corners on straight sides
 * @source docs/formulas.md#offset-triangle, #offset-rectangle, #template
 */
export const cutFor = (outline: Polygon, rule: CutRule): Cut => {
  const rectangle = rectangleSides(outline);
  if (rectangle) return rectangleCut(rectangle, rule);
  const triangle = rightIsosceles(outline);
  if (triangle?.grain === 'legs') {
    const square = halfSquareFor(triangle.leg, rule.seam);
    return triangleCut({
      shape: 'half-square',
      gives: 2,
      finished: [triangle.leg, triangle.leg],
      exact: square,
      rule,
      stand: triangle.stand,
    });
  }
  if (triangle?.grain === 'long-side') {
    const square = quarterSquareFor(triangle.long, rule.seam);
    return triangleCut({
      shape: 'quarter-square',
      gives: 4,
      finished: [triangle.long, length(triangle.long / 2)],
      exact: square,
      rule,
      stand: triangle.stand,
    });
  }
  return templateCut(outline, rule);
};

/**
 * A rectangle's cut: each side longer by two allowances, to the nearest mark.
 *
 * @param finished across and down, above zero
 */
export const rectangleCut = (finished: readonly [Length, Length], rule: CutRule): Cut => {
  const exact = [length(finished[0] + 2 * rule.seam), length(finished[1] + 2 * rule.seam)] as const;
  const size = [toNearestMark(exact[0], rule.ruler).size, toNearestMark(exact[1], rule.ruler).size] as const;
  const even = Math.abs(exact[0] - exact[1]) < 1e-9;
  return { shape: even ? 'square' : 'rectangle', finished, exact, size, gives: 1, template: null };
};

/**
 * Side of the square which, cut once corner to corner, gives two triangles for half-square-triangle units.
 * Sized for a seam on all three sides; adds no trimming room.
 *
 * @param leg  finished short side of the triangle, above zero
 * @param seam seam allowance, same unit, above zero
 * @returns same unit, exact: leg + (2 + √2)·seam; not yet a ruler mark (`upToMark`)
 * @source docs/formulas.md#offset-triangle
 */
export const halfSquareFor = (leg: Length, seam: Length): Length => length(leg + (2 + Math.SQRT2) * seam);

/**
 * Side of the square which, cut twice corner to corner, gives four triangles with their long side on the straight grain.
 *
 * @param long finished long side, above zero
 * @param seam seam allowance, same unit, above zero
 * @returns same unit, exact: long + (2 + 2√2)·seam
 * @source docs/formulas.md#offset-triangle
 */
export const quarterSquareFor = (long: Length, seam: Length): Length => length(long + (2 + 2 * Math.SQRT2) * seam);

const triangleCut = (of: {
  readonly shape: 'half-square' | 'quarter-square';
  readonly gives: 2 | 4;
  readonly finished: readonly [Length, Length];
  readonly exact: Length;
  readonly rule: CutRule;
  readonly stand: QuarterTurn;
}): Cut => {
  const size = upToMark(of.exact, of.rule.ruler).size;
  return {
    shape: of.shape,
    finished: of.finished,
    exact: [of.exact, of.exact],
    size: [size, size],
    gives: of.gives,
    stand: of.stand,
    template: null,
  };
};

/**
 * The cut outline of any other shape: grown by the allowance, corners sharper than a right angle blunted
 * where they stand more than one allowance beyond the seam's corner.
 */
const templateCut = (outline: Polygon, rule: CutRule): Cut => {
  const sharp = grown(outline, rule.seam);
  const points = outline.flatMap((corner, i) => bluntedCorner({ outline, sharp, corner, i, seam: rule.seam }));
  const box = boxOf(points);
  const shift = (p: Point): Point => ({ x: p.x - box.x, y: p.y - box.y });
  const shifted = points.map(shift);
  const exact = [length(box.width), length(box.height)] as const;
  const inner = boxOf(outline);
  return {
    shape: 'template',
    finished: [length(inner.width), length(inner.height)],
    exact,
    size: [upToMark(exact[0], rule.ruler).size, upToMark(exact[1], rule.ruler).size],
    gives: 1,
    template: { points: shifted, seamLine: outline.map(shift) },
    pair: templatePairFor(shifted, rule.ruler),
    ways: stripWaysFor(outline, rule).map(({ way }) => way),
  };
};

const bluntedCorner = (of: {
  readonly outline: Polygon;
  readonly sharp: Polygon;
  readonly corner: Point;
  readonly i: number;
  readonly seam: Length;
}): readonly Point[] => {
  const { outline, sharp, corner, i, seam } = of;
  const n = outline.length;
  const before = outline[(i + n - 1) % n] as Point;
  const after = outline[(i + 1) % n] as Point;
  const inX = (corner.x - before.x) / distance(before, corner);
  const inY = (corner.y - before.y) / distance(before, corner);
  const outX = (after.x - corner.x) / distance(corner, after);
  const outY = (after.y - corner.y) / distance(corner, after);
  const tip = sharp[i] as Point;
  const isSharp = inX * outX + inY * outY < -1e-9 && inX * outY - inY * outX > 0;
  if (!isSharp) return [tip];
  // the tip is cut square to its own middle line, one allowance beyond the seam's corner
  const beyond = distance(corner, tip);
  const cutBack = (beyond - seam) / beyond;
  const middleX = (tip.x - corner.x) / beyond;
  const middleY = (tip.y - corner.y) / beyond;
  const back = beyond * cutBack;
  const alongIn = back / Math.abs(inX * middleX + inY * middleY);
  const alongOut = back / Math.abs(outX * middleX + outY * middleY);
  return [
    { x: tip.x - inX * alongIn, y: tip.y - inY * alongIn },
    { x: tip.x + outX * alongOut, y: tip.y + outY * alongOut },
  ];
};

/** Across and down of a rectangle that may lie slanted, else null. */
const rectangleSides = (outline: Polygon): readonly [Length, Length] | null => {
  if (outline.length !== 4) return null;
  const [a, b, c, d] = outline as [Point, Point, Point, Point];
  const first = distance(a, b);
  const second = distance(b, c);
  const near = 1e-6 * Math.max(first, second);
  const parallel = Math.abs(a.x + c.x - b.x - d.x) < near && Math.abs(a.y + c.y - b.y - d.y) < near;
  const square = Math.abs((b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y)) < near * Math.max(first, second);
  if (!parallel || !square) return null;
  const level = Math.abs(b.y - a.y) <= Math.abs(b.x - a.x);
  return level ? [tidy(first), tidy(second)] : [tidy(second), tidy(first)];
};

const rightIsosceles = (
  outline: Polygon,
): {
  readonly leg: Length;
  readonly long: Length;
  readonly grain: 'legs' | 'long-side' | 'slanted';
  readonly stand: QuarterTurn;
} | null => {
  if (outline.length !== 3) return null;
  for (let i = 0; i < 3; i++) {
    const corner = outline[i] as Point;
    const a = outline[(i + 1) % 3] as Point;
    const b = outline[(i + 2) % 3] as Point;
    const legA = distance(corner, a);
    const legB = distance(corner, b);
    const near = 1e-6 * Math.max(legA, legB);
    const square = Math.abs((a.x - corner.x) * (b.x - corner.x) + (a.y - corner.y) * (b.y - corner.y)) < near * legA;
    if (!square || Math.abs(legA - legB) > near) continue;
    const grain = alongAxes(corner, a) ? 'legs' : alongAxes(a, b) ? 'long-side' : 'slanted';
    const toLongSide = at((a.x + b.x) / 2 - corner.x, (a.y + b.y) / 2 - corner.y);
    return { leg: tidy(legA), long: tidy(distance(a, b)), grain, stand: standOf(toLongSide, grain === 'legs') };
  }
  return null;
};

/**
 * How a triangle lies, from the way that its right angle looks at its long side: to the lower right at 0 where the legs
 * lie along the axes, straight up where the long side does.
 */
const standOf = (toLongSide: Point, isDiagonal: boolean): QuarterTurn => {
  const first = isDiagonal ? Math.PI / 4 : -Math.PI / 2;
  const quarters = Math.round((Math.atan2(toLongSide.y, toLongSide.x) - first) / (Math.PI / 2));
  return quarterTurns[((quarters % 4) + 4) % 4] as QuarterTurn;
};

const quarterTurns: readonly QuarterTurn[] = [0, 90, 180, 270];

const alongAxes = (a: Point, b: Point): boolean =>
  Math.min(Math.abs(b.x - a.x), Math.abs(b.y - a.y)) < 1e-6 * distance(a, b);
