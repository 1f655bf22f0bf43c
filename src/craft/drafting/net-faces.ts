// The patches that a net of seams encloses, and the seams that enclose nothing.
import { type Polygon, signedArea } from '#ground/plane';
import type { NetCorner, SeamNet } from './seam-net.ts';

export interface NetFaces {
  /** Corners of each patch by index, clockwise on screen. Sound only where nothing is loose or closed in. */
  readonly faces: readonly (readonly number[])[];
  /** Corners where one edge alone ends. */
  readonly looseEnds: readonly number[];
  /** Edges, by index, one for each group of seams that lies inside a single patch. */
  readonly closedIn: readonly number[];
}

export const facesOf = ({ corners, edges }: SeamNet): NetFaces => {
  // half-edge 2i runs along edge i, 2i + 1 back
  const from = edges.flatMap(({ ends }) => [ends[0], ends[1]]);
  const next = nextHalfEdges(from, corners);
  const walkOf = new Int32Array(from.length).fill(-1);
  const walks: number[][] = [];
  from.forEach((_, start) => {
    if (walkOf[start] !== -1) return;
    const walk: number[] = [];
    for (let h = start; walkOf[h] === -1; h = next[h] as number) {
      walkOf[h] = walks.length;
      walk.push(h);
    }
    walks.push(walk);
  });
  const rings = walks.map((walk) => walk.map((h) => from[h] as number));
  const areas = rings.map((ring) => signedArea(outlineOfRing(ring, corners)));
  const degrees = new Map<number, number>();
  for (const corner of from) degrees.set(corner, (degrees.get(corner) ?? 0) + 1);
  const looseEnds = [...degrees].filter(([, degree]) => degree === 1).map(([corner]) => corner);
  const outside = walkOf[outerHalfEdge(areas, walks)] as number;
  const faces: (readonly number[])[] = [];
  const closedIn: number[] = [];
  rings.forEach((ring, w) => {
    if (w === outside) return;
    const inside = (areas[w] as number) > 0;
    if (inside && new Set(ring).size === ring.length) faces.push(ring);
    else if (!ring.some((corner) => degrees.get(corner) === 1)) closedIn.push(seamIn(walks[w] as number[], edges));
  });
  return { faces, looseEnds, closedIn };
};

export const outlineOfRing = (ring: readonly number[], corners: readonly NetCorner[]): Polygon =>
  ring.map((index) => (corners[index] as NetCorner).p);

/** The walk round everything has the most area, walked against the clock. */
const outerHalfEdge = (areas: readonly number[], walks: readonly (readonly number[])[]): number => {
  let least = 0;
  areas.forEach((area, i) => {
    if (area < (areas[least] as number)) least = i;
  });
  return walks[least]?.[0] as number;
};

/** An edge of the walk that is a seam, not the block's outline. */
const seamIn = (walk: readonly number[], edges: SeamNet['edges']): number => {
  const found = walk.find((h) => edges[h >> 1]?.path !== null);
  return (found ?? (walk[0] as number)) >> 1;
};

/** For each half-edge the one that follows it with the patch kept at the right hand: the sharpest turn to the right. */
const nextHalfEdges = (from: readonly number[], corners: readonly NetCorner[]): readonly number[] => {
  const leaving = new Map<number, { readonly h: number; readonly angle: number }[]>();
  from.forEach((corner, h) => {
    const here = (corners[corner] as NetCorner).p;
    const there = (corners[from[h ^ 1] as number] as NetCorner).p;
    const spoke = { h, angle: Math.atan2(there.y - here.y, there.x - here.x) };
    const spokes = leaving.get(corner);
    if (spokes) spokes.push(spoke);
    else leaving.set(corner, [spoke]);
  });
  const next: number[] = new Array(from.length);
  for (const spokes of leaving.values()) {
    spokes.sort((a, b) => a.angle - b.angle);
    spokes.forEach(({ h }, i) => {
      const before = spokes[(i + spokes.length - 1) % spokes.length] as (typeof spokes)[number];
      // arriving here along the twin of h, go on along the spoke before it
      next[h ^ 1] = before.h;
    });
  }
  return next;
};
