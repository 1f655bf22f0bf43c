// What colour is a cloth, and how light does it look? Only what is written as #rgb or #rrggbb is read.

import { convertRgbToLab65 } from 'culori/fn';
import { done, type Outcome, refused } from '#ground/outcome';

export interface ColourProblem {
  readonly fault: 'not-a-colour';
  readonly found: string;
}

const written = /^#(?:[0-9a-f]{3}|[0-9a-f]{6})$/iu;

const isColour = (text: string): boolean => written.test(text);

/** @returns lower-case #rrggbb */
export const parseColour = (text: string): Outcome<string, ColourProblem> => {
  if (!isColour(text)) return refused([{ fault: 'not-a-colour', found: text.slice(0, 40) }]);
  const digits = text.slice(1).toLowerCase();
  return done(`#${digits.length === 6 ? digits : [...digits].map((digit) => digit + digit).join('')}`);
};

/**
 * CIE L*, 0 black to 100 white, of an sRGB colour under D65.
 *
 * @param colour #rrggbb as `parseColour` gives it; RangeError otherwise
 * @source docs/formulas.md#lightness; CIE 15 L*, IEC 61966-2-1 sRGB
 */
export const lightnessOf = (colour: string): number => {
  if (!isColour(colour) || colour.length !== 7) throw new RangeError(`not a colour in normal form: ${colour}`);
  const channel = (from: number): number => Number.parseInt(colour.slice(from, from + 2), 16) / 255;
  return convertRgbToLab65({ r: channel(1), g: channel(3), b: channel(5) }).l;
};
