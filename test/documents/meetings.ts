// Where seams meet, found anew by holding every seam against every other, and how many nest: the slow twin of pressing.
import type { Point, Polygon } from '#ground/plane';

/** Two seams that end on a third from either side, in one line or with no other beside them. */
export interface Met {
  readonly seams: readonly [number, number];
  /** For each: 1 where its second part lies onward along the seam that runs over both, else -1. */
  readonly ways: readonly [1 | -1, 1 | -1];
  /** For each: 1 where an allowance that runs clockwise round the middle of its own seam lies onward, else -1. */
  readonly clockwise: readonly [1 | -1, 1 | -1];
}

interface Laid {
  readonly path: Polygon;
  /** Degrees clockwise, square to the seam toward its second part. */
  readonly heading: number;
}

interface End {
  readonly along: number;
  readonly side: number;
  readonly turn: number;
  readonly seam: number;
  readonly way: 1 | -1;
  readonly clockwise: 1 | -1;
}

/** @param size of the whole: what lies nearer than a hundred-thousandth of it is one place */
export const meetingsFound = (seams: readonly Laid[], size: number): readonly Met[] => {
  const near = 1e-5 * size;
  return seams.flatMap(({ path }) =>
    path.slice(1).flatMap((b, leg) => {
      const on = endsOn(seams, path[leg] as Point, b, near);
      const placeOf = ({ along }: End): number => Math.round(along / (8 * near));
      return [...new Set(on.map(placeOf))].flatMap((place) => metAt(on.filter((end) => placeOf(end) === place)));
    }),
  );
};

/**
 * Where seams come to one from both sides: of each that ends there, whether it lies clockwise round that place.
 *
 * @param presses by seam; none that ends there is pressed open
 */
export const roundsOn = (of: {
  readonly seams: readonly Laid[];
  readonly over: number;
  readonly size: number;
  readonly presses: readonly Pressed[];
}): readonly (readonly boolean[])[] => {
  const { seams, over, size, presses } = of;
  const near = 1e-5 * size;
  const { path } = seams[over] as Laid;
  return path.slice(1).flatMap((b, leg) => {
    const on = endsOn(seams, path[leg] as Point, b, near);
    const placeOf = ({ along }: End): number => Math.round(along / (8 * near));
    const there = [...new Set(on.map(placeOf))].map((place) => on.filter((end) => placeOf(end) === place));
    const fromBoth = there.filter((ends) => new Set(ends.map(({ side }) => side)).size > 1);
    // clockwise round where it ends is counterclockwise round its own middle
    return fromBoth.map((ends) =>
      ends.map(({ seam, way, clockwise }) => alongOf(presses[seam] as Pressed, way, clockwise) === -clockwise),
    );
  });
};

const endsOn = (seams: readonly Laid[], a: Point, b: Point, near: number): readonly End[] => {
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const t = { x: (b.x - a.x) / long, y: (b.y - a.y) / long };
  return seams.flatMap((laid, seam) =>
    ([0, -1] as const).flatMap((end): readonly End[] => {
      const p = laid.path.at(end) as Point;
      const q = laid.path.at(end === 0 ? 1 : -2) as Point;
      const along = (p.x - a.x) * t.x + (p.y - a.y) * t.y;
      const off = Math.abs((p.x - a.x) * t.y - (p.y - a.y) * t.x);
      const [dx, dy] = [q.x - p.x, q.y - p.y];
      const side = (t.x * dy - t.y * dx) / Math.hypot(dx, dy);
      if (off > near || along < near || along > long - near || Math.abs(side) < 0.0175) return [];
      // walked inward from its first end, the second part lies on the hand of the seam; from its last, on the other
      const hand = isRightHanded(laid) === (end === 0) ? 1 : -1;
      const way = hand * (dx * t.y - dy * t.x) > 0 ? 1 : -1;
      // outward from its middle is against (dx, dy); clockwise from there, y down, is (dy, -dx)
      const clockwise = dy * t.x - dx * t.y > 0 ? 1 : -1;
      return [{ along, side: Math.sign(side), turn: Math.atan2(dy, dx), seam, way, clockwise }];
    }),
  );
};

/** Whether the second part lies to the right hand of one who walks along the seam, by all its legs together. */
const isRightHanded = ({ path, heading }: Laid): boolean => {
  const radians = (heading * Math.PI) / 180;
  const [a, b] = [path[0] as Point, path.at(-1) as Point];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  return dx * Math.sin(radians) - dy * Math.cos(radians) > 0;
};

const metAt = (ends: readonly End[]): readonly Met[] => {
  const [first, second] = [ends.filter(({ side }) => side < 0), ends.filter(({ side }) => side > 0)];
  const isOneLine = (a: End, b: End): boolean => Math.cos(a.turn - b.turn) < -0.9998;
  const lines = first.flatMap((a) => second.filter((b) => isOneLine(a, b)).map((b) => [a, b] as const));
  const [a, b] = [first[0], second[0]];
  const alone = first.length === 1 && second.length === 1 && a && b ? [[a, b] as const] : [];
  return (lines.length > 0 ? lines : alone).map(([one, other]) => ({
    seams: [one.seam, other.seam],
    ways: [one.way, other.way],
    clockwise: [one.clockwise, other.clockwise],
  }));
};

type Pressed = 0 | 1 | 'open' | 'clockwise' | 'counterclockwise';

/** @param presses by seam */
export const nestedOf = (met: readonly Met[], presses: readonly Pressed[]): number =>
  met.filter(({ seams, ways, clockwise }) => {
    const [p, q] = seams.map((seam, i) => alongOf(presses[seam] as Pressed, ways[i] as 1 | -1, clockwise[i] as 1 | -1));
    return p !== 0 && q !== 0 && p !== q;
  }).length;

/** 1: onward along the seam that runs over, -1: back, 0: both. */
const alongOf = (press: Pressed, way: 1 | -1, clockwise: 1 | -1): number => {
  if (press === 'open') return 0;
  if (press === 'clockwise') return clockwise;
  return press === 'counterclockwise' ? -clockwise : press === 1 ? way : -way;
};
