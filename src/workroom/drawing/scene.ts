// What is drawn, and what of it can be chosen: the same things for the eye, the pointer, the keys and the screen reader.
import type { Extent } from './view.ts';

export interface Scene extends Extent {
  readonly sprites: readonly Sprite[];
  readonly placed: readonly PlacedSprite[];
  /** Shapes of their own, under the sprites: sashes, borders and the like. */
  readonly loose: readonly Shape[];
  /** By cloth. */
  readonly colours: ReadonlyMap<string, string>;
  readonly things: readonly Thing[];
  /** So many shapes there are, counted where they lie. */
  readonly shapes: number;
}

export interface Shape {
  /** x, y, x, y … */
  readonly points: readonly number[];
  readonly fabric: string;
}

/** A group of shapes that is drawn in many places, from its own 0, 0. */
export interface Sprite {
  readonly size: readonly [width: number, height: number];
  readonly shapes: readonly Shape[];
}

export interface PlacedSprite {
  readonly sprite: number;
  /** As a canvas takes it. */
  readonly matrix: Matrix;
  /** x, y, width, height of the box round it. */
  readonly box: readonly [number, number, number, number];
  /** Where cloths differ from place to place. */
  readonly fabrics: readonly string[] | null;
}

export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** One thing that can be chosen. */
export interface Thing {
  readonly key: string;
  /** What it is, as it is read out. */
  readonly name: string;
  readonly outline: readonly number[];
  /** Where the document has it, where one may ask. */
  readonly path?: string;
  /** What lies in it, when one goes into it: made when asked for. */
  readonly inside: (() => readonly Thing[]) | null;
}

/** x, y, width, height of the box round it. */
export const boxOf = (outline: readonly number[]): readonly [number, number, number, number] => {
  const [x, y] = [outline.filter((_, i) => i % 2 === 0), outline.filter((_, i) => i % 2 === 1)];
  const [left, top] = [Math.min(...x), Math.min(...y)];
  return [left, top, Math.max(...x) - left, Math.max(...y) - top];
};

export const middleOf = (outline: readonly number[]): readonly [number, number] => {
  let [x, y] = [0, 0];
  for (let i = 0; i + 1 < outline.length; i += 2) {
    x += outline[i] as number;
    y += outline[i + 1] as number;
  }
  const corners = Math.max(1, outline.length / 2);
  return [x / corners, y / corners];
};

/** Whether a point lies in an outline: the sides that a ray to the right crosses are odd in number. */
export const isIn = (outline: readonly number[], [x, y]: readonly [number, number]): boolean => {
  let isOdd = false;
  const n = outline.length;
  for (let i = 0, j = n - 2; i + 1 < n; j = i, i += 2) {
    const [ax, ay, bx, by] = [outline[i], outline[i + 1], outline[j], outline[j + 1]] as [
      number,
      number,
      number,
      number,
    ];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) isOdd = !isOdd;
  }
  return isOdd;
};

/** The thing at a point; of several the last, which is drawn on top. */
export const thingAt = (things: readonly Thing[], point: readonly [number, number]): Thing | null =>
  things.findLast(({ outline }) => isIn(outline, point)) ?? null;

export type Way = 'left' | 'right' | 'up' | 'down';

const ways: Readonly<Record<Way, readonly [number, number]>> = {
  left: [-1, 0],
  right: [1, 0],
  up: [0, -1],
  down: [0, 1],
};

/** The neighbour that lies that way: near, and rather ahead than aside. Null at the edge. */
export const neighbourOf = (things: readonly Thing[], from: Thing, way: Way): Thing | null => {
  const [dx, dy] = ways[way];
  const [x, y] = middleOf(from.outline);
  let best: { readonly thing: Thing; readonly far: number } | null = null;
  for (const thing of things) {
    if (thing.key === from.key) continue;
    const [tx, ty] = middleOf(thing.outline);
    const ahead = (tx - x) * dx + (ty - y) * dy;
    const aside = Math.abs((tx - x) * dy) + Math.abs((ty - y) * dx);
    // what lies more aside than ahead is another way's neighbour
    if (ahead <= 1e-9 || aside > 2 * ahead) continue;
    const far = ahead + 2 * aside;
    if (best === null || far < best.far) best = { thing, far };
  }
  return best?.thing ?? null;
};
