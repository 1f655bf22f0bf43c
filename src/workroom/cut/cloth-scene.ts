// A cloth unrolled, as a drawing: its panels beside one another or one alone, every piece in it a thing that can be chosen.
import { inchIn, type Unit } from '#craft/measure';
import { counted } from '#paper/words';
import type { Box, ClothUnrolled, Panel } from '#workroom/compute';
import type { Scene, Shape, Thing } from '#workroom/drawing';

export interface ClothScene extends Scene {
  readonly laid: readonly LaidPanel[];
  readonly places: ReadonlyMap<string, PiecePlace>;
}

/** A panel where it lies in the drawing. */
export interface LaidPanel {
  readonly panel: Panel;
  readonly x: number;
  readonly y: number;
}

export interface PiecePlace {
  readonly panel: number;
  readonly piece: number;
  /** Place in the cloth's list of pieces. */
  readonly of: number;
  readonly box: Box;
}

/** Room round panels, in inches: what is written about them stands there. */
const room = { left: 1.2, top: 2.6, right: 2.2, between: 2.6 } as const;
const abreast = 3;

export const sceneOfCloth = (cloth: ClothUnrolled, unit: Unit): ClothScene => {
  const one = inchIn[unit];
  const laid = laidPanels(cloth.panels, one);
  const loose: Shape[] = [];
  const things: Thing[] = [];
  const places = new Map<string, PiecePlace>();
  for (const { panel, x, y } of laid) {
    const at = (box: Box): readonly number[] => outlineOf([box[0] + x, box[1] + y, box[2], box[3]]);
    loose.push({ points: at([0, 0, panel.width, panel.length]), fabric: grounds.waste });
    for (const box of panel.squaring) loose.push({ points: at(box), fabric: grounds.squaring });
    for (const { box } of panel.remnants) loose.push({ points: at(box), fabric: grounds.kept });
  }
  laid.forEach(({ panel, x, y }, index) => {
    const before = laid.length === 1 ? '' : `${panel.caption}, `;
    panel.pieces.forEach((piece, place) => {
      const box: Box = [piece.box[0] + x, piece.box[1] + y, piece.box[2], piece.box[3]];
      const points = outlineOf(box);
      const key = `piece ${index} ${place}`;
      const strip = panel.strips[piece.strip];
      loose.push({ points, fabric: cloth.id });
      places.set(key, { panel: index, piece: place, of: piece.of, box });
      things.push({
        key,
        // thousands of them are never read
        get name() {
          return `${pieceWords(cloth, piece.of, piece.turned ? 'turned' : 'as-listed')}, ${before}strip ${strip?.number ?? ''}`;
        },
        outline: points,
        inside: null,
      });
    });
  });
  return {
    width: Math.max(1, ...laid.map(({ panel, x }) => x + panel.width)) + room.right * one,
    height: Math.max(1, ...laid.map(({ panel, y }) => y + panel.length)) + room.left * one,
    sprites: [],
    placed: [],
    loose,
    colours: new Map([[cloth.id, cloth.colour], ...groundColours]),
    things,
    shapes: loose.length,
    laid,
    places,
  };
};

/** "C3, square 2½ in, for Log cabin B": what a piece is called, how large it is, and where it goes. */
export const pieceWords = (cloth: ClothUnrolled, of: number, lies: 'turned' | 'as-listed'): string => {
  const piece = cloth.pieces[of];
  if (piece === undefined) return '';
  return `${piece.mark}, ${piece.size}${lies === 'turned' ? ', turned' : ''}, for ${piece.usedFor}`;
};

/** What lies under pieces. The names begin with a sign that no cloth's has. */
const grounds = { waste: '·waste', kept: '·kept', squaring: '·squaring' } as const;
const groundColours = [
  [grounds.waste, '#ece6d8'],
  [grounds.kept, '#fffdf8'],
  [grounds.squaring, '#d9d2c3'],
] as const;

const outlineOf = ([x, y, width, height]: Box): readonly number[] => [
  x,
  y,
  x + width,
  y,
  x + width,
  y + height,
  x,
  y + height,
];

/** One alone, or several side by side, a few in a row. */
const laidPanels = (panels: readonly Panel[], one: number): readonly LaidPanel[] => {
  const laid: LaidPanel[] = [];
  let y = room.top * one;
  for (let first = 0; first < panels.length; first += abreast) {
    const row = panels.slice(first, first + abreast);
    let x = room.left * one;
    for (const panel of row) {
      laid.push({ panel, x, y });
      x += panel.width + (room.right + room.left) * one;
    }
    y += Math.max(...row.map(({ length }) => length)) + room.between * one;
  }
  return laid;
};

/** "24 pieces on 1 length": what the drawing is called. */
export const clothLabel = (cloth: ClothUnrolled): string => {
  const pieces = cloth.panels.reduce((all, panel) => all + panel.pieces.length * panel.count, 0);
  return `Cloth ${cloth.letter}, ${cloth.name}, unrolled: ${counted(pieces, 'piece')}`;
};
