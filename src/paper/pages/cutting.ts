// The cutting chart of each cloth: what to do in which order, the table of pieces, the layout to scale.
import type { FabricPlan, QuiltPlan } from '#craft';
import type { LaidSheets } from '#craft/cutting';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { forHand, type Hand } from '#paper/cutting';
import type { Drawing } from '#paper/drawing';
import { drawCloth, drawSheets, printWay } from '#paper/drawing';
import { lengthOnPaper } from '#paper/lengths';
import { capital, inWords } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { boughtText } from './bought.ts';
import type { Swatch } from './cloth.ts';
import {
  type ClothDirectionsText,
  type ClothOf,
  clothDirections,
  hasTurned,
  type PieceText,
  pieceTexts,
} from './cloth-directions.ts';
import { type CutBefore, cutBefore, ownDirections } from './cut-before.ts';
import { foldedAcross } from './hand-words.ts';
import { measurePt, tallestPt } from './measure.ts';
import { nestedPictures } from './nested.ts';
import { countedSheets, endNamesOf, type SheetNames, sheetNamesOf } from './sheet-names.ts';

export interface ClothCutting extends Swatch {
  readonly buy: string;
  /** Not of cloth between selvages. */
  readonly inSheets: boolean;
  /** Some pieces lie the other way than their list has them. */
  readonly isTurned: boolean;
  readonly directions: ClothDirectionsText;
  readonly pieces: readonly PieceText[];
  readonly layouts: readonly Picture[];
}

export const cuttingCharts = (of: {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly swatches: ReadonlyMap<string, Swatch>;
  readonly album: Album;
  readonly hand: Hand;
}): readonly ClothCutting[] =>
  of.plan.fabrics.flatMap((fabric) => {
    const swatch = of.swatches.get(fabric.id);
    if (swatch === undefined || fabric.pieces.length === 0) return [];
    const sign = signOf(of.signs, fabric.id);
    const chart: ClothOf = { plan: of.plan, sign, ...forHand(fabric, of.hand) };
    return [
      {
        ...swatch,
        buy: boughtText(of.plan, fabric),
        inSheets: fabric.buy.unit === 'sheets',
        isTurned: hasTurned(fabric),
        directions: clothDirections(chart),
        pieces: pieceTexts(chart),
        layouts: [...layouts(chart, of.album), ...nestedPictures({ ...chart, album: of.album })],
      },
    ];
  });

const layouts = (of: ClothOf, album: Album): readonly Picture[] => {
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

const clothDrawings = ({ plan, fabric, sign, hand }: ClothOf): readonly Drawing[] => {
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
    hand,
    fitPt,
    alt: (part, parts) =>
      `Cloth ${sign.letter}, ${sign.name}, laid out to scale${partText(part, parts)}. Strips in the order of cutting: ${strips}.${keptText(fabric)}`,
  });
};

const drawingsBefore = ({ plan, fabric, sign, hand }: ClothOf, one: CutBefore): readonly Drawing[] => {
  const how = { sign, unit: plan.quilt.unit, print: printWay(plan, fabric), hand, fitPt };
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
    across: foldedAcross(hand),
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

const sheetDrawings = ({ plan, fabric, sign, hand }: ClothOf, laid: LaidSheets): readonly Drawing[] =>
  drawSheets({
    directions: fabric.directions,
    caption: captionOf(sheetNamesOf(plan, fabric)),
    sign,
    unit: plan.quilt.unit,
    print: printWay(plan, fabric),
    hand,
    fitPt,
    alt: (part, parts) =>
      `Cloth ${sign.letter}, ${sign.name}: ${countedSheets(plan, fabric, laid)} laid out to scale${partText(part, parts)}, those cut alike drawn once.${keptText(fabric)}`,
  });

const keptText = ({ directions }: FabricPlan): string => {
  const names = directions.remnants.map(({ name }) => name);
  return names.length === 0 ? '' : ` Worth keeping: ${inWords(names)}.`;
};
