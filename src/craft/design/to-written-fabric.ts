// A cloth in normal form as a document writes it.
import { exactText } from '#craft/measure';
import type { Rational } from '#ground/exact';
import type { WrittenFabric } from './document.ts';
import type { Bought, ClothEnd, ClothPhoto, Fabric, LengthKind, PrintRepeat, SheetKind } from './quilt.ts';

export const toFabric = (fabric: Fabric): WrittenFabric => {
  const { id, name, colour, photo, usableWidth, bought, ends, repeat, print, printRuns, reversible, turning, price } =
    fabric;
  return {
    id,
    name,
    colour,
    ...(photo === null ? {} : { photo: toPhoto(photo) }),
    ...(bought.kind === 'yardage' || bought.kind === 'lengths' ? { usableWidth: exactText(usableWidth) } : {}),
    ...(bought.kind === 'yardage' ? {} : { bought: toBought(bought) }),
    ...(ends.length === 0 ? {} : { ends: ends.map(toEnd) }),
    ...(repeat === null ? {} : { repeat: toRepeat(repeat) }),
    print,
    printRuns,
    reversible,
    ...(turning === 'as-they-may' ? {} : { turning }),
    ...priced(price),
  };
};

export const toPhoto = ({ image, width }: ClothPhoto) => ({ image, width: exactText(width) });

export const pairText = ([a, b]: readonly [Rational, Rational]): [string, string] => [exactText(a), exactText(b)];

const toBought = (bought: Exclude<Bought, { kind: 'yardage' }>): WrittenFabric['bought'] => {
  switch (bought.kind) {
    case 'sheets':
      return bought.name === 'sheet' ? { sheet: pairText(bought.size) } : bought.name;
    case 'stock':
      return { sheets: bought.sheets.map(toSheet) };
    case 'lengths':
      return { lengths: bought.lengths.map(toLength) };
  }
};

const toSheet = ({ name, size, count, price }: SheetKind) => ({
  size: pairText(size),
  ...named(name),
  ...counted(count),
  ...priced(price),
});

const toLength = ({ length, count, price }: LengthKind) => ({
  length: exactText(length),
  ...counted(count),
  ...priced(price),
});

const toEnd = ({ name, size, count }: ClothEnd) => ({ size: pairText(size), count, ...named(name) });

const toRepeat = ({ along, across, motif }: PrintRepeat) => ({
  along: exactText(along),
  ...(across === null ? {} : { across: exactText(across) }),
  motif: pairText(motif),
});

const named = (name: string | null) => (name === null ? {} : { name });
const counted = (count: number | null) => (count === null ? {} : { count });
const priced = (price: Rational | null) => (price === null ? {} : { price: price.valueOf() });
