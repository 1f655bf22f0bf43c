// One cloth in words: its table of pieces, and what to do in which order.
import type { ClothPiece, FabricPlan, QuiltPlan } from '#craft';
import { toNumber } from '#ground/exact';
import type { ClothSign } from '#paper/cloth';
import { cutMark, type HandedCloth, usesText } from '#paper/cutting';
import { lengthOnPaper, sizeOnPaper, withTrueFractions } from '#paper/lengths';
import type { DirectionText, Writing } from '#paper/words';
import { amountText, directionTexts, easierTexts, effortText, inWords, remnantsText } from '#paper/words';
import { cutBefore, ownDirections, workInAll } from './cut-before.ts';
import { nestedDirection, nestedShape } from './nested.ts';
import { endNamesOf, sheetNamesOf } from './sheet-names.ts';

export interface ClothOf extends HandedCloth {
  readonly plan: QuiltPlan;
  readonly sign: ClothSign;
}

/** Of one size, as the cutting chart lists it. */
export interface PieceText {
  readonly mark: string;
  readonly count: string;
  readonly size: string;
  readonly shape: string;
  readonly usedFor: string;
}

/** In the order of cutting; `kept` is "" where nothing is worth keeping. */
export interface ClothDirectionsText {
  readonly before: readonly string[];
  readonly cuts: readonly DirectionText[];
  readonly apart: readonly string[];
  readonly kept: string;
  readonly effort: string;
  readonly easier: readonly string[];
}

export const pieceTexts = ({ plan, fabric, sign }: ClothOf): readonly PieceText[] =>
  fabric.pieces.map((piece, index) => ({
    mark: cutMark(sign.letter, index),
    count: String(piece.count),
    size: sizeText(piece, plan),
    shape: nestedShape(piece, plan.quilt.unit) ?? shapeText(piece),
    usedFor: usesText(plan, piece.for),
  }));

/** Some pieces lie the other way than their list has them. */
export const hasTurned = (fabric: FabricPlan): boolean =>
  [...cutBefore(fabric), { directions: fabric.directions }]
    .flatMap(({ directions }) => directions.parts)
    .flatMap(({ heights }) => heights.flatMap(({ patterns }) => patterns.flatMap(({ cuts }) => cuts)))
    .some((cut) => cut.cut === 'parts' && cut.runs.some((run) => run.turned && run.cut[0] !== run.cut[1]));

const sizeText = (piece: ClothPiece, plan: QuiltPlan): string =>
  piece.cut[0] === piece.cut[1]
    ? lengthOnPaper(piece.cut[0], plan.quilt.unit)
    : sizeOnPaper(piece.cut, plan.quilt.unit);

const shapeText = ({ shape, count, gives, outlines }: ClothPiece): string => {
  switch (shape) {
    case 'half-square':
      return `square, cut once: ${count * gives} triangles`;
    case 'quarter-square':
      return `square, cut twice: ${count * gives} triangles`;
    case 'template':
      return 'box round the template';
    default:
      // sewn first and cut apart then
      return gives > 1 && outlines.length === 0
        ? `${shape === 'square' ? 'square' : 'strip'}, for ${count * gives} pieces`
        : shape;
  }
};

export const clothDirections = (of: ClothOf): ClothDirectionsText => {
  const { ladder, pieces } = of.fabric;
  const directions = ownDirections(of.fabric);
  const writing = writingOf(of);
  return {
    before: [...printDirections(of), ...motifDirections(of)],
    cuts: [
      ...cutBefore(of.fabric).flatMap((one) =>
        directionTexts(
          one.directions.parts,
          one.of === 'fold' ? { ...writing, of: 'folded' } : { ...writing, sheet: endNamesOf(of.plan, of.fabric) },
        ),
      ),
      ...directionTexts(directions.parts, of.fabric.fold?.chosen ? { ...writing, of: 'opened' } : writing),
    ],
    apart: pieces.flatMap((piece, index) => {
      const mark = cutMark(of.sign.letter, index);
      const nested = nestedDirection(mark, piece, of.plan.quilt.unit);
      return nested === null ? triangleDirection(mark, piece) : [nested];
    }),
    kept: keptIn(of.fabric, writing),
    effort: effortText(workInAll(of.fabric)),
    easier: easierTexts(ladder, writing),
  };
};

