// Work counted by what the table of minutes knows: how often something is cut, laid, sewn or pressed. Every sum of minutes in the
// house is work times the table.
import type { MinutesTable } from './table.ts';

/** How often each is done; missing is not at all. Of an inch: how many inches. */
export type Work = Readonly<Partial<Record<keyof MinutesTable, number>>>;

/** @source docs/formulas.md#time */
export const minutesOf = (work: Work, table: MinutesTable): number =>
  keysOf(work).reduce((all, key) => all + (work[key] ?? 0) * table[key], 0);

export const allWork = (works: readonly Work[]): Work => {
  const all: Partial<Record<keyof MinutesTable, number>> = {};
  for (const work of works) for (const key of keysOf(work)) all[key] = (all[key] ?? 0) + (work[key] ?? 0);
  return all;
};

/** A share of it, from 0 to 1. */
export const partOf = (work: Work, share: number): Work =>
  Object.fromEntries(keysOf(work).map((key) => [key, share * (work[key] ?? 0)]));

const keysOf = (work: Work): readonly (keyof MinutesTable)[] => Object.keys(work) as (keyof MinutesTable)[];
