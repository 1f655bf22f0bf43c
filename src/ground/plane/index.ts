// Plane geometry on doubles: points, polygons, lines. x runs right, y runs down, so a polygon that
// runs clockwise on screen has a positive area here. Nothing about cloth.

export interface Point {
  readonly x: number;
  readonly y: number;
}

export type Polygon = readonly Point[];

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const at = (x: number, y: number): Point => ({ x, y });

/** Twice the signed area of the triangle a, b, c: positive when c lies to the right hand of a→b on screen (y down). */
export const cross = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

/** Of two vectors: their lengths and the cosine of the angle between them, multiplied. */
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/** The vector of length one from one point toward another, which lies elsewhere. */
export const unitVector = (from: Point, to: Point): Point => {
  const long = distance(from, to);
  return at((to.x - from.x) / long, (to.y - from.y) / long);
};

/** Signed area, positive for a polygon that runs clockwise on screen. */
export const signedArea = (polygon: Polygon): number => {
  let twice = 0;
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i] as Point;
    const b = polygon[(i + 1) % polygon.length] as Point;
    twice += a.x * b.y - b.x * a.y;
  }
  return twice / 2;
};

export const perimeter = (polygon: Polygon): number => {
  let all = 0;
  for (let i = 0; i < polygon.length; i++) {
    all += distance(polygon[i] as Point, polygon[(i + 1) % polygon.length] as Point);
  }
  return all;
};

export const boxOf = (points: readonly Point[]): Box => {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const p of points) {
    if (p.x < left) left = p.x;
    if (p.x > right) right = p.x;
    if (p.y < top) top = p.y;
    if (p.y > bottom) bottom = p.y;
  }
  return { x: left, y: top, width: right - left, height: bottom - top };
};

/** Centre of area of a simple polygon. */
export const centroid = (polygon: Polygon): Point => {
  let twice = 0;
  let x = 0;
  let y = 0;
  const o = polygon[0] as Point;
  for (let i = 1; i + 1 < polygon.length; i++) {
    const a = polygon[i] as Point;
    const b = polygon[i + 1] as Point;
    const w = cross(o, a, b);
    twice += w;
    x += w * (o.x + a.x + b.x);
    y += w * (o.y + a.y + b.y);
  }
  return twice === 0 ? o : { x: x / (3 * twice), y: y / (3 * twice) };
};

/** Distance of p from the line through a and b, positive to the right hand of a→b on screen. */
export const offLine = (a: Point, b: Point, p: Point): number => cross(a, b, p) / distance(a, b);

export const isConvex = (polygon: Polygon, tolerance: number): boolean =>
  polygon.every((a, i) => {
    const b = polygon[(i + 1) % polygon.length] as Point;
    const c = polygon[(i + 2) % polygon.length] as Point;
    return offLine(a, b, c) >= -tolerance;
  });

/** Drops corners that lie on the straight line between their neighbours. */
export const withoutStraightCorners = (polygon: Polygon, tolerance: number): Polygon =>
  polygon.filter((p, i) => {
    const before = polygon[(i + polygon.length - 1) % polygon.length] as Point;
    const after = polygon[(i + 1) % polygon.length] as Point;
    return Math.abs(offLine(before, after, p)) > tolerance;
  });

/** Quarter turns clockwise on screen about the origin; exact. */
export const quarterTurned = (p: Point, quarters: number): Point => {
  switch (((quarters % 4) + 4) % 4) {
    case 1:
      return { x: -p.y, y: p.x };
    case 2:
      return { x: -p.x, y: -p.y };
    case 3:
      return { x: p.y, y: -p.x };
    default:
      return p;
  }
};

/** Turned clockwise on screen about the origin, by radians. */
export const turned = (p: Point, radians: number): Point => {
  const c = Math.cos(radians);
  const s = Math.sin(radians);
  return { x: p.x * c - p.y * s, y: p.x * s + p.y * c };
};

/** Grown outward by `by` on every side, corners kept sharp (mitred). The polygon runs clockwise on screen. */
export const grown = (polygon: Polygon, by: number): Polygon => {
  const n = polygon.length;
  return polygon.map((p, i) => {
    const before = polygon[(i + n - 1) % n] as Point;
    const after = polygon[(i + 1) % n] as Point;
    const inLength = distance(before, p);
    const outLength = distance(p, after);
    const inX = (p.x - before.x) / inLength;
    const inY = (p.y - before.y) / inLength;
    const outX = (after.x - p.x) / outLength;
    const outY = (after.y - p.y) / outLength;
    // outward normals of a clockwise polygon (y down) are (dy, -dx)
    const turn = inX * outY - inY * outX;
    if (Math.abs(turn) < 1e-12) return { x: p.x + inY * by, y: p.y - inX * by };
    const k = (1 - (inX * outX + inY * outY)) / turn;
    return { x: p.x + by * (inY + inX * k), y: p.y + by * (-inX + inY * k) };
  });
};

