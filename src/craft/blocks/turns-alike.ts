// How may a block be turned at its place in the top without anyone seeing it? Its drawing and its cloths must be carried onto
// themselves; cloth with an upright, and pieces cut round a motif, would be seen to lie otherwise.
import type { QuarterTurn } from '#craft/design';
import { cornerTolerance } from '#craft/limits';
import { at, centroid, distance, type Point, type Polygon, quarterTurned } from '#ground/plane';

export interface BlockAsSeen {
  readonly size: readonly [number, number];
  readonly patches: readonly PatchAsSeen[];
  /** By place: the cloth of each patch, where some are drawn from lists; else null. */
  readonly drawn: readonly (readonly string[] | null)[];
}

interface PatchAsSeen {
  readonly points: Polygon;
  /** Patches of one name are cut from the same cloths. */
  readonly cloth: string;
  /** Whether its cloth has an upright, or its piece is cut round a motif. */
  readonly isUpright: boolean;
}

/** By place: the turns, clockwise and above none, after which it looks as before. */
export const turnsAlike = (block: BlockAsSeen): readonly (readonly QuarterTurn[])[] => {
  const { size, patches, drawn } = block;
  if (patches.length < 2 || patches.some(({ isUpright }) => isUpright)) return drawn.map(() => []);
  const isSquare = Math.abs(size[0] - size[1]) <= cornerTolerance * Math.max(...size);
  const turns = (isSquare ? ([90, 180, 270] as const) : ([180] as const)).flatMap((turn) => {
    const onto = carriedOnto(block, turn / 90);
    return onto === null ? [] : [{ turn, onto }];
  });
  return drawn.map((cloths) =>
    turns
      .filter(({ onto }) => cloths === null || onto.every((to, patch) => cloths[to] === cloths[patch]))
      .map(({ turn }) => turn),
  );
};

/** By patch: the one on which it comes to lie, of the same cloths; null where one comes to lie on none. */
const carriedOnto = ({ size, patches }: BlockAsSeen, quarters: number): readonly number[] | null => {
  const slack = 3 * cornerTolerance * Math.max(...size);
  const middle = at(size[0] / 2, size[1] / 2);
  const near = middlesNear(patches, Math.max(...size) / 256);
  const onto: number[] = [];
  for (const { points, cloth } of patches) {
    const moved = points.map((p) => {
      const { x, y } = quarterTurned(at(p.x - middle.x, p.y - middle.y), quarters);
      return at(x + middle.x, y + middle.y);
    });
    const to = near(centroid(moved)).find((other) => {
      const patch = patches[other] as PatchAsSeen;
      return patch.cloth === cloth && isSame(patch.points, moved, slack);
    });
    if (to === undefined) return null;
    onto.push(to);
  }
  return onto;
};

/** Patches whose middle lies in the cell of a point or in one beside it. */
const middlesNear = (patches: readonly PatchAsSeen[], cell: number): ((p: Point) => readonly number[]) => {
  const keyOf = (x: number, y: number): string => `${x} ${y}`;
  const cells = new Map<string, number[]>();
  patches.forEach(({ points }, patch) => {
    const { x, y } = centroid(points);
    const key = keyOf(Math.floor(x / cell), Math.floor(y / cell));
    const known = cells.get(key);
    if (known) known.push(patch);
    else cells.set(key, [patch]);
  });
  return ({ x, y }) =>
    [-1, 0, 1].flatMap((dx) =>
      [-1, 0, 1].flatMap((dy) => cells.get(keyOf(Math.floor(x / cell) + dx, Math.floor(y / cell) + dy)) ?? []),
    );
};

/** Whichever corner is named first. */
const isSame = (a: Polygon, b: Polygon, slack: number): boolean => {
  if (a.length !== b.length) return false;
  const first = a[0] as Point;
  return b.some(
    (p, from) =>
      distance(p, first) <= slack && a.every((q, i) => distance(q, b[(from + i) % b.length] as Point) <= slack),
  );
};
