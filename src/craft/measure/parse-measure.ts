// What number, and in which unit, does a written measure say? "2 1/2", "2-1/2", "2.5", "2½", "6 cm", '2 1/2"'.
// Exact, and strict: what can be read two ways is refused. Signs and sizes are judged elsewhere.

import { add, fromDecimal, type Rational, rational } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';
import type { MeasureUnit } from './units.ts';

export interface Measure {
  readonly amount: Rational;
  /** Null where none is written. */
  readonly unit: MeasureUnit | null;
}

export type MeasureProblem =
  | { readonly fault: 'unreadable' | 'zero-denominator' | 'improper'; readonly found: string }
  | { readonly fault: 'text-too-long'; readonly found: string; readonly length: number; readonly most: number }
  /** A number that no text of `most` characters can say exactly. */
  | { readonly fault: 'too-fine'; readonly found: string; readonly most: number };

/** Longest text that is read as a measure; our own figure, four times the longest that a pattern needs. */
export const longestMeasure = 40;

/** A number or a text with an optional unit at its end, as an exact measure. */
export const parseMeasure = (written: string | number): Outcome<Measure, MeasureProblem> => {
  if (typeof written === 'number') return measured(parseDecimal(written), null);
  if (written.length > longestMeasure) {
    const found = `${written.slice(0, longestMeasure)}…`;
    return refused([{ fault: 'text-too-long', found, length: written.length, most: longestMeasure }]);
  }
  const [, amount = '', suffix = ''] = /^(.*?)\s*([a-z]+|["″])?\s*$/u.exec(written) ?? [];
  const unit = unitNames.get(suffix);
  if (suffix !== '' && unit === undefined) return refused([{ fault: 'unreadable', found: written }]);
  return measured(parseWrittenNumber(amount, written), unit ?? null);
};

/** The same without a unit: grid places and shares. */
export const parseNumber = (written: string | number): Outcome<Rational, MeasureProblem> => {
  const read = parseMeasure(written);
  if (!read.ok) return read;
  return read.value.unit === null ? done(read.value.amount) : refused([{ fault: 'unreadable', found: `${written}` }]);
};

const measured = (
  amount: Outcome<Rational, MeasureProblem>,
  unit: MeasureUnit | null,
): Outcome<Measure, MeasureProblem> => (amount.ok ? done({ amount: amount.value, unit }) : amount);

const unitNames: ReadonlyMap<string, MeasureUnit> = new Map([
  ['in', 'in'],
  ['inch', 'in'],
  ['inches', 'in'],
  ['"', 'in'],
  ['″', 'in'],
  ['yd', 'yd'],
  ['yard', 'yd'],
  ['yards', 'yd'],
  ['mm', 'mm'],
  ['cm', 'cm'],
  ['m', 'm'],
]);

/** Every vulgar fraction that Unicode has as one sign (code charts, Latin-1 and Number Forms). */
const glyphs: Readonly<Record<string, readonly [number, number]>> = {
  '¼': [1, 4],
  '½': [1, 2],
  '¾': [3, 4],
  '⅐': [1, 7],
  '⅑': [1, 9],
  '⅒': [1, 10],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
  '↉': [0, 3],
};

const parseDecimal = (value: number): Outcome<Rational, MeasureProblem> => {
  if (!Number.isFinite(value)) return refused([{ fault: 'unreadable', found: `${value}` }]);
  const exact = fromDecimal(value);
  if (value.toString().length + exact.d.toString().length > 2 * longestMeasure) {
    return refused([{ fault: 'too-fine', found: `${value}`, most: longestMeasure }]);
  }
  return done(exact);
};

const decimal = /^(?:\d+(?:\.\d+)?|\.\d+)$/u;
/** A whole number, a space or hyphen, and a fraction; or either alone. */
const mixed = /^(?:(\d+)(?:-|\s+))?(\d+)\s*[/⁄]\s*(\d+)$/u;
const withGlyph = /^(?:(\d+)[-\s]?\s*)?([¼-¾⅐-⅞↉])$/u;

const parseWrittenNumber = (text: string, found: string): Outcome<Rational, MeasureProblem> => {
  const [, minus = '', body = ''] = /^\s*([-−]?)(.*)$/u.exec(text) ?? [];
  const read = parseUnsigned(body, found);
  return read.ok && minus !== '' ? done(read.value.neg()) : read;
};

const parseUnsigned = (text: string, found: string): Outcome<Rational, MeasureProblem> => {
  if (decimal.test(text)) {
    const [whole = '', places = ''] = text.split('.');
    return done(rational(BigInt(whole + places), 10n ** BigInt(places.length)));
  }
  const glyph = withGlyph.exec(text);
  if (glyph) {
    const [n, d] = glyphs[glyph[2] as string] as readonly [number, number];
    return done(add(rational(BigInt(glyph[1] ?? 0)), rational(n, d)));
  }
  const parts = mixed.exec(text);
  if (!parts) return refused([{ fault: 'unreadable', found }]);
  const n = BigInt(parts[2] as string);
  const d = BigInt(parts[3] as string);
  if (d === 0n) return refused([{ fault: 'zero-denominator', found }]);
  // "1 5/4" is sooner a slip of the pen than two and a quarter
  if (parts[1] !== undefined && n >= d) return refused([{ fault: 'improper', found }]);
  return done(add(rational(BigInt(parts[1] ?? 0)), rational(n, d)));
};
