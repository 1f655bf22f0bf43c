// A block of the collection brought to a size: the shape that a document would have spelt out.
import type { CabinDrawing, CollectionBlock, GridDrawing } from '#craft/collection';
import { div, fromDecimal, mul, type Rational, rational } from '#ground/exact';
import type { CollectionDesign, GridPatch, GridPoint, LogCabinDesign, PatchesDesign } from './quilt.ts';
import type { ExactSize } from './size.ts';

/** Exact as far as the drawing is; the eight-pointed family's grid is a decimal of fifteen places. */
export const collectionShape = ({ drawing }: CollectionBlock, size: ExactSize): CollectionDesign['shape'] =>
  drawing.kind === 'grid' ? gridShape(drawing, size) : cabinShape(drawing, size);

const gridShape = (drawing: GridDrawing, size: ExactSize): PatchesDesign => {
  const grid = fromDecimal(drawing.grid);
  return {
    kind: 'patches',
    size,
    grid: [grid, grid],
    patches: drawing.cloths.flatMap(({ tone, letter, patches }) =>
      patches.map((corners): GridPatch => ({ tone, letter, corners: cornersFrom(corners) })),
    ),
  };
};

const cornersFrom = (text: string): readonly GridPoint[] =>
  text.split(' ').map((corner): GridPoint => {
    const [x = '', y = ''] = corner.split(',');
    return [fromDecimal(Number(x)), fromDecimal(Number(y))];
  });

const cabinShape = ({ grid, centre, logWidth, order, rounds }: CabinDrawing, size: ExactSize): LogCabinDesign => {
  const across = div(size[0], rational(grid));
  const down = div(size[1], rational(grid));
  const widthAt = (side: (typeof order)[number]): Rational =>
    mul(rational(logWidth), side === 'left' || side === 'right' ? across : down);
  return {
    kind: 'log-cabin',
    centre: [mul(rational(centre.side), across), mul(rational(centre.side), down)],
    centreTone: centre.tone,
    centreLetter: centre.letter,
    centreBlock: null,
    logs: rounds.flatMap((roles, round) =>
      roles.map(({ tone, letter }, place) => {
        const side = order[place] as (typeof order)[number];
        return { side, width: widthAt(side), tone, letter, round, place };
      }),
    ),
  };
};
