// A run on a block's grid in doubles: its arcs, and chords for them.
import { cornerTolerance } from '#craft/limits';
import { type Arc, arcThrough, chordPoints } from '#ground/arc';
import { toNumber } from '#ground/exact';
import { at, distance, type Point } from '#ground/plane';
import type { GridArc, GridPoint, GridRun } from './quilt.ts';

/** As it is written: its centre may not be quite equally far from both ends. */
export const gridArc = (corners: readonly GridPoint[], { edge, centre, clockwise }: GridArc): Arc => ({
  from: point(corners[edge] as GridPoint),
  to: point(corners[(edge + 1) % corners.length] as GridPoint),
  centre: point(centre),
  clockwise,
});

const point = ([x, y]: GridPoint): Point => at(toNumber(x), toNumber(y));

/** No further from an arc than this share of the grid's larger side: enough to tell what crosses and to be looked at. Our own figure. */
const chordShare = 1e-4;

/** The outline as a polygon, and the corner that each of its points is or comes after. */
export const runInChords = (
  { corners, arcs = [] }: GridRun,
  grid: GridPoint,
): { readonly points: readonly Point[]; readonly cornerOf: readonly number[] } => {
  const side = Math.max(...grid.map(toNumber));
  const byEdge = new Map(arcs.map((arc) => [arc.edge, gridArc(corners, arc)]));
  const points = corners.map((corner, i) => {
    const arc = byEdge.get(i);
    const hasLength = arc !== undefined && distance(arc.from, arc.to) > cornerTolerance * side;
    return hasLength ? [point(corner), ...chordPoints(arcThrough(arc), chordShare * side)] : [point(corner)];
  });
  return { points: points.flat(), cornerOf: points.flatMap((run, i) => run.map(() => i)) };
};
