// Exact drafts become doubles: corners that nearly meet made one, outlines clockwise from their upper left
// corner, and the core put into reading order, so that the order of listing changes nothing further on.
import { chordTolerance, cornerTolerance } from '#craft/limits';
import { length } from '#craft/measure';
import { type Arc, arcThrough, pointsBetweenSides } from '#ground/arc';
import { toNumber } from '#ground/exact';
import { at, boxOf, type Point } from '#ground/plane';
import { arcDivider, type Cornered, clockwiseCorners, inChords } from './arc-corners.ts';
import type { DraftedBlock, Patch } from './block.ts';
import type { ExactCorner, ExactDraft, ExactPatch } from './exact-draft.ts';
import { inReadingOrder } from './reading-order.ts';

export const settled = (
  draft: ExactDraft,
  { id, title, path }: Pick<DraftedBlock, 'id' | 'title' | 'path'>,
): DraftedBlock => {
  const width = length(toNumber(draft.size[0]));
  const height = length(toNumber(draft.size[1]));
  const larger = Math.max(width, height);
  const slack = cornerTolerance * larger;
  const meet = { corners: meetingCorners({ width, height }), centres: meetingCorners({ width, height }) };
  const outlines = draft.patches.map((patch) => corneredPatch(patch, meet));
  const divide = arcDivider({ corners: outlines.flatMap(({ corners }) => corners), slack });
  const patches = draft.patches.map((patch, i) =>
    settledPatch(patch, inChords(outlines[i] as Cornered, { divide, chord: chordTolerance * larger })),
  );
  const core = patches.length - draft.added.length;
  return {
    id,
    title,
    path,
    exactSize: draft.size,
    size: [width, height],
    patches: [...inReadingOrder(patches.slice(0, core), slack), ...patches.slice(core)],
    added: draft.added.length > 0 ? draft.added : null,
  };
};

/** The same outline without corners on a straight side; for pictures and cutting, not for the proof of tiling. */
export const outlineOf = ({ points, arcs = [] }: Patch, slack: number): Patch['points'] =>
  pointsBetweenSides({ points, arcs }, slack);

/** Clockwise from the upper left corner. */
const corneredPatch = (
  { corners, arcs = [] }: ExactPatch,
  meet: { readonly corners: (raw: Point) => Point; readonly centres: (raw: Point) => Point },
): Cornered => {
  const points = corners.map((corner) => meet.corners(inDoubles(corner)));
  const bent = arcs.map(({ edge, centre, clockwise }): Arc => {
    const [from, to] = [points[edge], points[(edge + 1) % points.length]] as [Point, Point];
    return arcThrough({ from, to, centre: meet.centres(inDoubles(centre)), clockwise });
  });
  const outline = clockwiseCorners({ corners: points, arcs: bent });
  return { ...outline, corners: fromUpperLeft(outline.corners) };
};

const inDoubles = ([x, y]: ExactCorner): Point => at(toNumber(x), toNumber(y));

const settledPatch = (
  { tone, letter, fabric, path }: ExactPatch,
  { points, arcs }: { readonly points: readonly Point[]; readonly arcs: readonly Arc[] },
): Patch => ({
  tone,
  ...(letter === undefined ? {} : { letter }),
  ...(fabric === undefined ? {} : { fabric }),
  points,
  ...(arcs.length === 0 ? {} : { arcs }),
  path,
});

/** Gives every corner its place, one place for corners that nearly meet, and for those that nearly lie on the block's edge. */
const meetingCorners = (size: { readonly width: number; readonly height: number }) => {
  const slack = cornerTolerance * Math.max(size.width, size.height);
  const cell = slack * 4;
  const places = new Map<string, Point[]>();
  return (raw: Point): Point => {
    const p = at(ontoEdge(raw.x, size.width, slack), ontoEdge(raw.y, size.height, slack));
    const column = Math.floor(p.x / cell);
    const row = Math.floor(p.y / cell);
    for (let i = column - 1; i <= column + 1; i++) {
      for (let j = row - 1; j <= row + 1; j++) {
        for (const q of places.get(`${i},${j}`) ?? []) {
          if (Math.abs(q.x - p.x) < slack && Math.abs(q.y - p.y) < slack) return q;
        }
      }
    }
    const key = `${column},${row}`;
    const here = places.get(key);
    if (here) here.push(p);
    else places.set(key, [p]);
    return p;
  };
};

const ontoEdge = (value: number, far: number, slack: number): number =>
  Math.abs(value) < slack ? 0 : Math.abs(value - far) < slack ? far : value;

const fromUpperLeft = (points: readonly Point[]): readonly Point[] => {
  const box = boxOf(points);
  let first = 0;
  let best = Number.POSITIVE_INFINITY;
  points.forEach((p, i) => {
    const far = p.x - box.x + (p.y - box.y) * 1.0001;
    if (far < best - 1e-9) {
      best = far;
      first = i;
    }
  });
  return [...points.slice(first), ...points.slice(0, first)];
};
