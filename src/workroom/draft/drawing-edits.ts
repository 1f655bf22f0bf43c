// A block's drawing as the document has it: read for the hand to work at, and written back with what it changed. Places that nothing
// touched stay as they were written.
import { parseNumber } from '#craft/measure';
import { type Drawn, type DrawnPatch, slackOf } from '#craft/redrawing';
import { toNumber } from '#ground/exact';
import { clockwise, isNear, isOnOutline, isOnSide, type Side, splitAt } from '#ground/outline';
import { at, innerPoint, isInside, type Point } from '#ground/plane';
import type { DrawnAnswer } from '#workroom/compute';
import type { Block } from './block-edits.ts';

type Patches = NonNullable<Block['patches']>;
type Written = NonNullable<Block['drawing']>;
type Place = Written['grid'][number];
type Corner = Patches['list'][number]['points'][number];

/** A block of patches, read at once; null for other forms, and where a place cannot be read or an edge is an arc. */
export const drawnIn = ({ patches }: Block): Drawn | null => {
  if (patches === undefined) return null;
  const grid = patches.grid.map(placeOf);
  const list = patches.list.map(({ points, tone }) => ({ tone, points: points.map(pointOf) }));
  const [across, down] = grid;
  if (across === undefined || across === null || down === undefined || down === null) return null;
  if (list.some(({ points }) => points.includes(null))) return null;
  const read = list as unknown as readonly DrawnPatch[];
  // a document may list corners either way round
  return { grid: [across, down], patches: read.map(({ points, tone }) => ({ tone, points: clockwise(points) })) };
};

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
  const list = patches.map(({ points, tone }) => {
    const own = places.get(points);
    if (own === undefined) return { points: points.map(writtenPoint), tone };
    return own.tone === tone ? own : { ...own, tone };
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

/**
 * Whether the document can have the drawing so: patches with curved edges keep their shape there. They may be given another tone, or
 * taken out, and seams may be ruled across a block that is drawn by its seams.
 */
export const keepsCurves = (
  block: Block,
  of: { readonly before: Drawn; readonly patches: readonly DrawnPatch[]; readonly seams?: Partial<Reseamed> },
): boolean => {
  const { before, patches, seams } = of;
  const bent = before.patches.filter(({ curved }) => curved);
  if (bent.length === 0) return true;
  if (block.drawing !== undefined && seams !== undefined) return (seams.out ?? []).every(isOnLine(block.drawing));
  if (block.patches === undefined) return false;
  const known = new Set(before.patches.map(({ points }) => points));
  const kept = new Set(patches.map(({ points }) => points));
  const isTakenOut = patches.every(({ points }) => known.has(points));
  return isTakenOut || (bent.every(({ points }) => kept.has(points)) && patches.every(isWhole(known)));
};

/** Neither a part of a curved patch, nor one moved away. */
const isWhole =
  (known: ReadonlySet<DrawnPatch['points']>) =>
  ({ curved, points }: DrawnPatch): boolean =>
    curved === undefined || known.has(points);

/** Whether a stretch lies on a straight seam. */
const isOnLine =
  (drawing: Written) =>
  ([a, b]: Side): boolean => {
    const slack = slackOf(drawing.grid.map(placeOf) as [number, number]);
    return drawing.seams.some((seam) =>
      seam.slice(1).some((to, i) => {
        const ends = [endOf(seam[i] as Corner), pointOf(to)] as const;
        if (ends[0] === null || ends[1] === null) return false;
        const line: Side = [ends[0], ends[1]];
        return isOnSide(a, line, slack) && isOnSide(b, line, slack);
      }),
    );
  };

/** Where a seam is at one of its points, though an arc led there. */
const endOf = (corner: Corner): Point | null => pointOf(Array.isArray(corner) ? corner : corner.to);

/** All places on as many more or fewer squares: the drawing stays as it is, its lines lie closer. */
export const regridded = ({ grid, patches }: Drawn, to: Drawn['grid']): readonly DrawnPatch[] =>
  patches.map((patch) => ({
    ...patch,
    points: patch.points.map(({ x, y }) => at((x * to[0]) / grid[0], (y * to[1]) / grid[1])),
  }));

/** The same for a block drawn by its seams. */
export const regridSeams = (drawing: Written, to: Drawn['grid']): void => {
  const from = drawing.grid.map(placeOf) as [number, number];
  const moved = ([x, y]: readonly [Place, Place]): [number | string, number | string] =>
    writtenPoint(at(((placeOf(x) ?? 0) * to[0]) / from[0], ((placeOf(y) ?? 0) * to[1]) / from[1]));
  drawing.seams = drawing.seams.map((seam) => seam.map((point) => (Array.isArray(point) ? moved(point) : point)));
  for (const tone of drawing.tonesAt) tone.at = moved(tone.at);
  drawing.grid = [writtenPlace(to[0]), writtenPlace(to[1])];
};

export interface Reseamed {
  readonly grid: Drawn['grid'];
  /** The patches that the seams then make. */
  readonly patches: readonly DrawnPatch[];
  /** Seams that are ruled. */
  readonly ruled?: readonly (readonly Point[])[];
  /** Stretches of seams that are taken out. */
  readonly out?: readonly Side[];
}

/** A block drawn by its seams stays one. */
export const putSeams = (drawing: Written, { grid, patches, ruled = [], out = [] }: Reseamed): void => {
  const slack = slackOf(grid);
  if (out.length > 0) drawing.seams = drawing.seams.flatMap((seam) => withoutStretches(seam, out, slack));
  drawing.seams.push(...ruled.map((run) => run.map(writtenPoint)));
  const was = drawing.tonesAt;
  drawing.tonesAt = patches.map(({ points, tone }) => {
    const own = was.find((one) => {
      const place = pointOf(one.at);
      return one.tone === tone && place !== null && isInside(place, points) && !isOnOutline(place, points, slack);
    });
    return own ?? { at: writtenPoint(innerPoint(points)), tone };
  });
};

type Seam = Written['seams'][number];

const withoutStretches = (seam: Seam, out: readonly Side[], slack: number): readonly Seam[] => {
  const runs: Seam[] = [];
  let open: Seam = [];
  const close = (): void => {
    if (open.length > 1) runs.push(open);
    open = [];
  };
  for (const [i, to] of seam.slice(1).entries()) {
    const [a, b] = [endOf(seam[i] as Corner), endOf(to)];
    if (a === null || b === null) return [seam];
    if (!Array.isArray(to)) {
      // an arc is never taken out in part, and none is asked for whole
      if (open.length === 0) open = [writtenPoint(a)];
      open.push(to);
      continue;
    }
    for (const [from, end] of keptOf([a, b], out, slack)) {
      const last = open.at(-1);
      const joins = last !== undefined && isNear(pointOf(last) ?? at(-1, -1), from, slack);
      if (!joins) {
        close();
        open = [isNear(from, a, slack) ? (seam[i] as Corner) : writtenPoint(from)];
      }
      open.push(isNear(end, b, slack) ? to : writtenPoint(end));
    }
  }
  close();
  return runs;
};

/** What stays of a line when stretches of it are taken out. */
const keptOf = (line: Side, out: readonly Side[], slack: number): readonly Side[] => {
  const gone = out.filter((stretch) => stretch.every((p) => isOnSide(p, line, slack)));
  return splitAt(line, gone.flat(), slack).filter(
    ([p, q]) => !gone.some((stretch) => isOnSide(at((p.x + q.x) / 2, (p.y + q.y) / 2), stretch, slack)),
  );
};

/** A seam of the drawing by its number is taken out whole, as where it ends inside a patch. */
export const dropSeam = (drawing: Written, number: number): void => {
  drawing.seams.splice(number, 1);
};
