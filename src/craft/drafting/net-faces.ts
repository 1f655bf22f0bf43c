// The patches that a net of seams encloses, and the seams that enclose nothing.
import { arcDirection, bowArea, chordPoints, radiusOf, reversedArc } from '#ground/arc';
import { type Polygon, signedArea } from '#ground/plane';
import type { Bow, NetCorner, NetEdge, SeamNet } from './seam-net.ts';

/** A walk round a patch. */
export interface NetRing {
  /** By index. */
  readonly corners: readonly number[];
  /** Where the walk from a corner to the next runs over an arc: by place in the walk, as it is walked there. */
  readonly bows: readonly { readonly edge: number; readonly bow: Bow }[];
}

export interface NetFaces {
  /** Of each patch, clockwise on screen. Sound only where nothing is loose or closed in. */
  readonly faces: readonly NetRing[];
  /** Corners where one edge alone ends. */
  readonly looseEnds: readonly number[];
  /** Edges, by index, one for each group of seams that lies inside a single patch. */
  readonly closedIn: readonly number[];
}

export const facesOf = ({ corners, edges }: SeamNet): NetFaces => {
  // half-edge 2i runs along edge i, 2i + 1 back
  const from = edges.flatMap(({ ends }) => [ends[0], ends[1]]);
  const next = nextHalfEdges(from, { corners, edges });
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
  const rings = walks.map(
    (walk): NetRing => ({
      corners: walk.map((h) => from[h] as number),
      bows: walk.flatMap((h, edge) => {
        const bow = bowAlong(edges, h);
        return bow === null ? [] : [{ edge, bow }];
      }),
    }),
  );
  const areas = rings.map((ring) => areaOfRing(ring, corners));
  const degrees = new Map<number, number>();
  for (const corner of from) degrees.set(corner, (degrees.get(corner) ?? 0) + 1);
  const looseEnds = [...degrees].filter(([, degree]) => degree === 1).map(([corner]) => corner);
  const outside = walkOf[outerHalfEdge(areas, walks)] as number;
  const faces: NetRing[] = [];
  const closedIn: number[] = [];
  rings.forEach((ring, w) => {
    if (w === outside) return;
    const inside = (areas[w] as number) > 0;
    if (inside && new Set(ring.corners).size === ring.corners.length) faces.push(ring);
    else if (!ring.corners.some((corner) => degrees.get(corner) === 1))
      closedIn.push(seamIn(walks[w] as number[], edges));
  });
  return { faces, looseEnds, closedIn };
};

/** A half-edge's arc as it is walked, or null. */
const bowAlong = (edges: readonly NetEdge[], h: number): Bow | null => {
  const bow = edges[h >> 1]?.bow ?? null;
  return bow === null || h % 2 === 0 ? bow : { ...bow, arc: reversedArc(bow.arc) };
};

/** Exact, arcs included. */
export const areaOfRing = ({ corners: ring, bows }: NetRing, corners: readonly NetCorner[]): number =>
  signedArea(ring.map((index) => (corners[index] as NetCorner).p)) +
  bows.reduce((all, { bow }) => all + bowArea(bow.arc), 0);

/** With chords for arcs, no further from them than `chord`. */
export const outlineOfRing = (ring: NetRing, corners: readonly NetCorner[], chord: number): Polygon => {
  const bows = new Map(ring.bows.map(({ edge, bow }) => [edge, bow.arc]));
  return ring.corners.flatMap((index, i) => {
    const arc = bows.get(i);
    const corner = (corners[index] as NetCorner).p;
    return arc === undefined ? [corner] : [corner, ...chordPoints(arc, chord)];
  });
};

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
const nextHalfEdges = (from: readonly number[], { corners, edges }: SeamNet): readonly number[] => {
  const leaving = new Map<number, Spoke[]>();
  from.forEach((corner, h) => {
    const spoke = spokeOf(h, { corners, edges, from });
    const spokes = leaving.get(corner);
    if (spokes) spokes.push(spoke);
    else leaving.set(corner, [spoke]);
  });
  const next: number[] = new Array(from.length);
  for (const spokes of leaving.values()) {
    const around = inTurn(spokes);
    around.forEach(({ h }, i) => {
      const before = around[(i + around.length - 1) % around.length] as Spoke;
      // arriving here along the twin of h, go on along the spoke before it
      next[h ^ 1] = before.h;
    });
  }
  return next;
};

interface Spoke {
  readonly h: number;
  readonly angle: number;
  /** How it bends from there: above 0 clockwise. */
  readonly bends: number;
}

const spokeOf = (h: number, of: SeamNet & { readonly from: readonly number[] }): Spoke => {
  const bow = bowAlong(of.edges, h);
  if (bow !== null) {
    const { x, y } = arcDirection(bow.arc, 'from');
    return { h, angle: Math.atan2(y, x), bends: (bow.arc.clockwise ? 1 : -1) / radiusOf(bow.arc) };
  }
  const here = (of.corners[of.from[h] as number] as NetCorner).p;
  const there = (of.corners[of.from[h ^ 1] as number] as NetCorner).p;
  return { h, angle: Math.atan2(there.y - here.y, there.x - here.x), bends: 0 };
};

/** Edges that leave a corner in one direction but for this, in radians, are told apart by how they bend. Our own figure. */
const sameWay = 1e-4;

/** Clockwise from the left. */
const inTurn = (spokes: readonly Spoke[]): readonly Spoke[] => {
  const byAngle = spokes.toSorted((a, b) => a.angle - b.angle);
  // the way to the left is both ends of the order
  const seam = byAngle.findIndex(
    ({ angle }, i) => angle - (byAngle[i - 1]?.angle ?? Number.NEGATIVE_INFINITY) > sameWay && i > 0,
  );
  const isSplit =
    byAngle.length > 1 && wholeTurn + (byAngle[0] as Spoke).angle - (byAngle.at(-1) as Spoke).angle < sameWay;
  const around = isSplit && seam > 0 ? [...byAngle.slice(seam), ...byAngle.slice(0, seam)] : byAngle;
  const groups: Spoke[][] = [];
  for (const spoke of around) {
    const last = groups.at(-1)?.at(-1);
    const apart = last === undefined ? wholeTurn : Math.abs(spoke.angle - last.angle);
    if (Math.min(apart, wholeTurn - apart) < sameWay && last !== undefined) groups.at(-1)?.push(spoke);
    else groups.push([spoke]);
  }
  return groups.flatMap((group) => group.sort((a, b) => a.bends - b.bends));
};

const wholeTurn = 2 * Math.PI;
