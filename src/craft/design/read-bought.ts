// How a cloth is bought: by the length, in sheets of one kind or several, or in given lengths.

import { narrowestCloth } from '#craft/limits';
import { convert } from '#craft/measure';
import { add, compare, fromDecimal, mul, one, type Rational, rational, two } from '#ground/exact';
import type { WrittenFabric } from './document.ts';
import type { Bought, Buying, LengthKind, SheetKind } from './quilt.ts';
import type { Reading, Spot } from './reading.ts';

interface BoughtSpot extends Spot {
  readonly buying: Buying | null;
}

type WrittenBought = NonNullable<WrittenFabric['bought']>;

export const readBought = (written: WrittenFabric['bought'], spot: BoughtSpot): Bought | null => {
  const { path, reading } = spot;
  if (written === undefined || written === 'yardage') return { kind: 'yardage' };
  if (typeof written === 'string') return { kind: 'sheets', name: written, size: namedSize(written, reading) };
  if ('sheets' in written) return readStock(written.sheets, spot);
  if ('lengths' in written) return readLengths(written.lengths, spot);
  const size = readSize(written.sheet, { path: `${path}/sheet`, reading });
  return size && { kind: 'sheets', name: 'sheet', size };
};

/**
 * What is left of a fat quarter (18 × 22 in as sold) and a fat eighth (9 × 22 in) when the edges are cut straight: common
 * practice, no source. In centimetres the same, exactly.
 */
const namedSheets = {
  'fat-quarter': [rational(35, 2), rational(41, 2)],
  'fat-eighth': [rational(17, 2), rational(41, 2)],
} as const;

type Size = readonly [across: Rational, along: Rational];

const namedSize = (name: keyof typeof namedSheets, { unit }: Reading): Size => {
  const [across, along] = namedSheets[name];
  return [convert(across, { from: 'in', to: unit }), convert(along, { from: 'in', to: unit })];
};

/** Across and along, each above zero. */
export const readSize = (
  written: readonly [string | number, string | number],
  { path, reading }: Spot,
): Size | null => {
  const across = reading.length({ written: written[0], path: `${path}/0` });
  const along = reading.length({ written: written[1], path: `${path}/1` });
  return across === null || along === null ? null : [across, along];
};

const readStock = (
  written: Extract<WrittenBought, { sheets: unknown }>['sheets'],
  { path, reading }: BoughtSpot,
): Bought | null => {
  const sheets = written.flatMap(({ size, name, count, price }, i): readonly SheetKind[] => {
    const read =
      typeof size === 'string'
        ? namedSize(size, reading)
        : readSize(size, { path: `${path}/sheets/${i}/size`, reading });
    const called = name ?? (typeof size === 'string' ? size.replace('-', ' ') : null);
    return read === null ? [] : [{ name: called, size: read, count: count ?? null, price: priceOf(price) }];
  });
  return sheets.length < written.length ? null : { kind: 'stock', sheets };
};

/** A length must leave a strip of the narrowest cloth when it has shrunk and its ends are squared. */
const readLengths = (
  written: Extract<WrittenBought, { lengths: unknown }>['lengths'],
  { path, reading, buying }: BoughtSpot,
): Bought | null => {
  const least = buying && mul(add(narrowestCloth[reading.unit], mul(two, buying.squaring)), add(one, buying.shrinkage));
  const lengths = written.flatMap((entry, i): readonly LengthKind[] => {
    const isBare = typeof entry !== 'object';
    const read = reading.length({
      written: isBare ? entry : entry.length,
      path: `${path}/lengths/${i}${isBare ? '' : '/length'}`,
      ...(least === null ? {} : { least }),
    });
    if (read === null) return [];
    return [
      { length: read, count: isBare ? null : (entry.count ?? null), price: isBare ? null : priceOf(entry.price) },
    ];
  });
  return lengths.length < written.length ? null : { kind: 'lengths', lengths };
};

const priceOf = (price: number | undefined): Rational | null => (price === undefined ? null : fromDecimal(price));

/**
 * The sheet that strips longer than a sheet are joined from, across and along; null for cloth between selvages. Of several kinds: the
 * widest of those that are never out, else the one with most cloth.
 */
export const joiningSheet = (bought: Bought): readonly [Rational, Rational] | null => {
  if (bought.kind === 'sheets') return bought.size;
  if (bought.kind !== 'stock') return null;
  const endless = bought.sheets.filter(({ count }) => count === null);
  const most = (kinds: readonly SheetKind[], amountOf: (kind: SheetKind) => Rational) =>
    kinds.reduce<SheetKind | null>((a, b) => (a === null || compare(amountOf(b), amountOf(a)) > 0 ? b : a), null)
      ?.size ?? null;
  return endless.length > 0
    ? most(endless, ({ size }) => size[0])
    : most(bought.sheets, ({ size, count }) => mul(mul(size[0], size[1]), rational(count ?? 0)));
};
