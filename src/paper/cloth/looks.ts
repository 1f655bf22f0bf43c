// How does a cloth look where a picture is not in its true colours? Grey: each cloth as the grey that is as light
// to the eye, so that values can be judged; line: paper white, to be coloured in by hand.
import { lightnessOf } from '#craft/fabric';
import type { ClothSigns } from './sign.ts';

export type Look = 'colour' | 'grey' | 'line';

/** The same cloths, letters and hatches, their colours as the look wants them. */
export const signsAs = (signs: ClothSigns, look: Look): ClothSigns =>
  look === 'colour'
    ? signs
    : new Map(
        [...signs].map(([id, sign]) => [id, { ...sign, colour: look === 'line' ? '#ffffff' : greyOf(sign.colour) }]),
      );

/**
 * The grey of the same CIE L*, to the nearest of 256.
 *
 * @param colour #rrggbb
 * @source docs/formulas.md#lightness, solved for the luminance of a grey; IEC 61966-2-1 for its channel
 */
export const greyOf = (colour: string): string => {
  const lightness = lightnessOf(colour);
  const luminance = lightness > 8 ? ((lightness + 16) / 116) ** 3 : (lightness * 27) / 24389;
  const channel = luminance <= 0.0031308 ? 12.92 * luminance : 1.055 * luminance ** (1 / 2.4) - 0.055;
  const written = Math.round(255 * channel)
    .toString(16)
    .padStart(2, '0');
  return `#${written}${written}${written}`;
};
