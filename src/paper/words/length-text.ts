// Lengths as a maker reads them: "2½ in", "4 5/16 in", "2.54 cm". Never a bare number.
import { type Mixed, mixedFrom, type Unit } from '#craft/measure';

const glyphs: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
  '1/3': '⅓',
  '2/3': '⅔',
};

/** Inches as fractions where one is near, else as a decimal; centimetres as decimals. */
export const lengthText = (value: number, unit: Unit): string => `${figure(value, unit)} ${unit}`;

/** "9½ × 6 in": across, then down. */
export const sizeText = (size: readonly [number, number], unit: Unit): string =>
  `${figure(size[0], unit)} × ${lengthText(size[1], unit)}`;

/** What a ruler shows: marks that are told as they are, and those that other sizes are near. Our own figures. */
const shown = { in: { finest: 64, near: 16 }, cm: { finest: 20, near: 10 } } as const;

const onRuler = (value: number, unit: Unit): { readonly mark: number; readonly isNear: boolean } => {
  const { finest, near } = shown[unit];
  const isShown = Math.abs(value * finest - Math.round(value * finest)) < 1e-6;
  return isShown ? { mark: value, isNear: false } : { mark: Math.round(value * near) / near, isNear: true };
};

/** "6½ in"; "about 4⅞ in" of what no ruler shows, "less than 1/16 in" of what is nearer to nothing. */
export const nearText = (value: number, unit: Unit): string => {
  const { mark, isNear } = onRuler(value, unit);
  if (isNear && mark === 0) return `less than ${lengthText(1 / shown[unit].near, unit)}`;
  return `${isNear ? 'about ' : ''}${lengthText(mark, unit)}`;
};

/** "6½ × 3½ in", "about 4⅞ × 2½ in": across, then down. */
export const nearSizeText = (size: readonly [number, number], unit: Unit): string => {
  const [across, down] = [onRuler(size[0], unit), onRuler(size[1], unit)];
  return `${across.isNear || down.isNear ? 'about ' : ''}${sizeText([across.mark, down.mark], unit)}`;
};

/** Cloth over the counter: yards as fractions, in inches where no shop would say the fraction; metres as decimals; sheets by their number. */
export const amountText = (amount: number, unit: 'yd' | 'm' | 'sheets'): string => {
  if (unit === 'sheets') return `${numberText(amount)} ${amount === 1 ? 'sheet' : 'sheets'}`;
  if (unit === 'm') return `${numberText(amount)} m`;
  const mixed = mixedFrom(amount);
  return mixed !== null && saidOfYards.includes(mixed.denominator)
    ? `${mixedText(mixed)} yd`
    : lengthText(amount * 36, 'in');
};

/** Common practice, no source. */
const saidOfYards: readonly number[] = [1, 2, 3, 4, 8, 16];

/** At most three decimals, none that say nothing. */
export const numberText = (value: number): string => {
  const rounded = Number(value.toFixed(3));
  return String(rounded === 0 ? 0 : rounded).replace('-', '−');
};

const figure = (value: number, unit: Unit): string => (unit === 'in' ? fractionText(value) : numberText(value));

const fractionText = (value: number): string => {
  const mixed = mixedFrom(value);
  return mixed === null ? numberText(value) : mixedText(mixed);
};

const mixedText = ({ negative, whole, numerator, denominator }: Mixed): string => {
  const sign = negative ? '−' : '';
  if (numerator === 0) return `${sign}${whole}`;
  const fraction = `${numerator}/${denominator}`;
  const glyph = glyphs[fraction];
  const before = whole === 0 ? '' : `${whole}`;
  if (glyph !== undefined) return `${sign}${before}${glyph}`;
  return before === '' ? `${sign}${fraction}` : `${sign}${before} ${fraction}`;
};
