// Plain pieces of a top as they are laid down: a box, an outline, and what they are for.
import { type Length, tidy } from '#craft/measure';
import { at, boxOf, type Polygon } from '#ground/plane';
import type { Assembly, PlacedBlock, PlacedStrip, Rect, TopRow, TopThing } from './top.ts';

/** The part of a set without its borders, from its own upper left corner. */
export interface SetMiddle {
  readonly width: Length;
  readonly height: Length;
  readonly placed: readonly PlacedBlock[];
  readonly strips: readonly PlacedStrip[];
  readonly rows: readonly TopRow[];
  readonly assembly: Assembly;
}

export const rectOf = (box: {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}): Rect => ({ x: tidy(box.x), y: tidy(box.y), width: tidy(box.width), height: tidy(box.height) });

export const outlineOfRect = ({ x, y, width, height }: Rect): Polygon => [
  at(x, y),
  at(x + width, y),
  at(x + width, y + height),
  at(x, y + height),
];

export const plainRectangle = (of: Pick<PlacedStrip, 'role' | 'fabric' | 'path' | 'rect'>): PlacedStrip => ({
  ...of,
  points: outlineOfRect(of.rect),
  grain: null,
  border: null,
});

export const plainShape = (of: Pick<PlacedStrip, 'role' | 'fabric' | 'path' | 'points'>): PlacedStrip => ({
  ...of,
  rect: rectOf(boxOf(of.points)),
  grain: null,
  border: null,
});

/** Every block and plain piece of an assembly, in the order of joining. */
export const thingsOf = (assembly: Assembly): readonly TopThing[] => {
  if ('thing' in assembly) return [assembly.thing];
  if ('run' in assembly) return assembly.parts.flatMap(thingsOf);
  return [...thingsOf(assembly.core), ...assembly.round.parts.flatMap((part) => thingsOf(part.assembly))];
};

/** Collects what is laid down and tells each thing's index. */
export interface Laying {
  readonly placed: PlacedBlock[];
  readonly strips: PlacedStrip[];
}

export const layStrip = (laying: Laying, strip: PlacedStrip): TopThing => {
  laying.strips.push(strip);
  return { strip: laying.strips.length - 1 };
};

export const layBlock = (laying: Laying, block: PlacedBlock): TopThing => {
  laying.placed.push(block);
  return { block: laying.placed.length - 1 };
};

/** The same place in a frame whose origin lies further left and up. */
export const movedBy = (by: readonly [x: number, y: number]) => ({
  block: (placed: PlacedBlock): PlacedBlock => ({
    ...placed,
    at: [tidy(placed.at[0] + by[0]), tidy(placed.at[1] + by[1])],
  }),
  strip: (strip: PlacedStrip): PlacedStrip => ({
    ...strip,
    points: strip.points.map((p) => at(tidy(p.x + by[0]), tidy(p.y + by[1]))),
    rect: { ...strip.rect, x: tidy(strip.rect.x + by[0]), y: tidy(strip.rect.y + by[1]) },
  }),
});
