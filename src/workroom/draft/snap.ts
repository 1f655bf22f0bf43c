// The places that a hand comes to on a drawing: the lines of the grid and their parts, corners of patches, and where a seam crosses a line.
import { cornersIn, type Drawn, edgesIn, slackOf } from '#craft/redrawing';
import { arcCrossings, type CrossedEdge, isOnArc, pointOnArc } from '#ground/arc';
import { isNear, isOnSide, type Side } from '#ground/outline';
import { at, distance, type Point } from '#ground/plane';

export interface Table {
  readonly drawn: Drawn;
  /** Into so many parts a square of the grid is divided. */
  readonly parts: number;
}

/** A corner draws the pointer from further than a line does. */
const cornerPull = 0.6;

/** @param reach how near a corner or a seam must lie, in squares */
export const snapped = (p: Point, { drawn, parts }: Table, reach: number): Point => {
  const onLines = at(toLine(p.x, drawn.grid[0], parts), toLine(p.y, drawn.grid[1], parts));
  const far = (q: Point): number => distance(p, q);
  let best = { point: onLines, far: far(onLines) };
  const offer = (point: Point, pull: number): void => {
    const own = far(point);
    if (own < reach && own * pull < best.far) best = { point, far: own * pull };
  };
  for (const patch of drawn.patches) {
    for (const edge of edgesIn(patch)) {
      offer(edge.from, cornerPull);
      for (const point of onEdge(edge, onLines, drawn.grid)) offer(point, 1);
    }
  }
  return best.point;
};

const toLine = (value: number, most: number, parts: number): number =>
  Math.min(Math.max(Math.round(value * parts) / parts, 0), most);

/** Where an edge crosses the lines through a place; of an arc its middle, too. */
const onEdge = ({ from, to, arc }: CrossedEdge, through: Point, grid: Drawn['grid']): readonly Point[] => {
  if (arc === null) return onSide([from, to], through);
  const slack = slackOf(grid);
  const [across, down] = linesThrough(through, grid);
  return [
    ...arcCrossings({ from, to, arc }, across, slack),
    ...arcCrossings({ from, to, arc }, down, slack),
    pointOnArc(arc, 0.5),
  ];
};

/** The level and the upright line through a place, from edge to edge of the block. */
const linesThrough = (p: Point, [across, down]: Drawn['grid']): readonly [CrossedEdge, CrossedEdge] => [
  { from: at(0, p.y), to: at(across, p.y), arc: null },
  { from: at(p.x, 0), to: at(p.x, down), arc: null },
];

/** Where a side crosses the upright and the level line through a place. */
const onSide = ([a, b]: Side, through: Point): readonly Point[] => {
  const found: Point[] = [];
  if ((a.x - through.x) * (b.x - through.x) < 0) found.push(at(through.x, heightAt(a, b, through.x)));
  if ((a.y - through.y) * (b.y - through.y) < 0) found.push(at(widthAt(a, b, through.y), through.y));
  return found;
};

const heightAt = (a: Point, b: Point, x: number): number => a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
const widthAt = (a: Point, b: Point, y: number): number => a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);

export type Arrow = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown';
export const isArrow = (key: string): key is Arrow => /^Arrow(Left|Right|Up|Down)$/.test(key);

/** The next place on the level or upright line through this one: a line of the grid, or a seam that crosses on the way. */
export const steppedFrom = (from: Point, arrow: Arrow, { drawn, parts }: Table): Point => {
  const isLevel = arrow === 'ArrowLeft' || arrow === 'ArrowRight';
  const ahead = arrow === 'ArrowRight' || arrow === 'ArrowDown' ? 1 : -1;
  const slack = slackOf(drawn.grid);
  const most = isLevel ? drawn.grid[0] : drawn.grid[1];
  const here = isLevel ? from.x : from.y;
  const line = Math.round(here * parts * 1e6) / 1e6 + ahead;
  const stops = [
    0,
    most,
    (ahead > 0 ? Math.floor(line + 1e-6) : Math.ceil(line - 1e-6)) / parts,
    ...drawn.patches.flatMap((patch) =>
      edgesIn(patch).flatMap((edge) => {
        if (edge.arc === null) return metOn([edge.from, edge.to], from, isLevel, slack);
        const line = linesThrough(from, drawn.grid)[isLevel ? 0 : 1];
        return arcCrossings(edge, line, slack).map((p) => (isLevel ? p.x : p.y));
      }),
    ),
  ];
  const next = stops
    .filter((stop) => stop >= 0 && stop <= most && (stop - here) * ahead > slack * 4)
    .reduce((best, stop) => ((stop - best) * ahead < 0 ? stop : best), ahead > 0 ? most : 0);
  return isLevel ? at(next, from.y) : at(from.x, next);
};

/** Where a side meets the level or upright line through a place, as measured along it. */
const metOn = ([a, b]: Side, from: Point, isLevel: boolean, slack: number): readonly number[] => {
  const [along, aside] = isLevel ? (['x', 'y'] as const) : (['y', 'x'] as const);
  if (Math.abs(a[aside] - from[aside]) < slack) return [a[along]];
  if ((a[aside] - from[aside]) * (b[aside] - from[aside]) >= 0) return [];
  return [isLevel ? widthAt(a, b, from.y) : heightAt(a, b, from.x)];
};

/** Every corner once, from the top down and from left to right. */
export const cornersOf = ({ grid, patches }: Drawn): readonly Point[] => {
  const slack = slackOf(grid);
  const sorted = patches.flatMap(cornersIn).toSorted((a, b) => (Math.abs(a.y - b.y) < slack ? a.x - b.x : a.y - b.y));
  return sorted.filter((p, i) => !sorted.slice(Math.max(0, i - 12), i).some((q) => isNear(p, q, slack)));
};

/** Whether a seam may begin or end here: on another, or on the edge of the block. */
export const isOnSeam = (p: Point, { grid, patches }: Drawn): boolean => {
  const slack = slackOf(grid);
  const [right, bottom] = grid;
  const isOnEdge = [p.x, right - p.x, p.y, bottom - p.y].some((far) => Math.abs(far) < slack);
  return (
    isOnEdge ||
    patches.some((patch) =>
      edgesIn(patch).some(({ from, to, arc }) =>
        arc === null ? isOnSide(p, [from, to], slack) : isOnArc(p, arc, slack),
      ),
    )
  );
};
