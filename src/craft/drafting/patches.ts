// Patches drawn on a grid: exact corners brought to the block's finished size, near corners made one,
// and the patches put into reading order, so that the order of listing changes nothing further on.

import type { PatchesDesign } from '#craft/design';
import { length } from '#craft/measure';
import { div, mul, type Rational, toNumber } from '#ground/exact';
import { at, boxOf, type Point, signedArea, withoutStraightCorners } from '#ground/plane';
import type { DraftedBlock, Patch } from './block.ts';
import { inReadingOrder } from './reading-order.ts';

/** Corners closer than this share of the block's larger side are one corner. */
export const cornerTolerance = 1e-6;

export const draftPatches = (block: {
  readonly id: string;
  readonly title: string;
  readonly path: string;
  readonly shape: PatchesDesign;
}): DraftedBlock => {
  const { size, grid, patches } = block.shape;
  const across = div(size[0], grid[0]);
  const down = div(size[1], grid[1]);
  const width = toNumber(size[0]);
  const height = toNumber(size[1]);
  const meet = meetingCorners({ width, height });
  const drawn = patches.map((patch, index): Patch => {
    const points = patch.corners.map(([x, y]: readonly [Rational, Rational]) =>
      meet(at(toNumber(mul(x, across)), toNumber(mul(y, down)))),
    );
    const clockwise = signedArea(points) < 0 ? points.toReversed() : points;
    return { tone: patch.tone, points: fromUpperLeft(clockwise), path: `${block.path}/patches/list/${index}` };
  });
  const slack = cornerTolerance * Math.max(width, height);
  return {
    id: block.id,
    title: block.title,
    path: block.path,
    exactSize: size,
    size: [length(width), length(height)],
    patches: inReadingOrder(drawn, slack),
    added: null,
  };
};

/** The same outline without corners on a straight side; for pictures and cutting, not for the proof of tiling. */
export const outlineOf = (patch: Patch, slack: number): Patch['points'] => withoutStraightCorners(patch.points, slack);

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
