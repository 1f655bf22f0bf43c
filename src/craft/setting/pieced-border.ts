// The blocks of a pieced border: side by side along every side, upper edges outward. Each side is a run in
// a frame turned with it, so that equal sides are seen to be equal.
import type { DraftedBlock } from '#craft/drafting';
import { tidy } from '#craft/measure';
import { at, type Box, type Point } from '#ground/plane';
import { type Laying, layBlock, layStrip, outlineOfRect, rectOf } from './pieces.ts';
import { turnedBy } from './place.ts';
import type { Assembly, BorderRing, TopThing } from './top.ts';

interface PiecedRing {
  readonly laying: Laying;
  readonly block: DraftedBlock;
  /** Cloth of plain corner squares; null where square blocks fill the corners. */
  readonly spacer: string | null;
  readonly ring: number;
  readonly place: number;
  readonly path: string;
  /** A whole number of blocks long each way. */
  readonly inner: Box;
}

/**
 * Left and right first, then top and bottom with the corners. A square block in a corner is turned with the
 * side that begins there, clockwise from the upper left: 0, 90, 180, 270.
 */
export const layPieced = (of: PiecedRing): BorderRing => {
  const { inner, ring, place } = of;
  const run = (turn: 0 | 90 | 180 | 270, parts: readonly TopThing[]): Assembly => ({
    run: 'across',
    angle: turn,
    stage: 'border',
    of: place,
    parts: parts.map((thing) => ({ thing })),
  });
  const [, width] = of.block.size;
  const { x, y } = inner;
  const right = x + inner.width;
  const bottom = y + inner.height;
  const left = unitsAlong(of, { from: at(x, bottom), turn: 270, length: inner.height });
  const rightSide = unitsAlong(of, { from: at(right, y), turn: 90, length: inner.height });
  const topSide = [
    corner(of, { middle: at(x - width / 2, y - width / 2), turn: 0 }),
    ...unitsAlong(of, { from: at(x, y), turn: 0, length: inner.width }),
    corner(of, { middle: at(right + width / 2, y - width / 2), turn: 90 }),
  ];
  const bottomSide = [
    corner(of, { middle: at(right + width / 2, bottom + width / 2), turn: 180 }),
    ...unitsAlong(of, { from: at(right, bottom), turn: 180, length: inner.width }),
    corner(of, { middle: at(x - width / 2, bottom + width / 2), turn: 270 }),
  ];
  return {
    kind: 'pieced',
    border: ring,
    angle: 0,
    parts: [
      { side: 'left', assembly: run(270, left) },
      { side: 'right', assembly: run(90, rightSide) },
      { side: 'top', assembly: run(0, topSide) },
      { side: 'bottom', assembly: run(180, bottomSide) },
    ],
  };
};

/** From the inner corner on, in the direction of the side turned by `turn`, outward to its left hand. */
const unitsAlong = (
  of: PiecedRing,
  side: { readonly from: Point; readonly turn: 0 | 90 | 180 | 270; readonly length: number },
): readonly TopThing[] => {
  const [unit, width] = of.block.size;
  const count = Math.round(side.length / unit);
  return Array.from({ length: count }, (_, i) => {
    const middle = turnedBy(at((i + 0.5) * unit, -width / 2), side.turn);
    return layTurned(of, { middle: at(side.from.x + middle.x, side.from.y + middle.y), turn: side.turn });
  });
};

const corner = (of: PiecedRing, place: { readonly middle: Point; readonly turn: 0 | 90 | 180 | 270 }): TopThing => {
  if (of.spacer === null) return layTurned(of, place);
  const [, width] = of.block.size;
  const { middle } = place;
  const rect = rectOf({ x: middle.x - width / 2, y: middle.y - width / 2, width, height: width });
  const { spacer: fabric, path } = of;
  return layStrip(of.laying, {
    role: 'border-corner',
    fabric,
    points: outlineOfRect(rect),
    rect,
    grain: null,
    border: null,
    path,
  });
};

const layTurned = (of: PiecedRing, place: { readonly middle: Point; readonly turn: 0 | 90 | 180 | 270 }): TopThing => {
  const { block, laying } = of;
  const [width, height] = block.size;
  const size = place.turn % 180 === 0 ? ([width, height] as const) : ([height, width] as const);
  return layBlock(laying, {
    block: block.id,
    colouring: 'default',
    mirror: false,
    turn: place.turn,
    at: [tidy(place.middle.x - size[0] / 2), tidy(place.middle.y - size[1] / 2)],
    size,
    path: of.path,
  });
};
