// What one step takes, all its units sewn in a chain: begun once, each laid, sewn and pressed, its seams matched.
import { inchIn, type Length, type Unit } from '#craft/measure';
import type { Point, Polygon } from '#ground/plane';
import type { Work } from './work.ts';

export interface SewnSeam {
  /** Finished. */
  readonly seam: Length;
  /** Times that it is sewn in the quilt. */
  readonly total: number;
  /** Places where seams of both parts meet across it. */
  readonly matches: number;
}

/** @source docs/formulas.md#time */
export const seamWork = ({ seam, total, matches }: SewnSeam, unit: Unit): Work =>
  total === 0
    ? {}
    : {
        chain: 1,
        lay: total,
        seam: total,
        inch: total * (seam / inchIn[unit]),
        press: total,
        match: total * matches,
      };

/** Places strictly within a seam where corners of both parts lie: what is matched before it is sewn. */
export const matchesOn = (of: {
  readonly line: Polygon;
  readonly first: readonly Polygon[];
  readonly second: readonly Polygon[];
  readonly slack: number;
}): number => {
  const { line, slack } = of;
  const [from, to] = [line[0], line.at(-1)];
  if (line.length !== 2 || from === undefined || to === undefined) return 0;
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const placesOf = (outlines: readonly Polygon[]): readonly number[] =>
    outlines.flat().flatMap((p) => {
      const { along, beside } = placeOn(p, from, to, long);
      return Math.abs(beside) < slack && along > slack && along < long - slack ? [along] : [];
    });
  const second = placesOf(of.second);
  const met: number[] = [];
  for (const place of placesOf(of.first)) {
    const isMet = second.some((other) => Math.abs(other - place) < slack);
    if (isMet && !met.some((known) => Math.abs(known - place) < slack)) met.push(place);
  }
  return met.length;
};

const placeOn = (
  p: Point,
  from: Point,
  to: Point,
  long: number,
): { readonly along: number; readonly beside: number } => {
  const [x, y] = [(to.x - from.x) / long, (to.y - from.y) / long];
  const [dx, dy] = [p.x - from.x, p.y - from.y];
  return { along: dx * x + dy * y, beside: dx * y - dy * x };
};
