// What is left of a cloth that is still of use? Whole rectangles as they fall off, named; smaller ones are waste.
import { type Length, length, type Unit } from '#craft/measure';
import type { Offcut } from './strip-cuts.ts';

export interface Remnant {
  /** "R1", the largest first. */
  readonly name: string;
  readonly from: Offcut['from'] | 'cloth-end' | 'sheet-end';
  /** Across, along the cloth. */
  readonly size: readonly [Length, Length];
  readonly count: number;
}

export interface Left {
  readonly from: Remnant['from'];
  readonly size: readonly [Length, Length];
  readonly count: number;
}

/** A square, or a strip, that is worth keeping: common sizes of scraps (from memory), the limits our own. */
const smallestUseful: Readonly<Record<Unit, { readonly square: number; readonly strip: readonly [number, number] }>> = {
  in: { square: 2.5, strip: [1.5, 10] },
  cm: { square: 6.5, strip: [4, 25] },
};

/** @source docs/formulas.md#remnants */
export const isUseful = (size: readonly [Length, Length], unit: Unit): boolean => {
  const { square, strip } = smallestUseful[unit];
  const [short, long] = [Math.min(...size) + 1e-9, Math.max(...size) + 1e-9];
  return short >= square || (short >= strip[0] && long >= strip[1]);
};

/** Those of use, like ones together, the largest first. */
export const remnantsOf = (left: readonly Left[], unit: Unit): readonly Remnant[] => {
  const kinds = new Map<string, Left>();
  for (const one of left) {
    if (one.count === 0 || !isUseful(one.size, unit)) continue;
    const key = remnantKey(one);
    kinds.set(key, { ...one, count: one.count + (kinds.get(key)?.count ?? 0) });
  }
  return [...kinds.values()]
    .sort(
      (a, b) => b.size[0] * b.size[1] - a.size[0] * a.size[1] || b.size[0] - a.size[0] || (a.from < b.from ? -1 : 1),
    )
    .map((one, i) => ({ name: `R${i + 1}`, from: one.from, size: one.size, count: one.count }));
};

const remnantKey = ({ from, size }: Pick<Left, 'from' | 'size'>): string =>
  `${from} ${size.map((side) => side.toFixed(6)).join(' ')}`;

/** The name of a rectangle that fell off; null for waste. */
export const namesIn = (remnants: readonly Remnant[]): ((one: Pick<Left, 'from' | 'size'>) => string | null) => {
  const names = new Map(remnants.map((remnant) => [remnantKey(remnant), remnant.name]));
  return (one) => names.get(remnantKey(one)) ?? null;
};

export const areaLeft = (remnants: readonly Pick<Left, 'size' | 'count'>[]): Length =>
  length(remnants.reduce((all, { size, count }) => all + count * size[0] * size[1], 0));
