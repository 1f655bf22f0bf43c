// A template larger than a page, over several sheets at true scale.
import type { Template } from '#craft/cutting';
import { drawnTemplate } from './template.ts';
import { drawTiles, type SheetPlace, type Tile, wideOverlapPt } from './tiles.ts';

export interface TemplateSheetsPicture {
  readonly template: Template;
  readonly label: string;
  /** Points a unit at true scale. */
  readonly scale: number;
  /** Room for one sheet's part. */
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: (sheet: SheetPlace) => string;
}

export const drawTemplateSheets = (of: TemplateSheetsPicture): readonly Tile[] => {
  const whole = drawnTemplate({ ...of, alt: '' });
  return drawTiles({
    whole: { ...whole, labelsAre: 'free', overlapPt: wideOverlapPt, outlines: [whole.cut] },
    fitPt: of.fitPt,
    alt: of.alt,
  });
};
