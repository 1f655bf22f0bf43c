// Which patches are one kind of piece: same shape, same cloth, cut with the same grain.
// A mirror image is another kind, unless the cloth has no right side; a turned one is not, unless its print stands upright.

import type { Likeness } from '#craft/fabric';
import { cornerTolerance } from '#craft/limits';
import type { Length } from '#craft/measure';
import {
  type Arc,
  type Edge,
  edgeDirection,
  edgeLength,
  landmarksOf,
  type Outline,
  sweepOf,
  wholeSides,
} from '#ground/arc';
import { at, boxOf, type Point, type Polygon, quarterTurned } from '#ground/plane';
import { sidesOf } from './sides.ts';

export interface KindSource {
  readonly points: Polygon;
  /** None where missing. */
  readonly arcs?: readonly Arc[];
  readonly fabric: string;
  /** Any turn and no mirror image when missing. */
  readonly likeness?: Likeness;
}

/**
 * For each patch the index of its kind; kinds are numbered in the order of their first patch.
 *
 * @param patches outlines clockwise, without corners on straight sides; curved ones are told by their arcs, not by chords
 * @param size    the block's larger side: shapes that differ by less than a hundred-thousandth of it are one
 */
export const kindsOf = (patches: readonly KindSource[], size: Length): readonly number[] => {
  const known = new Map<string, number>();
  return patches.map((patch) => {
    const key = `${patch.fabric}|${grainClass(patch.points)}|${likeKey(patch, size)}`;
    const kind = known.get(key) ?? known.size;
    known.set(key, kind);
    return kind;
  });
};

/** The least of the texts of all ways in which the piece may lie. */
const likeKey = (source: KindSource, size: number): string => {
  const { likeness = { turns: 'any', flips: false } } = source;
  const outline = { points: source.points, arcs: source.arcs ?? [] };
  const faces = likeness.flips ? [outline, mirrorImage(outline)] : [outline];
  if (likeness.turns === 'any') return leastOf(faces.map((face) => shapeKey(face, size)));
  const ways = likeness.turns === 'half' ? [0, 2] : [0];
  return leastOf(faces.flatMap((face) => ways.map((quarters) => uprightKey(face, quarters, size))));
};

const leastOf = (texts: readonly string[]): string => texts.toSorted()[0] ?? '';

const mirrorImage = ({ points, arcs }: Outline): Outline => {
  const over = (p: Point): Point => at(-p.x, p.y);
  return {
    points: points.map(over).toReversed(),
    arcs: arcs.map((arc) => ({ ...arc, from: over(arc.to), to: over(arc.from), centre: over(arc.centre) })),
  };
};

/** Corners from the box's upper left corner, turned by so many quarters: the same for shifted outlines only. */
const uprightKey = (outline: Outline, quarters: number, size: number): string => {
  const turned = landmarksOf(outline, cornerTolerance * size).map((p) => quarterTurned(p, quarters));
  const box = boxOf(turned);
  return turned
    .map((p) => `${rounded((p.x - box.x) / size)}:${rounded((p.y - box.y) / size)}`)
    .sort()
    .join();
};

/** Side lengths, how they bend, and corner angles in walking order, begun where the text is least: the same for turned outlines only. */
const shapeKey = (outline: Outline, size: number): string => {
  const sides = wholeSides(outline, cornerTolerance * size).map((side, i, all) => {
    const [a, b] = [edgeDirection(side, 'to'), edgeDirection(all[(i + 1) % all.length] as Edge, 'from')];
    const turn = Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
    // at a tip without any angle it is half a turn either way
    const bend = turn < 1e-5 - Math.PI ? Math.PI : turn;
    const bow = side.arc === null ? '' : `${side.arc.clockwise ? ')' : '('}${rounded(sweepOf(side.arc) / 4)}`;
    return `${rounded(edgeLength(side) / size)}${bow}:${rounded(bend / 4)}`;
  });
  let least = sides.join();
  for (let i = 1; i < sides.length; i++) {
    const text = [...sides.slice(i), ...sides.slice(0, i)].join();
    if (text < least) least = text;
  }
  return least;
};

/** The shift keeps simple fractions away from the places where rounding changes. */
const rounded = (share: number): number => Math.floor(share * 1e5 + 0.3183);

/** Right triangles with equal legs are cut otherwise when their long side lies along the block's sides. */
const grainClass = (points: Polygon): 'legs' | 'long-side' | 'slanted' | '' => {
  if (points.length !== 3) return '';
  const sides = sidesOf(points);
  const long = sides.reduce((a, b) => (b.length > a.length ? b : a));
  const legs = sides.filter((s) => s !== long);
  const [a, b] = [legs[0], legs[1]] as [(typeof sides)[number], (typeof sides)[number]];
  const even = Math.abs(a.length - b.length) < 1e-6 * long.length;
  const square = Math.abs(a.dx * b.dx + a.dy * b.dy) < 1e-6 * long.length * long.length;
  if (!even || !square) return '';
  if (alongAxes({ x: a.dx, y: a.dy })) return 'legs';
  return alongAxes({ x: long.dx, y: long.dy }) ? 'long-side' : 'slanted';
};

const alongAxes = (d: Point): boolean => Math.min(Math.abs(d.x), Math.abs(d.y)) < 1e-6 * Math.hypot(d.x, d.y);
