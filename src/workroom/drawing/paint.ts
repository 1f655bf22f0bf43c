// Paints a scene: one path for each cloth of each sprite, made once; what lies outside the screen is left out.
import type { ClothPicture, ClothPictures } from './cloth-pictures.tsx';
import { faultLines, ink, type Line, stroke, white } from './pens.ts';
import { cutOf, quartersOf } from './photo-cut.ts';
import type { Matrix, Scene, Shape } from './scene.ts';
import type { Extent, View } from './view.ts';

/** Paths of a scene, made once and drawn often. */
export interface Prepared {
  readonly scene: Scene;
  readonly sprites: readonly { readonly fills: readonly Fill[]; readonly edge: Path2D }[];
  readonly loose: { readonly fills: readonly Fill[]; readonly edge: Path2D };
  readonly patchSide: number;
}

interface Fill {
  readonly fabric: string;
  readonly path: Path2D;
  /** The shapes of this cloth one by one, with their places among all. */
  readonly pieces: readonly Piece[];
}

interface Piece {
  readonly points: readonly number[];
  readonly place: number;
  /** Of a square as large. */
  readonly side: number;
}

export const prepared = (scene: Scene): Prepared => ({
  scene,
  sprites: scene.sprites.map(({ shapes }) => pathsOf(shapes)),
  loose: pathsOf(scene.loose),
  patchSide: usualSide(scene),
});

const pathsOf = (shapes: readonly Shape[]): { readonly fills: readonly Fill[]; readonly edge: Path2D } => {
  const byFabric = new Map<string, { readonly path: Path2D; readonly pieces: Piece[] }>();
  const edge = new Path2D();
  for (const [place, { points, fabric }] of shapes.entries()) {
    const own = byFabric.get(fabric) ?? { path: new Path2D(), pieces: [] };
    byFabric.set(fabric, own);
    own.pieces.push({ points, place, side: sideOf(points) });
    addTo(own.path, points);
    addTo(edge, points);
  }
  return { fills: [...byFabric].map(([fabric, own]) => ({ fabric, ...own })), edge };
};

/** Of a square as large as the shape. */
const sideOf = (points: readonly number[]): number => {
  let twice = 0;
  const n = points.length;
  for (let i = 0, j = n - 2; i + 1 < n; j = i, i += 2)
    twice += (points[j] as number) * (points[i + 1] as number) - (points[i] as number) * (points[j + 1] as number);
  return Math.sqrt(Math.abs(twice) / 2);
};

/** Closing a shape asks a browser for the bounds of the whole path, which takes as long again for each of thousands: a line back does too. */
export const addTo = (path: Path2D | CanvasRenderingContext2D, points: readonly number[]): void => {
  const [x, y] = points;
  if (x === undefined || y === undefined) return;
  path.moveTo(x, y);
  for (let i = 2; i + 1 < points.length; i += 2) path.lineTo(points[i] as number, points[i + 1] as number);
  path.lineTo(x, y);
};

export const trace = (path: Path2D | CanvasRenderingContext2D, points: readonly number[]): void => {
  for (let i = 0; i + 1 < points.length; i += 2) {
    if (i === 0) path.moveTo(points[i] as number, points[i + 1] as number);
    else path.lineTo(points[i] as number, points[i + 1] as number);
  }
  path.closePath();
};

export interface Painting {
  readonly prepared: Prepared;
  readonly view: View;
  readonly screen: Extent;
  /** Device pixels for one CSS pixel. */
  readonly density: number;
  /** Cloths that are drawn by their photographs. */
  readonly pictures: ClothPictures;
}

