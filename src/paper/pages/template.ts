// Templates at true scale with their cut line, seam line and grain, and the squares by which a print is
// checked. A template larger than the page goes over several sheets; one that would take too many is drawn smaller, and
// says so.

import type { BlockPlan, PlannedPiece, QuiltPlan } from '#craft';
import type { Unit } from '#craft/measure';
import type { Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { drawTemplate, drawTemplateSheets } from '#paper/drawing';
import { lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import { capital, inWords } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { measurePt } from './measure.ts';
import { sheetText } from './sheet-text.ts';

export interface TemplateSheet {
  readonly title: string;
  /** Which sheet of several it is; empty where one is all. */
  readonly sheet: string;
  readonly text: string;
  readonly picture: Picture;
}

/** Under its heading on a Letter page of its own. */
const tallestTemplatePt = 610;

/** Points of one unit at true scale. */
export const pointsPer: Record<Unit, number> = { in: 72, cm: 72 / 2.54 };

interface SheetsOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

export const templateSheets = (of: SheetsOf): readonly TemplateSheet[] =>
  of.plan.blocks.flatMap((block, place) =>
    block.pieces.flatMap((piece) =>
      piece.cut.template === null ? [] : pieceSheets(of, { block, place, piece, template: piece.cut.template }),
    ),
  );

interface Templated {
  readonly block: BlockPlan;
  readonly place: number;
  readonly piece: PlannedPiece;
  readonly template: NonNullable<PlannedPiece['cut']['template']>;
}

const pieceSheets = (of: SheetsOf, at: Templated): readonly TemplateSheet[] => {
  const { plan } = of;
  const { block, piece, template } = at;
  const title = `${entryTitle(plan, { block: block.id, colouring: block.colouring, mirror: block.mirror })}, ${piece.label}`;
  const name = `template-${at.place + 1}-${piece.label}`;
  const text = (share: string): string => templateText(of, { block, piece, share });
  const truePoints = pointsPer[plan.quilt.unit];
  const drawn = { template, label: piece.label };
  if (!fitsPage(template.points, truePoints)) {
    const sheets = drawTemplateSheets({
      ...drawn,
      scale: truePoints,
      fitPt: [measurePt, tallestTemplatePt],
      alt: ({ number, row, column }) =>
        `Template ${title}, true scale, sheet ${number}: row ${row}, place ${column}, with dotted lines and diamonds that lie on those of the next sheets.`,
    });
    if (sheets.length <= mostSheets) {
      const joined = `true scale, on ${sheets.length} sheets: trim them to their frames, lay dotted line on dotted line so that the diamonds meet, and tape them`;
      return sheets.map(({ sheet, drawing }) => ({
        title,
        sheet: sheetText(sheet, sheets.length),
        text: sheet.number === 1 ? text(joined) : '',
        picture: shown(of.album, `${name}-${sheet.number}`, drawing),
      }));
    }
  }
  const scale = scaleFor(template.points, truePoints);
  const share =
    scale.share === 1 ? 'true scale' : `drawn at ${scale.share * 100} % of its size: copy it at ${100 / scale.share} %`;
  const drawing = drawTemplate({
    ...drawn,
    scale: scale.points,
    alt: `Template ${title}, ${share}: cut line, dashed seam line, arrow along the straight grain.`,
  });
  return [{ title, sheet: '', text: text(share), picture: shown(of.album, name, drawing) }];
};

/** More than a maker would put together: our own figure. */
const mostSheets = 30;

const templateText = (
  { plan, signs }: SheetsOf,
  of: { readonly block: BlockPlan; readonly piece: PlannedPiece; readonly share: string },
): string => {
  const { block, piece } = of;
  const cuts = piece.fabrics.map(({ fabric, count }) => `${count} from cloth ${signOf(signs, fabric).letter}`);
  const { way, size } = piece.cut;
  const from = way
    ? `It is laid along a strip ${lengthOnPaper(way.size[0], plan.quilt.unit)} wide`
    : `The box round it is ${sizeOnPaper(size, plan.quilt.unit)}`;
  return `Cut ${inWords(cuts)} for ${block.count === 1 ? 'the block' : `all ${block.count} blocks`}, right side up. ${capital(of.share)}. ${from}.`;
};

const fitsPage = (outline: Polygon, points: number): boolean => {
  const box = boxOf(outline);
  return box.width * points <= measurePt - 8 && box.height * points <= tallestTemplatePt;
};

/** True scale where it fits the page, else the largest of a half, a quarter, an eighth, … */
const scaleFor = (outline: Polygon, perUnit: number): { readonly points: number; readonly share: number } => {
  let share = 1;
  while (!fitsPage(outline, perUnit * share)) share /= 2;
  return { points: perUnit * share, share };
};