/** Of the cloth, then of its ends at hand. */
const keptIn = (fabric: FabricPlan, writing: Writing): string => {
  const own = remnantsText(fabric.directions.remnants, { ...writing, noun: writing.sheet(0).noun });
  const ends = cutBefore(fabric).map(({ directions }) =>
    remnantsText(directions.remnants, { ...writing, noun: 'end at hand' }),
  );
  return [own, ...ends].filter((text) => text !== '').join('; ');
};

const writingOf = ({ plan, fabric, sign, hand }: ClothOf): Writing => {
  const { unit } = plan.quilt;
  return {
    length: (value) => lengthOnPaper(value, unit),
    // a size stays on one line
    size: (size) => sizeOnPaper(size, unit).replaceAll(' ', '\u00a0'),
    amount: (amount, of) => withTrueFractions(amountText(amount, of)),
    mark: (piece) => cutMark(sign.letter, piece),
    pieces: fabric.pieces,
    hand,
    sheet: sheetNamesOf(plan, fabric),
  };
};

/** How a print that has an upright must lie. */
const printDirections = ({ plan, fabric }: ClothOf): readonly string[] => {
  const design = plan.quilt.fabrics.find(({ id }) => id === fabric.id);
  if (design === undefined || design.print === 'none') return [];
  const top = design.printRuns === 'lengthwise' ? 'along the selvages' : 'from selvage to selvage';
  const way = design.print === 'one-way' ? 'has a top, and it' : 'has two ends that look the same, and it';
  const leans = plan.notes.some(
    (note) => note.code === 'cutting/print-upright' && note.fabric === fabric.id && note.leans,
  );
  const isTurned = fabric.pieces.some((piece) => piece.for.some(({ turn }) => turn !== null && turn !== 0));
  return [
    `The print ${way} runs ${top}. Lay the cloth as the arrow shows, and turn no piece${leans ? '' : ': in the quilt each stands as it was cut'}.${isTurned ? ' “Turned” behind a piece: for blocks that are turned so, clockwise, in the quilt; keep these apart.' : ''}`,
  ];
};

/** Which pieces lie round a motif, and where the cloth begins. */
const motifDirections = ({ plan, fabric, sign }: ClothOf): readonly string[] => {
  const repeat = plan.quilt.fabrics.find(({ id }) => id === fabric.id)?.repeat ?? null;
  if (fabric.motifs === null || repeat === null) return [];
  const { unit } = plan.quilt;
  const marks = inWords(fabric.pieces.flatMap((piece, i) => (piece.motif ? [cutMark(sign.letter, i)] : [])));
  const [across, along] = repeat.motif.map((value) => lengthOnPaper(toNumber(value), unit));
  const first = repeat.across === null ? `${along} along the cloth` : `${across} across and ${along} along the cloth`;
  return [
    `Square the end of the cloth so that the middle of the first motif lies ${first} from its corner. Cut ${marks} with the middle of each piece on a motif, and the others from the cloth beside and between: measure from motif to motif, not from cut to cut.`,
  ];
};

const diagonals = {
  rising: 'from lower left to upper right as it lies',
  falling: 'from upper left to lower right as it lies',
} as const;

const triangleDirection = (mark: string, { shape, count, gives, diagonal }: ClothPiece): readonly string[] => {
  const each = count === 1 ? `the square ${mark}` : `each square ${mark}`;
  if (shape === 'half-square') {
    const how = diagonal === null ? 'corner to corner' : diagonals[diagonal];
    return [`Cut ${each} once, ${how}: ${count * gives} triangles.`];
  }
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
