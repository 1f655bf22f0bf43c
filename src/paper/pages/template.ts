// Templates at true scale with their cut line, seam line and grain, and the squares by which a print is
// checked. A template larger than the page is drawn at half scale, and says so.

import type { PlannedPiece, QuiltPlan } from '#craft';
import type { Unit } from '#craft/measure';
import type { Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { drawTemplate } from '#paper/drawing';
import { sizeOnPaper } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { measurePt } from './measure.ts';

export interface TemplateSheet {
  readonly title: string;
  readonly text: string;
  readonly picture: Picture;
}

/** Under its heading on a Letter page of its own. */
const tallestTemplatePt = 610;

const pointsPer: Record<Unit, number> = { in: 72, cm: 72 / 2.54 };

export const templateSheets = (of: {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}): readonly TemplateSheet[] => {
  const { plan, signs, album } = of;
  return plan.blocks.flatMap((block, place) =>
    block.pieces.flatMap((piece) => {
      const { template } = piece.cut;
      if (template === null) return [];
      const title = `${entryTitle(plan, { block: block.id, colouring: block.colouring, mirror: block.mirror })}, ${piece.label}`;
      const scale = scaleFor(template.points, pointsPer[plan.quilt.unit]);
      const share =
        scale.share === 1
          ? 'true scale'
          : `drawn at ${scale.share * 100} % of its size: copy it at ${100 / scale.share} %`;
      const text = templateText({
        plan,
        piece,
        letter: signOf(signs, piece.fabric).letter,
        share,
        count: piece.perBlock * block.count,
      });
      return [
        {
          title,
          text,
          picture: shown(
            album,
            `template-${place + 1}-${piece.label}`,
            drawTemplate({
              template,
              label: piece.label,
              scale: scale.points,
              alt: `Template ${title}, ${share}: cut line, dashed seam line, arrow along the lengthwise grain.`,
            }),
          ),
        },
      ];
    }),
  );
};

const templateText = (of: {
  readonly plan: QuiltPlan;
  readonly piece: PlannedPiece;
  readonly letter: string;
  readonly share: string;
  readonly count: number;
}): string =>
  `Cut ${of.count} from cloth ${of.letter}, right side up. ${of.share.charAt(0).toUpperCase()}${of.share.slice(1)}. The box round it is ${sizeOnPaper(of.piece.cut.size, of.plan.quilt.unit)}.`;

/** True scale where it fits the page, else the largest of a half, a quarter, an eighth, … */
const scaleFor = (outline: Polygon, perUnit: number): { readonly points: number; readonly share: number } => {
  const box = boxOf(outline);
  let share = 1;
  while (box.width * perUnit * share > measurePt - 8 || box.height * perUnit * share > tallestTemplatePt) share /= 2;
  return { points: perUnit * share, share };
};
