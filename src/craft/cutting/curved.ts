// How a patch with curved sides is cut: always from a template, whose cut edge runs an allowance outside the seam line: along
// straight sides parallel to it, along arcs about the same centre. Straight sides are never made of an arc, nor an arc of them.
import { type Length, tidy, upToMark } from '#craft/measure';
import {
  type Arc,
  arcThrough,
  chordPoints,
  type Edge,
  edgeDirection,
  type Outline,
  outlineBox,
  radiusOf,
  wholeSides,
} from '#ground/arc';
import { at, distance, dot, type Point, unitVector } from '#ground/plane';
import type { Cut } from './cloth.ts';
import { matchingMarks } from './matching-marks.ts';
import type { CutRule } from './rule.ts';
import { templatePairFor } from './template-pairs.ts';

/** Chords of the cut edge lie no further from it than this share of the allowance: a ten-thousandth of an inch at ¼. Our own figure. */
const chordShare = 4e-4;
/** Corners that lie nearer than this share of the outline's box are none. */
const tolerance = 1e-6;

/** Hollow sides must be rounder than this: about the same centre the cut edge would have no room. Infinite where none is hollow. */
export const tightestHollow = (outline: Outline): number =>
  Math.min(...outline.arcs.map((arc) => (arc.clockwise ? Number.POSITIVE_INFINITY : radiusOf(arc))));

/**
 * A template, with matching marks at its curved sides; laid out by a box that goes up.
 *
 * @param outline clockwise, finished, in the block's frame; its hollow sides rounder than the allowance
 * @source docs/formulas.md#curved-template
 */
export const curvedCut = (outline: Outline, rule: CutRule): Cut => {
  const inner = outlineBox(outline);
  const edge = cutEdge(outline, rule.seam);
  const box = outlineBox(edge);
  const shift = (p: Point): Point => at(p.x - box.x, p.y - box.y);
  const shiftArc = ({ from, to, centre, clockwise }: Arc): Arc => ({
    from: shift(from),
    to: shift(to),
    centre: shift(centre),
    clockwise,
  });
  const points = edge.points.map(shift);
  const exact = [tidy(box.width), tidy(box.height)] as const;
  return {
    shape: 'template',
    finished: [tidy(inner.width), tidy(inner.height)],
    exact,
    size: [upToMark(exact[0], rule.ruler).size, upToMark(exact[1], rule.ruler).size],
    gives: 1,
    template: {
      points,
      seamLine: outline.points.map(shift),
      arcs: [...edge.arcs, ...outline.arcs].map(shiftArc),
      marks: matchingMarks(outline, rule.seam).map(({ on, out }) => ({ on: shift(on), out: shift(out) })),
    },
    pair: templatePairFor(points, rule.ruler),
    ways: [],
  };
};

/** A side as it is cut. */
interface CutSide {
  readonly side: Edge;
  /** Offset by the allowance, as far as the seam goes. */
  readonly from: Point;
  readonly to: Point;
  /** Round which it runs, and how far from it; null where it is straight. */
  readonly circle: { readonly centre: Point; readonly radius: number } | null;
}

/**
 * The cut edge, clockwise, with chords for arcs. Sides meet where they cross; at corners sharper than a right angle the tip is
 * cut square to its own middle line, one allowance beyond the seam's corner.
 */
export const cutEdge = (outline: Outline, seam: Length): Outline => {
  const box = outlineBox(outline);
  const sides = wholeSides(outline, tolerance * Math.max(box.width, box.height)).map((side) => cutSide(side, seam));
  const corners = sides.map((side, i) => cornerAfter(side, sides[(i + 1) % sides.length] as CutSide, seam));
  const arcs = sides.map((side, i) =>
    arcOfCut(
      side,
      (corners.at(i - 1) as readonly Point[]).at(-1) as Point,
      (corners[i] as readonly Point[])[0] as Point,
    ),
  );
  return {
    points: arcs.flatMap((arc, i) => [
      ...(arc === null ? [] : chordPoints(arc, chordShare * seam)),
      ...(corners[i] as readonly Point[]),
    ]),
    arcs: arcs.flatMap((arc) => arc ?? []),
  };
};

const arcOfCut = ({ side, circle }: CutSide, from: Point, to: Point): Arc | null =>
  side.arc === null || circle === null ? null : arcThrough({ ...side.arc, from, to });

const outward = (side: Edge, end: 'from' | 'to'): Point => {
  const { x, y } = edgeDirection(side, end);
  return at(y, -x);
};

const cutSide = (side: Edge, seam: number): CutSide => {
  const moved = (end: 'from' | 'to'): Point => {
    const way = outward(side, end);
    return at(side[end].x + way.x * seam, side[end].y + way.y * seam);
  };
  const { arc } = side;
  const circle = arc && { centre: arc.centre, radius: radiusOf(arc) + (arc.clockwise ? seam : -seam) };
  return { side, from: moved('from'), to: moved('to'), circle };
};