/**
 * Drawn in by `by` on every side, for pictures: a corner moves no further than `most` times that along the longer of its two sides, or a
 * tip without any angle would be drawn in without end. The polygon runs clockwise on screen.
 */
export const drawnIn = (polygon: Polygon, by: number, most = 8): Polygon =>
  grown(polygon, -by).map((p, i) => {
    const corner = polygon[i] as Point;
    if (distance(corner, p) <= most * by) return p;
    const before = polygon[(i + polygon.length - 1) % polygon.length] as Point;
    const after = polygon[(i + 1) % polygon.length] as Point;
    const isIn = distance(before, corner) > distance(corner, after);
    const [from, to] = isIn ? [before, corner] : [corner, after];
    const along = unitVector(from, to);
    const back = (isIn ? -1 : 1) * most * by;
    return at(corner.x - along.y * by + along.x * back, corner.y + along.x * by + along.y * back);
  });

/** The convex outline round points, clockwise on screen, without corners on a straight side (Andrew's monotone chain, from memory). */
export const hullOf = (points: readonly Point[], tolerance: number): Polygon => {
  const sorted = inColumns(points, tolerance);
  const half = (run: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const p of run) {
      while (chain.length > 1 && !turnsRight(chain.at(-2) as Point, chain.at(-1) as Point, p, tolerance)) chain.pop();
      chain.push(p);
    }
    chain.pop();
    return chain;
  };
  return [...half(sorted), ...half(sorted.toReversed())];
};

/** From left to right; points that lie upright one above another but for rounding are one column, from the top down. */
const inColumns = (points: readonly Point[], tolerance: number): readonly Point[] => {
  const byX = [...points].sort((a, b) => a.x - b.x);
  const columns: Point[][] = [];
  byX.forEach((p, i) => {
    if (i === 0 || p.x - (byX[i - 1] as Point).x > tolerance) columns.push([p]);
    else columns.at(-1)?.push(p);
  });
  return columns.flatMap((column) => column.sort((a, b) => a.y - b.y));
};

const turnsRight = (a: Point, b: Point, c: Point, tolerance: number): boolean => {
  const far = distance(a, c);
  return far > tolerance ? cross(a, b, c) / far > tolerance : distance(a, b) > tolerance;
};

/** Even-odd rule; a point on the outline itself may count either way. */
export const isInside = (p: Point, outline: Polygon): boolean =>
  crossingsAt(outline, p.y).filter((x) => x < p.x).length % 2 === 1;

/** Where the level line at y crosses the outline, from left to right. */
const crossingsAt = (outline: Polygon, y: number): readonly number[] =>
  outline
    .flatMap((a, i) => {
      const b = outline[(i + 1) % outline.length] as Point;
      if (a.y > y === b.y > y) return [];
      return [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)];
    })
    .sort((m, n) => m - n);

/** Levels at which a place with room round it is looked for. Our own figure. */
const levelsTried = 23;

/** A place well inside an outline: of those in the middle between its edges, at many levels, the one furthest from any edge. */
export const roomiestPoint = (outline: Polygon): Point => {
  const box = boxOf(outline);
  const roomAt = (p: Point): number =>
    outline.reduce(
      (least, a, i) => Math.min(least, offStretch(p, a, outline[(i + 1) % outline.length] as Point)),
      Infinity,
    );
  const tried = Array.from({ length: levelsTried }, (_, i) => box.y + (box.height * (i + 0.5)) / levelsTried).flatMap(
    (y) => {
      const xs = crossingsAt(outline, y);
      return xs.flatMap((x, i) => (i % 2 === 0 ? [at((x + (xs[i + 1] as number)) / 2, y)] : []));
    },
  );
  const ranked = [innerPoint(outline), ...tried].map((p) => ({ p, room: roomAt(p) }));
  return ranked.reduce((a, b) => (b.room > a.room + 1e-9 ? b : a)).p;
};

/** How far a place lies from the nearest point of a stretch. */
const offStretch = (p: Point, a: Point, b: Point): number => {
  const long = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  const share = long === 0 ? 0 : ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long;
  const held = Math.min(1, Math.max(0, share));
  return Math.hypot(p.x - a.x - held * (b.x - a.x), p.y - a.y - held * (b.y - a.y));
};

/** The middle of the widest stretch of the level line half-way through the tallest band between corners. */
export const innerPoint = (outline: Polygon): Point => {
  const levels = [...new Set(outline.map(({ y }) => y))].sort((a, b) => a - b);
  const bands = levels.slice(1).map((below, i) => ({ above: levels[i] as number, below }));
  const tallest = bands.reduce((a, b) => (b.below - b.above > a.below - a.above ? b : a));
  const y = (tallest.above + tallest.below) / 2;
  const xs = crossingsAt(outline, y);
  const stretches = xs.flatMap((x, i) => (i % 2 === 0 ? [[x, xs[i + 1] as number] as const] : []));
  const [left, right] = stretches.reduce((a, b) => (b[1] - b[0] > a[1] - a[0] ? b : a));
  return at((left + right) / 2, y);
};
