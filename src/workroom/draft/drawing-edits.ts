// A block's drawing as the document has it: read for the hand to work at, and written back with what it changed. Places that nothing
// touched stay as they were written.
import { parseNumber } from '#craft/measure';
import { type Drawn, type DrawnPatch, drawnAs, edgesIn, type ListedPatch, slackOf } from '#craft/redrawing';
import { type Arc, arcThrough, type CrossedEdge, isOnArc, pointOnArc, sweepOf } from '#ground/arc';
import { toNumber } from '#ground/exact';
import { isNear, isOnOutline, isOnSide, splitAt } from '#ground/outline';
import { at, isInside, type Point, roomiestPoint } from '#ground/plane';
import type { DrawnAnswer } from '#workroom/compute';
import type { Block } from './block-edits.ts';

type Patches = NonNullable<Block['patches']>;
type Written = NonNullable<Block['drawing']>;
type Place = Written['grid'][number];
type Corner = Patches['list'][number]['points'][number];

/** A block of patches, read at once; null for other forms, and where a place cannot be read. */
export const drawnIn = ({ patches }: Block): Drawn | null => {
  if (patches === undefined) return null;
  const [across, down] = patches.grid.map(placeOf);
  const list = patches.list.map(listedIn);
  if (across == null || down == null || list.includes(null)) return null;
  return drawnAs([across, down], list as readonly ListedPatch[]);
};

const listedIn = ({ points, tone }: Patches['list'][number]): ListedPatch | null => {
  const ends = points.map((corner) => pointOf(Array.isArray(corner) ? corner : corner.to));
  // an arc may lead back to the first corner, or have its place
  const isClosed = ends.length > 1 && !Array.isArray(points.at(-1)) && isSame(ends[0], ends.at(-1));
  const count = isClosed ? ends.length - 1 : ends.length;
  const arcs = points.flatMap((corner, i) => {
    if (Array.isArray(corner)) return [];
    const centre = pointOf(corner.centre);
    return [{ edge: (i + count - 1) % count, centre, clockwise: corner.sweep === 'clockwise' }];
  });
  if (ends.includes(null) || arcs.some(({ centre }) => centre === null)) return null;
  return { tone, corners: ends.slice(0, count) as Point[], arcs: arcs as ListedPatch['arcs'] };
};

const isSame = (a: Point | null | undefined, b: Point | null | undefined): boolean =>
  a != null && b != null && a.x === b.x && a.y === b.y;

const placeOf = (written: Place): number | null => {
  const read = parseNumber(written);
  return read.ok ? toNumber(read.value) : null;
};

const pointOf = (written: Corner): Point | null => {
  if (!Array.isArray(written)) return null;
  const [x, y] = [placeOf(written[0]), placeOf(written[1])];
  return x === null || y === null ? null : at(x, y);
};

/** As the worker tells a block of any form. */
export const drawnFrom = ({ grid, patches }: DrawnAnswer): Drawn => ({
  grid,
  patches: patches.map((patch) => ({ ...patch, points: pointsOf(patch.points) })),
});

export const pointsOf = (flat: readonly number[]): readonly Point[] =>
  flat.flatMap((x, i) => (i % 2 === 0 ? [at(x, flat[i + 1] as number)] : []));

/** Fractions are written with denominators up to this; finer places as decimals of nine digits, far within the corner tolerance. */
const mostParts = 120;

/** A place on the grid as a document has it: 2, 1.5, "4/3". */
export const writtenPlace = (value: number): number | string => {
  for (let parts = 1; parts <= mostParts; parts++) {
    const count = Math.round(value * parts);
    if (Math.abs(value * parts - count) > 1e-9 * parts) continue;
    const isShort = Number.isInteger((count * 1000) / parts);
    return isShort ? count / parts : `${count}/${parts}`;
  }
  return Number(value.toFixed(9));
};

const writtenPoint = ({ x, y }: Point): [number | string, number | string] => [writtenPlace(x), writtenPlace(y)];

const writtenArc = ({ to, centre, clockwise }: Arc): Exclude<Corner, unknown[]> => ({
  to: writtenPoint(to),
  centre: writtenPoint(centre),
  sweep: clockwise ? 'clockwise' : 'counterclockwise',
});

/** An arc stands in place of the point that it leads to; one that leads back to the first point ends the list. */
const writtenOutline = (patch: DrawnPatch): Corner[] => {
  const edges = edgesIn(patch);
  const [first] = edges;
  if (first === undefined) return [];
  const last = edges.at(-1);
  const led = edges.map(({ arc, to }): Corner => (arc === null ? writtenPoint(to) : writtenArc(arc)));
  return [writtenPoint(first.from), ...(last?.arc === null ? led.slice(0, -1) : led)];
};

