// Lengths and amounts as the maker likes them shown. What is stored stays as it was written.
import type { QuiltDocument } from '#craft/design';
import { convert, parseLength, type Unit, usualSewing } from '#craft/measure';
import { rational, toNumber } from '#ground/exact';
import {
  checkLength,
  checkSize,
  figureOnPaper,
  lengthOnPaper,
  type Ruler,
  sizeOnPaper,
  withTrueFractions,
} from '#paper/lengths';
import { amountText } from '#paper/words';
import type { JobFigures } from '#workroom/compute';
import type { PointsState } from '#workroom/store';
import type { Preferences } from './preferences.ts';

export interface LengthWords {
  /** What lengths are shown in. */
  readonly unit: Unit;
  readonly length: (value: number) => string;
  /** Without its unit. */
  readonly figure: (value: number) => string;
  /** Across, then down. */
  readonly size: (size: readonly [number, number]) => string;
  /** As a ruler tells it and the pages say it: "about 43½ in" where the length falls on no mark. */
  readonly near: (value: number) => string;
  readonly nearSize: (size: readonly [number, number]) => string;
}

/** What a document says of its lengths, which its values are in. */
export type Measured = Pick<QuiltDocument, 'unit' | 'ruler'>;

const cmInInch = toNumber(convert(rational(1), { from: 'in', to: 'cm' }));

export const lengthWordsFor = (measured: Measured, liked: Preferences['unit']): LengthWords => {
  const { unit: stored } = measured;
  const unit = liked === 'written' ? stored : liked;
  const shown = (value: number): number => {
    if (unit === stored) return value;
    // to a hundredth of a centimetre, or a 64th of an inch where one is that near: else the decimal says it
    return unit === 'cm' ? Math.round(value * cmInInch * 100) / 100 : Math.round((value / cmInInch) * 64) / 64;
  };
  const length = (value: number): string => lengthOnPaper(shown(value), unit);
  const size = ([across, down]: readonly [number, number]): string => sizeOnPaper([shown(across), shown(down)], unit);
  // what was converted is rounded already
  const ruler = unit === stored ? rulerOf(measured) : null;
  return {
    unit,
    length,
    figure: (value) => figureOnPaper(shown(value), unit),
    size,
    near: ruler === null ? length : (value) => checkLength(value, ruler),
    nearSize: ruler === null ? size : (both) => checkSize(both, ruler),
  };
};

/** The usual one too where what is written cannot be read: that is told as a problem. */
const rulerOf = ({ unit, ruler: written }: Measured): Ruler => {
  if (written === undefined) return usualRuler(unit);
  const read = parseLength(written, { unit, sign: 'positive' });
  return read.ok ? { unit, ruler: read.value } : usualRuler(unit);
};

const usualRuler = (unit: Unit): Ruler => ({ unit, ruler: usualSewing[unit].ruler });

/** "5⅝ yd", "2 yd and 6 sheets". */
export const buyWords = (buy: JobFigures['buy']): string =>
  buy.map(({ amount, unit }) => withTrueFractions(amountText(amount, unit))).join(' and ');

export const countWords = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** "9 h", "40 min": an estimate needs no more. */
export const timeWords = (minutes: number): string => {
  const whole = minutes < 10 ? Math.max(1, Math.round(minutes)) : Math.round(minutes / 5) * 5;
  return minutes < 90 && whole !== 60 ? `${whole}\u00a0min` : `${Math.round(minutes / 60)}\u00a0h`;
};

/** A quilt of one piece has none. */
export const seamWords = (seams: number): string => (seams === 0 ? 'no seams' : countWords(seams, 'seam', 'seams'));

/** "10:42", or the day where it was another. */
export const clockWords = (atMs: number, nowMs: number): string => {
  const at = new Date(atMs);
  const two = (value: number): string => String(value).padStart(2, '0');
  const isToday = new Date(nowMs).toDateString() === at.toDateString();
  return isToday
    ? `${two(at.getHours())}:${two(at.getMinutes())}`
    : `${at.getDate()} ${months[at.getMonth()]} ${at.getFullYear()}`;
};

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** Why a restore point could not be kept, renamed or removed. */
export const pointFaultWords = (fault: PointsState['fault']): string => {
  switch (fault) {
    case 'full':
      return 'No restore point: the browser’s storage is full. Remove a restore point or a quilt';
    case 'removed':
      return 'No restore point: the quilt was removed in another tab';
    default:
      return 'No restore point: the browser refused';
  }
};
