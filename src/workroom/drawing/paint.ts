// Paints a scene: one path for each cloth of each sprite, made once; what lies outside the screen is left out.
import type { Scene, Shape } from './scene.ts';
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
}

export const prepared = (scene: Scene): Prepared => ({
  scene,
  sprites: scene.sprites.map(({ shapes }) => pathsOf(shapes)),
  loose: pathsOf(scene.loose),
  patchSide: usualSide(scene),
});

const pathsOf = (shapes: readonly Shape[]): { readonly fills: readonly Fill[]; readonly edge: Path2D } => {
  const byFabric = new Map<string, Path2D>();
  const edge = new Path2D();
  for (const { points, fabric } of shapes) {
    const path = byFabric.get(fabric) ?? new Path2D();
    byFabric.set(fabric, path);
    trace(path, points);
    trace(edge, points);
  }
  return { fills: [...byFabric].map(([fabric, path]) => ({ fabric, path })), edge };
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
}

/** On cloth, whose colours no theme changes. */
const ink = '#24211c';

/** Edges are hairlines, fainter on small patches: many of them would darken the cloth. */
export const paint = (to: CanvasRenderingContext2D, of: Painting): void => {
  const { view, screen, density } = of;
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
  place(1, 0, 0, 1, 0, 0);
  for (const { fabric, path } of loose.fills) {
    to.fillStyle = colourOf(fabric);
    to.fill(path);
  }
  strokeEdge(loose.edge);
  for (const { sprite, matrix, box, fabrics } of scene.placed) {
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
      for (const { fabric, path } of paths.fills) {
        to.fillStyle = colourOf(fabric);
        to.fill(path);
      }
    } else paintOwn(to, { shapes: scene.sprites[sprite]?.shapes ?? [], fabrics, colourOf });
    strokeEdge(paths.edge);
  }
};

/** From nothing to full ink, by how many pixels wide patches are. */
const edgeStrength = (sidePx: number): number => Math.min(1, Math.max(0, (sidePx - 5) / 12));

const paintOwn = (
  to: CanvasRenderingContext2D,
  of: {
    readonly shapes: readonly Shape[];
    readonly fabrics: readonly string[];
    readonly colourOf: (fabric: string) => string;
  },
): void => {
  for (const [index, { points, fabric }] of of.shapes.entries()) {
    to.fillStyle = of.colourOf(of.fabrics[index] ?? fabric);
    to.beginPath();
    trace(to, points);
    to.fill();
  }
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
  const lines = linesOf[kind];
  for (const { width, colour, dash } of lines) {
    to.lineWidth = width;
    to.strokeStyle = colour;
    to.setLineDash(dash);
    to.stroke();
  }
  to.setLineDash([]);
};

const chosenLines = [
  { width: 7, colour: ink, dash: [] },
  { width: 4, colour: '#ffffff', dash: [] },
  { width: 1.5, colour: ink, dash: [] },
];
interface Line {
  readonly width: number;
  readonly colour: string;
  readonly dash: number[];
}

const linesOf: Readonly<Record<'chosen' | 'among' | 'here' | 'problem', readonly Line[]>> = {
  chosen: chosenLines,
  // one of several: as the chosen one, but lighter
  among: [
    { width: 5, colour: ink, dash: [] },
    { width: 3, colour: '#ffffff', dash: [] },
  ],
  // where the keys stand, beside what is chosen
  here: [
    { width: 3, colour: '#ffffff', dash: [] },
    { width: 1.5, colour: ink, dash: [3, 3] },
  ],
  problem: [
    { width: 5, colour: '#ffffff', dash: [] },
    { width: 3, colour: '#a13d2b', dash: [6, 4] },
  ],
};
