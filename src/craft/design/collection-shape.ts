// A block of the collection brought to a size: the shape that a document would have spelt out.
import type { CabinDrawing, CollectionBlock, GridDrawing } from '#craft/collection';
import { div, fromDecimal, mul, type Rational, rational } from '#ground/exact';
import type {
  CollectionDesign,
  GridArc,
  GridPatch,
  GridPoint,
  GridRun,
  LogCabinDesign,
  PatchesDesign,
} from './quilt.ts';
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
      patches.map((outline): GridPatch => ({ tone, letter, ...runFrom(outline) })),
    ),
  };
};

const runFrom = (text: string): GridRun => {
  const written = text.split(' ').map((entry) => /^([^()]+)(?:([()])(.+))?$/.exec(entry) ?? []);
  const corners = written.map(([, corner = '']) => pointFrom(corner));
  const arcs = written.flatMap(([, , way, centre], i): readonly GridArc[] =>
    centre === undefined
      ? []
      : [{ edge: (i + corners.length - 1) % corners.length, centre: pointFrom(centre), clockwise: way === ')' }],
  );
  return arcs.length === 0 ? { corners } : { corners, arcs };
};

const pointFrom = (text: string): GridPoint => {
  const [x = '', y = ''] = text.split(',');
  return [fromDecimal(Number(x)), fromDecimal(Number(y))];
};

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
