// How the plain pieces of a top are cut: rectangles to the nearest mark, setting triangles from squares up to the mark
// with the float that the document asks for, mitred borders long enough for their points.
import { type CutRule, cutFor, rectangleCut } from '#craft/cutting';
import { type Length, length, tidy, toNearestMark, upToMark } from '#craft/measure';
import type { PlacedStrip } from '#craft/setting';
import { distance, type Point, signedArea } from '#ground/plane';

type PlainCut = ReturnType<typeof cutFor>;

/**
 * Grain lies along the quilt's edge. `size - exact` tells the float too.
 *
 * @param float how much larger than needed the squares for setting triangles are cut
 */
export const topCut = (of: {
  readonly strip: Pick<PlacedStrip, 'role' | 'points' | 'rect'>;
  readonly rule: CutRule;
  readonly float: Length;
  /** A print that stands upright keeps across and down apart; else the long side is named first. */
  readonly printed: 'as-it-lies' | 'any-way';
}): PlainCut => {
  const { strip, rule } = of;
  const sides = sidesOf(strip);
  const lies = [strip.rect.width, strip.rect.height] as const;
  if (strip.points.length === 3) return floated(cutFor(strip.points, rule), of);
  if (sides === null) return mitredCut({ sides: lies, printed: of.printed, rule });
  if (!isUpright(strip)) return rectangleCut(sides, rule);
  return rectangleCut(of.printed === 'as-it-lies' ? lies : longFirst(...lies), rule);
};

/** Its box is itself, and told exactly. */
const isUpright = ({ points, rect }: Pick<PlacedStrip, 'points' | 'rect'>): boolean =>
  Math.abs(rect.width * rect.height - signedArea(points)) < 1e-9 * signedArea(points);

/** Long side first; null for what is no rectangle. */
const sidesOf = ({ points }: Pick<PlacedStrip, 'points'>): readonly [Length, Length] | null => {
  if (points.length !== 4) return null;
  const [a, b, c, d] = points as readonly [Point, Point, Point, Point];
  const sides = [distance(a, b), distance(b, c), distance(c, d), distance(d, a)] as const;
  const near = 1e-9 * Math.max(...sides);
  const diagonals = Math.abs(distance(a, c) - distance(b, d));
  const isEven = Math.abs(sides[0] - sides[2]) < near && Math.abs(sides[1] - sides[3]) < near;
  if (!isEven || diagonals > near) return null;
  return longFirst(tidy(sides[0]), tidy(sides[1]));
};

const longFirst = (a: Length, b: Length): readonly [Length, Length] => (a >= b ? [a, b] : [b, a]);

const floated = (cut: PlainCut, of: Parameters<typeof topCut>[0]): PlainCut => {
  const { role } = of.strip;
  if (cut.gives === 1 || (role !== 'side-triangle' && role !== 'corner-triangle')) return cut;
  const size = upToMark(length(cut.exact[0] + of.float), of.rule.ruler).size;
  return { ...cut, size: [size, size] };
};

/**
 * The strip for a mitred border: its long edge with an allowance beyond both points, up to the mark, by its width.
 *
 * @returns exact: long (the outer edge) + 2·seam·(1 + √2) by width + 2·seam
 * @source docs/formulas.md#mitred-border
 */
const mitredCut = (of: {
  /** Of the box, across and down. */
  readonly sides: readonly [Length, Length];
  readonly printed: 'as-it-lies' | 'any-way';
  readonly rule: CutRule;
}): PlainCut => {
  const { seam, ruler } = of.rule;
  const [long, width] = longFirst(...of.sides);
  const exact = [length(long + 2 * seam * (1 + Math.SQRT2)), length(width + 2 * seam)] as const;
  const size = [upToMark(exact[0], ruler).size, toNearestMark(exact[1], ruler).size] as const;
  const cut = { shape: 'rectangle', gives: 1, template: null } as const;
  return of.printed === 'as-it-lies' && of.sides[0] < of.sides[1]
    ? { ...cut, finished: of.sides, exact: flipped(exact), size: flipped(size) }
    : { ...cut, finished: [long, width], exact, size };
};

const flipped = <T>([a, b]: readonly [T, T]): readonly [T, T] => [b, a];
