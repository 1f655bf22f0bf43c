// Figures as they are printed, read back as numbers.

const glyphs: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

/** Pattern of a length or amount as it is printed. */
export const figure = String.raw`(?:(?:\d+(?:\.\d+)?\s?)?(?:[¼½¾⅓⅔⅛⅜⅝⅞]|[⁰¹²³⁴-⁹]+\s?[⁄/]\s?[₀-₉]+|\d+⁄\d+)|\d+(?:\.\d+)?)`;

const digitsIn = (text: string): number =>
  Number([...text].map((sign) => String('0123456789'.indexOf(sign) >= 0 ? sign : digitOf(sign))).join(''));

const digitOf = (sign: string): number => Math.max('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(sign), '₀₁₂₃₄₅₆₇₈₉'.indexOf(sign));

/** A length or amount as it is printed: "4⅞", "10.5", "3 ⁵⁄₁₆". */
export const amountOf = (text: string): number => {
  const last = text.at(-1) ?? '';
  if (last in glyphs) return Number(text.slice(0, -1).trim() || 0) + (glyphs[last] as number);
  const slash = /([⁰¹²³⁴-⁹]+|\d+)\s?[⁄/]\s?([₀-₉]+|\d+)$/.exec(text);
  if (slash) {
    const whole = text.slice(0, slash.index).trim();
    return Number(whole || 0) + digitsIn(slash[1] as string) / digitsIn(slash[2] as string);
  }
  return Number(text);
};
