// Lengths and amounts as the maker likes them shown. What is stored stays as it was written.
import { convert, type Unit } from '#craft/measure';
import { rational, toNumber } from '#ground/exact';
import { figureOnPaper, lengthOnPaper, sizeOnPaper, withTrueFractions } from '#paper/lengths';
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
}

const cmInInch = toNumber(convert(rational(1), { from: 'in', to: 'cm' }));

/** @param stored the document's unit, which the values are in */
export const lengthWordsFor = (stored: Unit, liked: Preferences['unit']): LengthWords => {
  const unit = liked === 'written' ? stored : liked;
  const shown = (value: number): number => {
    if (unit === stored) return value;
    // to a hundredth of a centimetre, or a 64th of an inch where one is that near: else the decimal says it
    return unit === 'cm' ? Math.round(value * cmInInch * 100) / 100 : Math.round((value / cmInInch) * 64) / 64;
  };
  return {
    unit,
    length: (value) => lengthOnPaper(shown(value), unit),
    figure: (value) => figureOnPaper(shown(value), unit),
    size: ([across, down]) => sizeOnPaper([shown(across), shown(down)], unit),
  };
};

/** "5⅝ yd", "2 yd and 6 sheets". */
export const buyWords = (buy: JobFigures['buy']): string =>
  buy.map(({ amount, unit }) => withTrueFractions(amountText(amount, unit))).join(' and ');

export const countWords = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** "9 h", "40 min": an estimate needs no more. */
export const timeWords = (minutes: number): string =>
  minutes < 10
    ? `${Math.max(1, Math.round(minutes))} min`
    : minutes < 90
      ? `${Math.round(minutes / 5) * 5} min`
      : `${Math.round(minutes / 60)} h`;

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
