// In which order the places of a unit are joined, when it is made in a way.
import type { Unit } from './unit.ts';
import { lookOf, rowsIn, type Way } from './ways.ts';

/** Places of a unit, by part. */
export type Joined = readonly [readonly number[], readonly number[]];

/** The joins of a unit in an order of sewing, those that come out alike once: two halves of two cloths are made in one. */
export const joinsOf = (unit: Unit, { name, roles }: Pick<Way, 'name' | 'roles'>): readonly Joined[] => {
  const { kind, patches } = unit;
  if (kind === 'half-square') return [[[0], [1]]];
  if (name === 'strip-sets') return stripJoins(unit);
  if (kind !== 'quarter-square')
    return patches.slice(1).map((_, i): Joined => [patches.slice(0, i + 1).map((_p, place) => place), [i + 1]]);
  const isOnePair = name === 'from-half-squares' && new Set(roles).size === 2;
  const halves: readonly Joined[] = [
    [[0], [1]],
    [[2], [3]],
  ];
  return [
    ...(isOnePair ? halves.slice(0, 1) : halves),
    [
      [0, 1],
      [2, 3],
    ],
  ];
};

/** Within rows, each sort of row once; rows are then joined as any units are. */
const stripJoins = (unit: Unit): readonly Joined[] => {
  const rows = rowsIn(unit);
  const looks = rows.map((row) => lookOf(unit, row));
  const seen = rows.filter((_, i) => looks.indexOf(looks[i] as string) === i);
  return seen.flatMap((row) => row.slice(1).map((place, i): Joined => [row.slice(0, i + 1), [place]]));
};