/** Edges are hairlines, fainter on small patches: many of them would darken the cloth. */
export const paint = (to: CanvasRenderingContext2D, of: Painting): void => {
  const { view, screen, density, pictures } = of;
  const { scene, sprites, loose, patchSide } = of.prepared;
  const { scale } = view;
  const place = (a: number, b: number, c: number, d: number, e: number, f: number): void =>
    to.setTransform(
      density * scale * a,
      density * scale * b,
      density * scale * c,
      density * scale * d,
      density * (view.x + scale * e),
      density * (view.y + scale * f),
    );
  to.setTransform(1, 0, 0, 1, 0, 0);
  to.clearRect(0, 0, screen.width * density, screen.height * density);
  to.strokeStyle = ink;
  to.lineJoin = 'round';
  to.lineWidth = 0.75 / scale;
  to.globalAlpha = 1;
  const colourOf = (fabric: string): string => scene.colours.get(fabric) ?? '#cccccc';
  const edge = edgeStrength(scale * patchSide);
  const strokeEdge = (path: Path2D): void => {
    if (edge === 0) return;
    to.globalAlpha = edge;
    to.stroke(path);
    to.globalAlpha = 1;
  };
  const pxInUnit = density * scale;
  const fillOne = (cloth: string, piece: Piece, at: Lying): void => {
    const picture = piece.side * scale >= leastPhotoPx ? pictures.get(cloth) : undefined;
    if (picture === undefined) {
      to.fillStyle = colourOf(cloth);
      fillOutline(to, piece.points);
    } else fillPiece(to, { ...at, piece, picture, pxInUnit });
  };
  const fillAll = ({ fabric, path, pieces }: Fill, at: Lying): void => {
    const isPhoto = pictures.has(fabric) && pieces.some(({ side }) => side * scale >= leastPhotoPx);
    if (!isPhoto) {
      to.fillStyle = colourOf(fabric);
      to.fill(path);
    } else for (const piece of pieces) fillOne(fabric, piece, at);
  };
  place(1, 0, 0, 1, 0, 0);
  for (const fill of loose.fills) fillAll(fill, { matrix: [1, 0, 0, 1, 0, 0], number: -1 });
  strokeEdge(loose.edge);
  for (const [number, { sprite, matrix, box, fabrics }] of scene.placed.entries()) {
    const [x, y, width, height] = box;
    const isOut =
      (x + width) * scale + view.x < 0 ||
      (y + height) * scale + view.y < 0 ||
      x * scale + view.x > screen.width ||
      y * scale + view.y > screen.height;
    const paths = sprites[sprite];
    if (isOut || paths === undefined) continue;
    place(...matrix);
    if (fabrics === null) {
      for (const fill of paths.fills) fillAll(fill, { matrix, number });
    } else {
      for (const { fabric, pieces } of paths.fills) {
        for (const piece of pieces) fillOne(fabrics[piece.place] ?? fabric, piece, { matrix, number });
      }
    }
    strokeEdge(paths.edge);
  }
};

/** From nothing to full ink, by how many pixels wide patches are. */
const edgeStrength = (sidePx: number): number => Math.min(1, Math.max(0, (sidePx - 5) / 12));

/**
 * Pieces smaller than this on the screen show their cloth's colour: a photograph would only flicker. So many as then are seen are painted in
 * some 40 ms (12 µs each, measured).
 */
const leastPhotoPx = 12;

/** How what a piece belongs to lies, and its number among all that is placed. */
interface Lying {
  readonly matrix: Matrix;
  readonly number: number;
}

const fillPiece = (
  to: CanvasRenderingContext2D,
  of: Lying & { readonly piece: Piece; readonly picture: ClothPicture; readonly pxInUnit: number },
): void => {
  const { matrix, number, piece, picture, pxInUnit } = of;
  const wantedPx = picture.size[0] * pxInUnit;
  const level = picture.levels.findLast(({ widthPx }) => widthPx >= wantedPx) ?? picture.levels[0];
  if (level === undefined) return;
  const [a, b, c, d, e, f] = cutOf({
    points: piece.points,
    size: picture.size,
    widthPx: level.widthPx,
    seed: number * 2003 + piece.place,
    quarters: picture.isUpright ? quartersOf(matrix) : 0,
  });
  level.pattern.setTransform({ a, b, c, d, e, f });
  to.fillStyle = level.pattern;
  fillOutline(to, piece.points);
};

const fillOutline = (to: CanvasRenderingContext2D, points: readonly number[]): void => {
  to.beginPath();
  trace(to, points);
  to.fill();
};

/** The side that each shape would have if a sprite were cut into squares, in the sprite with the smallest: what edges are judged by. */
const usualSide = ({ sprites }: Scene): number =>
  Math.min(...sprites.map(({ shapes, size }) => size[0] / Math.max(1, Math.sqrt(shapes.length))));

/** A double outline, white between ink: seen on every cloth. */
export const outline = (
  to: CanvasRenderingContext2D,
  of: {
    readonly points: readonly number[];
    readonly view: View;
    readonly density: number;
    readonly kind: 'chosen' | 'among' | 'here' | 'problem';
  },
): void => {
  const { points, view, density, kind } = of;
  to.setTransform(density, 0, 0, density, 0, 0);
  to.beginPath();
  trace(
    to,
    points.map((value, i) => value * view.scale + (i % 2 === 0 ? view.x : view.y)),
  );
  to.lineJoin = 'miter';
  stroke(to, linesOf[kind]);
};

const chosenLines = [
  { width: 7, colour: ink, dash: [] },
  { width: 4, colour: white, dash: [] },
  { width: 1.5, colour: ink, dash: [] },
];

const linesOf: Readonly<Record<'chosen' | 'among' | 'here' | 'problem', readonly Line[]>> = {
  chosen: chosenLines,
  // one of several: as the chosen one, but lighter
  among: [
    { width: 5, colour: ink, dash: [] },
    { width: 3, colour: white, dash: [] },
  ],
  // where the keys stand, beside what is chosen
  here: [
    { width: 3, colour: white, dash: [] },
    { width: 1.5, colour: ink, dash: [3, 3] },
  ],
  problem: faultLines,
};
