// Which packaged batting is large enough? Sizes as packages are commonly marked; makers differ, so the package in hand
// decides.

import { convert, type Length, length, type Unit } from '#craft/measure';
import { rational, toNumber } from '#ground/exact';

export interface BattingPackage {
  readonly name: string;
  readonly width: Length;
  readonly height: Length;
}

/** Inches, from memory: common markings, no source. */
const packages = [
  ['crib', 45, 60],
  ['throw', 60, 60],
  ['twin', 72, 90],
  ['full', 81, 96],
  ['queen', 90, 108],
  ['king', 120, 120],
] as const;

/** The smallest by area that holds the size, lying either way; null where none does. In centimetres converted exactly. */
export const battingPackageFor = (size: readonly [Length, Length], unit: Unit): BattingPackage | null => {
  const [short, long] = [Math.min(...size), Math.max(...size)];
  const inUnit = (inches: number): Length => length(toNumber(convert(rational(inches), { from: 'in', to: unit })));
  const fitting = packages
    .map(([name, width, height]) => ({ name, width: inUnit(width), height: inUnit(height) }))
    .filter(({ width, height }) => short <= width + 1e-9 && long <= height + 1e-9)
    .toSorted((a, b) => a.width * a.height - b.width * b.height);
  return fitting[0] ?? null;
};