export interface Redrawn {
  readonly before: Drawn;
  readonly patches: readonly DrawnPatch[];
  readonly grid?: Drawn['grid'];
  /** Of a block in another form: the cloths of its tones. */
  readonly colourings: DrawnAnswer['colourings'];
}

/** The block is a drawing of patches from here on, whatever form it had. */
export const putPatches = (block: Block, { before, patches, grid = before.grid, colourings }: Redrawn): void => {
  const was = block.patches?.list ?? [];
  const places = new Map(before.patches.map(({ points }, index) => [points, was[index]] as const));
  const list = patches.map((patch) => {
    const own = places.get(patch.points);
    if (own === undefined) return { points: writtenOutline(patch), tone: patch.tone };
    return own.tone === patch.tone ? own : { ...own, tone: patch.tone };
  });
  if (block.patches !== undefined && grid === before.grid) {
    block.patches.list = list;
    return;
  }
  if (block.patches === undefined) nameTones(block, colourings);
  block.patches = { grid: [writtenPlace(grid[0]), writtenPlace(grid[1])], list };
  delete block.recipe;
  delete block.drawing;
  delete block.from;
};

/** A block of another form becomes a drawing; what the collection has named keeps its name. */
export const makeDrawing = (block: Block, told: DrawnAnswer): void => {
  const drawn = drawnFrom(told);
  if (block.from !== undefined) block.title ??= told.title;
  giveSize(block, told.size);
  putPatches(block, { before: drawn, patches: drawn.patches, colourings: told.colourings });
};

/** Tones that got their cloth from a centre or by a letter get it from the block's own colourings. */
const nameTones = (block: Block, colourings: DrawnAnswer['colourings']): void => {
  for (const [name, tones] of Object.entries(colourings)) {
    for (const [tone, fabric] of Object.entries(tones)) {
      if (fabric === tone || block.colourings?.[name]?.[tone] !== undefined) continue;
      block.colourings ??= {};
      block.colourings[name] ??= {};
      (block.colourings[name] as Record<string, string | string[]>)[tone] =
        typeof fabric === 'string' ? fabric : [...fabric];
    }
  }
};

/** The size that a block is given when it has none of its own: that of the log cabin that it was. */
export const giveSize = (block: Block, [width, height]: readonly [number, number]): void => {
  if (block.size !== undefined) return;
  const [across, down] = [String(tidied(width)), String(tidied(height))];
  block.size = across === down ? across : [across, down];
};

const tidied = (length: number): number => Number(length.toFixed(9));

/** Whether the stretches that are taken out of a block that is drawn by its seams are parts of single lines or arcs of it. */
export const canTakeOut = (drawing: Written, out: readonly CrossedEdge[]): boolean => {
  const slack = slackOf(drawing.grid.map(placeOf) as [number, number]);
  const lines = drawing.seams.flatMap((seam) => seam.slice(1).flatMap((_, i) => edgeAt(seam, i) ?? []));
  return out.every((stretch) => lines.some((line) => isPart(stretch, line, slack)));
};

/** Whether an edge lies on another, from end to end. */
const isPart = (stretch: CrossedEdge, line: CrossedEdge, slack: number): boolean => {
  const { from, to, arc } = stretch;
  if (arc === null) return line.arc === null && [from, to].every((p) => isOnSide(p, [line.from, line.to], slack));
  const own = line.arc;
  return own !== null && [from, to, pointOnArc(arc, 0.5)].every((p) => isOnArc(p, own, 4 * slack));
};

/** The line or arc of a seam from one of its points to the next; null where it cannot be read. */
const edgeAt = (seam: Seam, i: number): CrossedEdge | null => {
  const next = seam[i + 1] as Corner;
  const [from, to] = [endOf(seam[i] as Corner), endOf(next)];
  if (from === null || to === null) return null;
  if (Array.isArray(next)) return { from, to, arc: null };
  const centre = pointOf(next.centre);
  return centre === null
    ? null
    : { from, to, arc: arcThrough({ from, to, centre, clockwise: next.sweep === 'clockwise' }) };
};

/** Where a seam is at one of its points, though an arc led there. */
const endOf = (corner: Corner): Point | null => pointOf(Array.isArray(corner) ? corner : corner.to);

/** All places on as many more or fewer squares: the drawing stays as it is, its lines lie closer. Arcs want as many times more across as down. */
export const regridded = ({ grid, patches }: Drawn, to: Drawn['grid']): readonly DrawnPatch[] => {
  const place = ({ x, y }: Point): Point => at((x * to[0]) / grid[0], (y * to[1]) / grid[1]);
  return patches.map(({ points, arcs, tone }) => ({
    tone,
    points: points.map(place),
    ...(arcs === undefined
      ? {}
      : {
          arcs: arcs.map((arc) => ({ ...arc, from: place(arc.from), to: place(arc.to), centre: place(arc.centre) })),
        }),
  }));
};

