// The cutting chart of each cloth: what to do in which order, the table of pieces, the layout to scale.
import type { ClothPiece, FabricPlan, QuiltPlan } from '#craft';
import type { LaidSheets } from '#craft/cutting';
import { toNumber } from '#ground/exact';
import type { ClothSign, ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { cutMark, usesText } from '#paper/cutting';
import type { Drawing } from '#paper/drawing';
import { drawCloth, drawSheets, printWay } from '#paper/drawing';
import { lengthOnPaper, sizeOnPaper, withTrueFractions } from '#paper/lengths';
import type { DirectionText, Writing } from '#paper/words';
import { amountText, capital, directionTexts, easierTexts, effortText, inWords, remnantsText } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { boughtText } from './bought.ts';
import type { Swatch } from './cloth.ts';
import { type CutBefore, cutBefore, ownDirections, workInAll } from './cut-before.ts';
import { measurePt, tallestPt } from './measure.ts';
import { nestedDirection, nestedPictures, nestedShape } from './nested.ts';
import { countedSheets, endNamesOf, type SheetNames, sheetNamesOf } from './sheet-names.ts';

export interface ClothCutting extends Swatch {
  readonly buy: string;
  /** Not of cloth between selvages. */
  readonly inSheets: boolean;
  /** Some pieces lie the other way than their list has them. */
  readonly isTurned: boolean;
  readonly directions: ClothDirectionsText;
  readonly pieces: readonly {
    readonly mark: string;
    readonly count: string;
    readonly size: string;
    readonly shape: string;
    readonly usedFor: string;
  }[];
  readonly layouts: readonly Picture[];
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
        buy: boughtText(of.plan, fabric),
        inSheets: fabric.buy.unit === 'sheets',
        isTurned: hasTurned(fabric),
        directions: directionsOf(chart),
        pieces: fabric.pieces.map((piece, index) => ({
          mark: cutMark(sign.letter, index),
          count: String(piece.count),
          size: sizeText(piece, of.plan),
          shape: nestedShape(piece, of.plan.quilt.unit) ?? shapeText(piece),
          usedFor: usesText(of.plan, piece.for),
        })),
        layouts: [...layouts(chart, of.album), ...nestedPictures({ ...chart, album: of.album })],
      },
    ];
  });

const hasTurned = (fabric: FabricPlan): boolean =>
  [...cutBefore(fabric), { directions: fabric.directions }]
    .flatMap(({ directions }) => directions.parts)
    .flatMap(({ heights }) => heights.flatMap(({ patterns }) => patterns.flatMap(({ cuts }) => cuts)))
    .some((cut) => cut.cut === 'parts' && cut.runs.some((run) => run.turned && run.cut[0] !== run.cut[1]));

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

const directionsOf = (of: ChartOf): ClothDirectionsText => {
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

const writingOf = ({ plan, fabric, sign }: ChartOf): Writing => {
  const { unit } = plan.quilt;
  return {
    length: (value) => lengthOnPaper(value, unit),
    // a size stays on one line
    size: (size) => sizeOnPaper(size, unit).replaceAll(' ', '\u00a0'),
    amount: (amount, of) => withTrueFractions(amountText(amount, of)),
    mark: (piece) => cutMark(sign.letter, piece),
    pieces: fabric.pieces,
    sheet: sheetNamesOf(plan, fabric),
  };
};

/** How a print that has an upright must lie. */
const printDirections = ({ plan, fabric }: ChartOf): readonly string[] => {
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
const motifDirections = ({ plan, fabric, sign }: ChartOf): readonly string[] => {
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

const layouts = (of: ChartOf, album: Album): readonly Picture[] => {
  const { fabric, sign } = of;
  const own = { ...of, fabric: { ...fabric, directions: ownDirections(fabric) } };
  const drawings = [
    ...cutBefore(fabric).flatMap((one) => drawingsBefore(of, one)),
    ...('sheets' in fabric.laid ? sheetDrawings(own, fabric.laid) : clothDrawings(own)),
  ];
  return drawings.map((drawing, index) => shown(album, `cloth-${sign.letter}-${index + 1}`, drawing));
};

const fitPt = [measurePt, tallestPt] as const;

const partText = (part: number, parts: number): string => (parts === 1 ? '' : `, part ${part} of ${parts}`);

const clothDrawings = ({ plan, fabric, sign }: ChartOf): readonly Drawing[] => {
  const { unit } = plan.quilt;
  if (fabric.directions.parts.length === 0) return [];
  const strips = fabric.directions.parts
    .flatMap(({ heights }) => heights.flatMap(({ patterns }) => patterns))
    .map(({ number, count, strip }) => `${number}, ${count} of ${lengthOnPaper(strip.height, unit)}`)
    .join('; ');
  return drawCloth({
    fabric,
    sign,
    unit,
    print: printWay(plan, fabric),
    fitPt,
    alt: (part, parts) =>
      `Cloth ${sign.letter}, ${sign.name}, laid out to scale${partText(part, parts)}. Strips in the order of cutting: ${strips}.${keptText(fabric)}`,
  });
};

const drawingsBefore = ({ plan, fabric, sign }: ChartOf, one: CutBefore): readonly Drawing[] => {
  const how = { sign, unit: plan.quilt.unit, print: printWay(plan, fabric), fitPt };
  const { directions, folded } = one;
  if (folded === null)
    return drawSheets({
      ...how,
      directions,
      caption: captionOf(endNamesOf(plan, fabric)),
      alt: (part, parts) =>
        `Cloth ${sign.letter}, ${sign.name}: ends at hand laid out to scale${partText(part, parts)}.`,
    });
  const laid = { layout: folded, bound: folded.length, boundKind: 'area' } as const;
  return drawCloth({
    ...how,
    fabric: { ...fabric, laid, directions },
    across: 'from the selvages to the fold',
    alt: (part, parts) =>
      `Cloth ${sign.letter}, ${sign.name}, folded selvage to selvage and laid out to scale${partText(part, parts)}.`,
  });
};

const captionOf =
  (names: SheetNames) =>
  (kind: number): { readonly noun: string; readonly size: string } => {
    const { noun, size } = names(kind);
    return { noun: capital(noun), size };
  };

const sheetDrawings = ({ plan, fabric, sign }: ChartOf, laid: LaidSheets): readonly Drawing[] =>
  drawSheets({
    directions: fabric.directions,
    caption: captionOf(sheetNamesOf(plan, fabric)),
    sign,
    unit: plan.quilt.unit,
    print: printWay(plan, fabric),
    fitPt,
    alt: (part, parts) =>
      `Cloth ${sign.letter}, ${sign.name}: ${countedSheets(plan, fabric, laid)} laid out to scale${partText(part, parts)}, those cut alike drawn once.${keptText(fabric)}`,
  });

const keptText = ({ directions }: FabricPlan): string => {
  const names = directions.remnants.map(({ name }) => name);
  return names.length === 0 ? '' : ` Worth keeping: ${inWords(names)}.`;
};
