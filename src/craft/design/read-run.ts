// Points one after another on a block's grid: the outline of a patch, or a seam. An arc in place of a point is the edge that
// leads there from the point before it.
import { cornerTolerance } from '#craft/limits';
import { arcExtremes, arcThrough } from '#ground/arc';
import { compare, div, type Rational, toNumber } from '#ground/exact';
import { at, distance } from '#ground/plane';
import type { WrittenRun } from './document.ts';
import type { GridArc, GridPoint, GridRun } from './quilt.ts';
import { isOnGrid, readPlace } from './read-grid.ts';
import type { Spot } from './reading.ts';
import { gridArc } from './run-in-chords.ts';
import type { ExactSize } from './size.ts';

export interface RunSpot extends Spot {
  readonly block: string;
  readonly size: ExactSize | null;
  readonly grid: readonly [across: Rational, down: Rational] | null;
  /** An outline comes back to its first point, a seam does not. */
  readonly ends: 'closed' | 'open';
}

/** @param spot.path of the list. @returns null when something in it was reported */
export const readRun = (written: WrittenRun, spot: RunSpot): GridRun | null => {
  const { path, reading, grid } = spot;
  const places = written.map((point, i) =>
    Array.isArray(point)
      ? readPlace(point, { reading, path: `${path}/${i}` })
      : readPlace(point.to, { reading, path: `${path}/${i}/to` }),
  );
  if (grid === null || places.some((place) => place === null)) return null;
  const known = places as readonly GridPoint[];
  const corners = comesBack(written, known, spot) ? known.slice(0, -1) : known;
  const placed = corners.map((place, i) => isOnGrid({ ...spot, place, grid, path: `${path}/${i}` }));
  const arcs = written.flatMap((point, i) =>
    Array.isArray(point) ? [] : [readArc(point, { ...spot, grid, corners, index: i })],
  );
  if (!placed.every(Boolean) || arcs.some((arc) => arc === null)) return null;
  return arcs.length === 0 ? { corners } : { corners, arcs: arcs.flatMap((arc) => arc ?? []) };
};

/** An outline may end with the arc that leads back to its first point. */
const comesBack = (written: WrittenRun, places: readonly GridPoint[], { ends, grid }: RunSpot): boolean => {
  const [first, last] = [places[0], places.at(-1)];
  if (ends === 'open' || grid === null || first === undefined || last === undefined || !Array.isArray(written[0]))
    return false;
  const slack = cornerTolerance * Math.max(...grid.map(toNumber));
  return !Array.isArray(written.at(-1)) && distance(point(first), point(last)) < slack;
};

interface ArcSpot extends RunSpot {
  readonly grid: readonly [across: Rational, down: Rational];
  readonly corners: readonly GridPoint[];
  readonly index: number;
}

const readArc = (written: Exclude<WrittenRun[number], readonly unknown[]>, spot: ArcSpot): GridArc | null => {
  const { reading, block, index, corners } = spot;
  const path = `${spot.path}/${index}`;
  if (index === 0 && spot.ends === 'open') {
    reading.report({ code: 'design/arc-without-start', path, block });
    return null;
  }
  const edge = (index + corners.length - 1) % corners.length;
  const centre = readPlace(written.centre, { reading, path: `${path}/centre` });
  if (centre === null || !isRound({ ...spot, path })) return null;
  const arc: GridArc = { edge, centre, clockwise: written.sweep === 'clockwise' };
  return isSound(arc, { ...spot, path }) ? arc : null;
};

/** Whether a circle on the grid is a circle on the block: its cells are square. */
const isRound = ({ size, grid, path, block, reading }: ArcSpot): boolean => {
  // a size that could not be read was reported
  if (size === null) return false;
  const cell = [div(size[0], grid[0]), div(size[1], grid[1])] as const;
  if (isNear(cell[0], cell[1])) return true;
  const found = cell.map(toNumber) as [number, number];
  reading.report({ code: 'design/arc-stretched', path, block, found, unit: reading.unit });
  return false;
};

const isNear = (a: Rational, b: Rational): boolean =>
  compare(a, b) === 0 || Math.abs(toNumber(div(a, b)) - 1) < cornerTolerance;

const isSound = (arc: GridArc, spot: ArcSpot): boolean => {
  const { reading, block, path, corners, grid } = spot;
  const drawn = gridArc(corners, arc);
  const slack = cornerTolerance * Math.max(...grid.map(toNumber));
  // the same place twice is told as such for every point
  if (distance(drawn.from, drawn.to) < slack) return true;
  const far = [distance(drawn.centre, drawn.from), distance(drawn.centre, drawn.to)] as const;
  if (Math.abs(far[0] - far[1]) > 2 * slack) {
    reading.report({ code: 'design/arc-centre', path: `${path}/centre`, block, found: pair(drawn.centre), far });
    return false;
  }
  const beyond = arcExtremes(arcThrough(drawn)).find((p) => !isWithin(p, grid, slack));
  if (beyond === undefined) return true;
  reading.report({ code: 'design/arc-outside', path, block, found: pair(beyond), grid: pairOf(grid) });
  return false;
};

const point = ([x, y]: GridPoint) => at(toNumber(x), toNumber(y));

const pair = ({ x, y }: { readonly x: number; readonly y: number }): readonly [number, number] => [x, y];

const pairOf = ([a, b]: GridPoint): readonly [number, number] => [toNumber(a), toNumber(b)];

const isWithin = ({ x, y }: { readonly x: number; readonly y: number }, grid: GridPoint, slack: number): boolean => {
  const [across, down] = pairOf(grid);
  return x > -2 * slack && x < across + 2 * slack && y > -2 * slack && y < down + 2 * slack;
};
