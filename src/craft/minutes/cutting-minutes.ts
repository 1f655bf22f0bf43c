// How long cutting takes: every piece, and every strip that is folded and laid straight before.
import type { MinutesTable } from './table.ts';

export const cuttingMinutes = (
  work: { readonly pieces: number; readonly strips: number },
  table: MinutesTable,
): number => work.pieces * table.cut + work.strips * table.fold;
