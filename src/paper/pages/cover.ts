// The cover: the quilt, its name, and what one asks first.
import type { QuiltPlan } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { drawQuilt, isSlanted } from '#paper/drawing';
import { checkSize } from '#paper/lengths';
import { counted, estimateText, longTimeText, timeParts } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import type { Swatch } from './cloth.ts';
import { handFacts } from './hand-words.ts';
import { measurePt } from './measure.ts';
import { skillOf } from './skill.ts';
import { topShape } from './top-shape.ts';

export interface Cover {
  readonly picture: Picture;
  /** The maker's own words, where they are few; more of them stand under the cloth to buy. */
  readonly words: readonly string[];
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  readonly swatches: readonly Swatch[];
  /** Cloths beyond those shown. */
  readonly moreCloths: number;
}

const mostSwatches = 24;

export const coverOf = (of: {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly swatches: ReadonlyMap<string, Swatch>;
  readonly album: Album;
  readonly hand: Hand;
  readonly words: readonly string[];
}): Cover => {
  const { plan } = of;
  const { set } = plan.top;
  const size = checkSize([set.width, set.height], plan.quilt);
  const skill = skillOf(plan);
  const swatches = [...of.swatches.values()];
  const blocks = plan.blocks.reduce((sum, { count }) => sum + count, 0);
  return {
    picture: shown(
      of.album,
      'quilt',
      drawQuilt({ plan, signs: of.signs, fitPt: [measurePt, measurePt], fill: 'colour', alt: quiltAlt(plan, size) }),
    ),
    words: of.words,
    facts: [
      { name: 'Finished size', value: size },
      { name: 'Blocks', value: String(blocks) },
      { name: 'Skill', value: `${skill.level}: ${skill.because}` },
      {
        name: 'Time',
        value: `about ${longTimeText(plan.time.minutes)}: ${timeParts(plan.time)} (${estimateText(plan.quilt)})`,
      },
      ...handFacts(of.hand),
      ...editionOf(plan),
    ],
    swatches: swatches.slice(0, mostSwatches),
    moreCloths: Math.max(0, swatches.length - mostSwatches),
  };
};

const editionOf = ({ quilt: { edition, date } }: QuiltPlan): Cover['facts'] => {
  const value = [edition, date].filter((text) => text !== '').join(', ');
  return value === '' ? [] : [{ name: 'Edition', value }];
};

export const quiltAlt = (plan: QuiltPlan, size: string): string => {
  const blocks = plan.blocks.map(({ title, id, count }) => `${count} × ${title || id}`).join(', ');
  const { rows, sections, borders } = topShape(plan);
  const parts = sections > 0 ? counted(sections, 'section') : counted(rows, isSlanted(plan) ? 'slanted row' : 'row');
  const bordered = borders === 0 ? 'no border' : borders === 1 ? 'one border' : `${borders} borders`;
  return `The finished quilt, ${size}: ${blocks}, in ${parts}, with ${bordered}.`;
};
