// The cutting chart of each cloth: what to do in which order, the table of pieces, the layout to scale.
import type { ClothPiece, FabricPlan, QuiltPlan } from '#craft';
import type { ClothSign, ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import type { StripKind } from '#paper/cutting';
import { cutMark, stripKindsOf, usesText, yieldOf } from '#paper/cutting';
import { drawCloth } from '#paper/drawing';
import { lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { boughtText } from './bought.ts';
import type { Swatch } from './cloth.ts';
import { measurePt, tallestPt } from './measure.ts';

export interface ClothCutting extends Swatch {
  readonly buy: string;
  readonly directions: readonly string[];
  readonly pieces: readonly {
    readonly mark: string;
    readonly count: string;
    readonly size: string;
    readonly shape: string;
    readonly usedFor: string;
  }[];
  readonly layouts: readonly Picture[];
}

interface ChartOf {
  readonly plan: QuiltPlan;
  readonly fabric: FabricPlan;
  readonly sign: ClothSign;
}

export const cuttingCharts = (of: {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly swatches: ReadonlyMap<string, Swatch>;
  readonly album: Album;
}): readonly ClothCutting[] =>
  of.plan.fabrics.flatMap((fabric) => {
    const swatch = of.swatches.get(fabric.id);
    if (swatch === undefined || fabric.pieces.length === 0) return [];
    const sign = signOf(of.signs, fabric.id);
    const chart: ChartOf = { plan: of.plan, fabric, sign };
    return [
      {
        ...swatch,
        buy: boughtText(fabric.buy),
        directions: directions(chart),
        pieces: fabric.pieces.map((piece, index) => ({
          mark: cutMark(sign.letter, index),
          count: String(piece.count),
          size: sizeText(piece, of.plan),
          shape: shapeText(piece),
          usedFor: usesText(of.plan, piece.for),
        })),
        layouts: layouts(chart, of.album),
      },
    ];
  });

const sizeText = (piece: ClothPiece, plan: QuiltPlan): string =>
  piece.cut[0] === piece.cut[1]
    ? lengthOnPaper(piece.cut[0], plan.quilt.unit)
    : sizeOnPaper(piece.cut, plan.quilt.unit);

const shapeText = ({ shape, count, gives }: ClothPiece): string => {
  switch (shape) {
    case 'half-square':
      return `square, cut once: ${count * gives} triangles`;
    case 'quarter-square':
      return `square, cut twice: ${count * gives} triangles`;
    case 'template':
      return 'box round the template';
    default:
      return shape;
  }
};

const directions = (of: ChartOf): readonly string[] => [
  ...stripKindsOf(of.fabric.laid.layout).map((kind) => stripDirection(of, kind)),
  ...of.fabric.pieces.flatMap((piece, index) => triangleDirection(cutMark(of.sign.letter, index), piece)),
];

const stripDirection = ({ plan, fabric, sign }: ChartOf, { strip, count }: StripKind): string => {
  const gives = [...yieldOf(strip)].map(([index, number]) => {
    const piece = fabric.pieces[index];
    if (piece === undefined) throw new Error(`the layout of ${fabric.id} holds a piece that its list lacks: ${index}`);
    const noun = piece.cut[0] === piece.cut[1] ? 'square' : 'rectangle';
    return `${number} ${noun}${number === 1 ? '' : 's'} ${sizeText(piece, plan)} (${cutMark(sign.letter, index)})`;
  });
  const strips = `${count} ${count === 1 ? 'strip' : 'strips'} ${lengthOnPaper(strip.height, plan.quilt.unit)}`;
  return `Cut ${strips} by the width of the cloth. From ${count === 1 ? 'it' : 'each'} cut ${inWords(gives)}.`;
};

const triangleDirection = (mark: string, { shape, count, gives }: ClothPiece): readonly string[] => {
  const each = count === 1 ? `the square ${mark}` : `each square ${mark}`;
  if (shape === 'half-square') return [`Cut ${each} once, corner to corner: ${count * gives} triangles.`];
  if (shape === 'quarter-square') return [`Cut ${each} twice, corner to corner: ${count * gives} triangles.`];
  if (shape === 'template') {
    return [
      count === 1
        ? `Cut the piece to its template out of ${mark}.`
        : `Cut each of the ${count} pieces ${mark} to its template.`,
    ];
  }
  return [];
};

/** "a", "a and b", "a, b and c". */
export const inWords = (all: readonly string[]): string =>
  all.length < 2 ? (all[0] ?? '') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;

const layouts = ({ plan, fabric, sign }: ChartOf, album: Album): readonly Picture[] => {
  if (fabric.laid.layout.strips.length === 0) return [];
  const { unit } = plan.quilt;
  const kinds = stripKindsOf(fabric.laid.layout)
    .map(({ strip, count }) => `${count} of ${lengthOnPaper(strip.height, unit)}`)
    .join(', ');
  const drawings = drawCloth({
    fabric,
    sign,
    unit,
    fitPt: [measurePt, tallestPt],
    alt: (part, parts) =>
      `Cloth ${sign.letter}, ${sign.name}, laid out to scale${parts === 1 ? '' : `, part ${part} of ${parts}`}. Strips: ${kinds}.`,
  });
  return drawings.map((drawing, index) => shown(album, `cloth-${sign.letter}-${index + 1}`, drawing));
};