/** Bends by less than this, in radians, are none: our own figure. */
const smooth = 1e-4;

const cornerAfter = (a: CutSide, b: CutSide, seam: number): readonly Point[] => {
  const [into, out] = [edgeDirection(a.side, 'to'), edgeDirection(b.side, 'from')];
  const turn = into.x * out.y - into.y * out.x;
  const along = dot(into, out);
  if (along > 0 && Math.abs(turn) < smooth) return [a.to];
  if (along < -1e-9 && isPointed(a.side, b.side, turn)) return bluntTip(a, b, { into, out, seam });
  return [crossingNear(a, b, { into, out })];
};

/** Whether a corner juts out; one without any angle does where its two sides bend away from each other outside. */
const isPointed = (a: Edge, b: Edge, turn: number): boolean =>
  Math.abs(turn) < smooth ? curvature(a) + curvature(b) < 0 : turn > 0;

const curvature = ({ arc }: Edge): number => (arc === null ? 0 : (arc.clockwise ? 1 : -1) / radiusOf(arc));

interface Directions {
  readonly into: Point;
  readonly out: Point;
}

const bluntTip = (a: CutSide, b: CutSide, corner: Directions & { readonly seam: number }): readonly Point[] => {
  const { into, out, seam } = corner;
  const middle = unitVector(out, into);
  const tip = a.side.to;
  const line = { through: at(tip.x + middle.x * seam, tip.y + middle.y * seam), along: at(-middle.y, middle.x) };
  return [onCutSide(a, line, { end: a.to, way: into }), onCutSide(b, line, { end: b.from, way: out })];
};

interface Line {
  readonly through: Point;
  readonly along: Point;
}

/** Where a line meets a cut side, or what it leads to straight on from its end where a circle falls short of the line. */
const onCutSide = (side: CutSide, line: Line, from: { readonly end: Point; readonly way: Point }): Point => {
  const straight = lineCrossing(line, { through: from.end, along: from.way });
  if (side.circle === null) return straight;
  return nearestTo(straight, lineOnCircle(line, side.circle)) ?? straight;
};

const crossingNear = (a: CutSide, b: CutSide, { into, out }: Directions): Point => {
  const [lineA, lineB] = [
    { through: a.to, along: into },
    { through: b.from, along: out },
  ];
  const straight = lineCrossing(lineA, lineB);
  if (a.circle === null)
    return b.circle === null ? straight : (nearestTo(straight, lineOnCircle(lineA, b.circle)) ?? straight);
  const met = b.circle === null ? lineOnCircle(lineB, a.circle) : circlesMeet(a.circle, b.circle);
  return nearestTo(straight, met) ?? straight;
};

const nearestTo = (p: Point, places: readonly Point[]): Point | null =>
  places.reduce<Point | null>((best, q) => (best === null || distance(p, q) < distance(p, best) ? q : best), null);

const lineCrossing = (a: Line, b: Line): Point => {
  const turn = a.along.x * b.along.y - a.along.y * b.along.x;
  // sides that come back along themselves have no crossing: half-way between them
  if (Math.abs(turn) < 1e-9) return at((a.through.x + b.through.x) / 2, (a.through.y + b.through.y) / 2);
  const share = ((b.through.x - a.through.x) * b.along.y - (b.through.y - a.through.y) * b.along.x) / turn;
  return at(a.through.x + a.along.x * share, a.through.y + a.along.y * share);
};

type Circle = NonNullable<CutSide['circle']>;

/** @param line.along of length 1 */
const lineOnCircle = ({ through, along }: Line, { centre, radius }: Circle): readonly Point[] => {
  const middle = (centre.x - through.x) * along.x + (centre.y - through.y) * along.y;
  const foot = at(through.x + along.x * middle, through.y + along.y * middle);
  const rest = radius ** 2 - distance(foot, centre) ** 2;
  if (rest < 0) return [];
  const half = Math.sqrt(rest);
  return [-half, half].map((by) => at(foot.x + along.x * by, foot.y + along.y * by));
};

const circlesMeet = (a: Circle, b: Circle): readonly Point[] => {
  const far = distance(a.centre, b.centre);
  if (far === 0) return [];
  const [ux, uy] = [(b.centre.x - a.centre.x) / far, (b.centre.y - a.centre.y) / far];
  const along = (far ** 2 + a.radius ** 2 - b.radius ** 2) / (2 * far);
  const rest = a.radius ** 2 - along ** 2;
  if (rest < 0) return [];
  const half = Math.sqrt(rest);
  return [-half, half].map((by) => at(a.centre.x + ux * along - uy * by, a.centre.y + uy * along + ux * by));
};