/** The same for a block drawn by its seams. */
export const regridSeams = (drawing: Written, to: Drawn['grid']): void => {
  const from = drawing.grid.map(placeOf) as [number, number];
  const moved = ([x, y]: readonly [Place, Place]): [number | string, number | string] =>
    writtenPoint(at(((placeOf(x) ?? 0) * to[0]) / from[0], ((placeOf(y) ?? 0) * to[1]) / from[1]));
  drawing.seams = drawing.seams.map((seam) =>
    seam.map((point) =>
      Array.isArray(point) ? moved(point) : { ...point, to: moved(point.to), centre: moved(point.centre) },
    ),
  );
  for (const tone of drawing.tonesAt) tone.at = moved(tone.at);
  drawing.grid = [writtenPlace(to[0]), writtenPlace(to[1])];
};

export interface Reseamed {
  readonly grid: Drawn['grid'];
  /** The patches that the seams then make. */
  readonly patches: readonly DrawnPatch[];
  /** Seams that are ruled. */
  readonly ruled?: readonly (readonly Point[])[];
  /** A curve, or a line, from place to place. */
  readonly bent?: readonly CrossedEdge[];
  /** Stretches of seams that are taken out. */
  readonly out?: readonly CrossedEdge[];
}

/** A block drawn by its seams stays one. */
export const putSeams = (drawing: Written, { grid, patches, ruled = [], bent = [], out = [] }: Reseamed): void => {
  const slack = slackOf(grid);
  if (out.length > 0) drawing.seams = drawing.seams.flatMap((seam) => withoutStretches(seam, out, slack));
  drawing.seams.push(...ruled.map((run) => run.map(writtenPoint)));
  drawing.seams.push(
    ...bent.map(({ from, to, arc }) => [writtenPoint(from), arc === null ? writtenPoint(to) : writtenArc(arc)]),
  );
  const was = drawing.tonesAt;
  drawing.tonesAt = patches.map(({ points, tone }) => {
    const own = was.find((one) => {
      const place = pointOf(one.at);
      return one.tone === tone && place !== null && isInside(place, points) && !isOnOutline(place, points, slack);
    });
    return own ?? { at: writtenPoint(roomiestPoint(points)), tone };
  });
};

type Seam = Written['seams'][number];

const withoutStretches = (seam: Seam, out: readonly CrossedEdge[], slack: number): readonly Seam[] => {
  const runs: Seam[] = [];
  let open: Seam = [];
  const close = (): void => {
    if (open.length > 1) runs.push(open);
    open = [];
  };
  for (const [i, written] of seam.slice(1).entries()) {
    const line = edgeAt(seam, i);
    if (line === null) return [seam];
    const { from: a, to: b } = line;
    for (const { from, to, arc } of keptOf(line, out, slack)) {
      const last = open.at(-1);
      const joins = last !== undefined && isNear(endOf(last) ?? at(-1, -1), from, slack);
      if (!joins) {
        close();
        open = [isNear(from, a, slack) ? pointAt(seam[i] as Corner) : writtenPoint(from)];
      }
      if (isNear(from, a, slack) && isNear(to, b, slack)) open.push(written);
      else if (arc !== null) open.push(writtenArc(arc));
      else open.push(isNear(to, b, slack) ? written : writtenPoint(to));
    }
  }
  close();
  return runs;
};

const pointAt = (corner: Corner): Corner => (Array.isArray(corner) ? corner : corner.to);

/** What stays of a line or an arc when stretches of it are taken out. */
const keptOf = (line: CrossedEdge, out: readonly CrossedEdge[], slack: number): readonly CrossedEdge[] => {
  const gone = out.filter((stretch) => isPart(stretch, line, slack));
  const ends = gone.flatMap(({ from, to }) => [from, to]);
  return partsOf(line, ends, slack).filter((part) => !gone.some((stretch) => isPart(part, stretch, 2 * slack)));
};

const partsOf = ({ from, to, arc }: CrossedEdge, ends: readonly Point[], slack: number): readonly CrossedEdge[] => {
  if (arc === null) return splitAt([from, to], ends, slack).map(([a, b]) => ({ from: a, to: b, arc }));
  const turnTo = (p: Point): number => sweepOf({ ...arc, to: p });
  const inner = ends
    .filter((p) => !isNear(p, from, 4 * slack) && !isNear(p, to, 4 * slack))
    .toSorted((a, b) => turnTo(a) - turnTo(b))
    .filter((p, i, all) => !isNear(p, all[i - 1] ?? from, 4 * slack));
  const stops = [from, ...inner, to];
  return stops.slice(1).map((end, i) => {
    const begin = stops[i] as Point;
    return { from: begin, to: end, arc: arcThrough({ ...arc, from: begin, to: end }) };
  });
};

/** A seam of the drawing by its number is taken out whole, as where it ends inside a patch. */
export const dropSeam = (drawing: Written, number: number): void => {
  drawing.seams.splice(number, 1);
};
