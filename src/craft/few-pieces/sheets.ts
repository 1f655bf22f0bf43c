// What are the cheapest sheets, exactly, where the pieces are few? Every way to divide them among sheets is weighed once.
import type { Cutting, Job, Kind, StripUse } from '#craft/strips';
import { drained } from '#ground/search';
import { type CountSpace, pairsIn, writeParts } from './count-space.ts';
import { leastSums, mostPairs, spaceWithin, stripWays, together } from './few-pieces.ts';
import { type StripSizes, stripSizesBy } from './strip-sizes.ts';

/** Cloth of one size, cut like open cloth: strips across, pieces along them. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Above zero. */
  readonly cost: number;
  /** How many are at hand; null: as many as wanted. */
  readonly stock: number | null;
}

export interface SheetUse {
  /** Which of the sheets given. */
  readonly sheet: number;
  readonly times: number;
  readonly strips: readonly StripUse[];
}

/** The least cost, with exactly the pieces demanded. 'impossible': proven that the sheets cannot hold them. */
export type FewSheets =
  | { readonly status: 'least'; readonly sheets: readonly SheetUse[]; readonly cost: number; readonly count: number }
  | { readonly status: 'impossible' };

export interface SheetsTask {
  readonly kinds: readonly Kind[];
  readonly cutting: Cutting;
  readonly sheets: readonly Sheet[];
}

/** @returns null where the pieces, or sheets of a limited stock, are too many to look at every way */
export const fewPiecesOnSheets = (task: SheetsTask): FewSheets | null => {
  const { kinds, cutting, sheets } = task;
  const space = spaceWithin({ width: 0, kinds }, cutting);
  if (space === null) return null;
  const passes = sheets.reduce((sum, sheet) => sum + 1 + roundsOf(sheet, kinds), 0);
  const fills = cutting.stages === 2 ? 0 : sheets.length * pairsIn(space);
  if (passes * pairsIn(space) > mostPairs.flat / 2 || fills > mostPairs.stacked) return null;
  const filled = sheets.map((sheet) => fillsFor({ task, sheet, space }));
  const { cost, taken } = cheapest({ space, kinds, sheets, filled });
  if (cost === Number.POSITIVE_INFINITY) return { status: 'impossible' };
  return { status: 'least', sheets: usesOf(filled, taken), cost, count: taken.length };
};

interface Fills {
  /** 1 where one sheet holds the way. */
  readonly holds: Uint8Array;
  readonly sizes: StripSizes;
  readonly firsts: Int32Array;
}

const fillsFor = (of: { readonly task: SheetsTask; readonly sheet: Sheet; readonly space: CountSpace }): Fills => {
  const { task, sheet, space } = of;
  const job: Job = { width: sheet.width, kinds: task.kinds };
  const sizes = drained(
    stripSizesBy({ job, cutting: task.cutting, space, mostHeight: sheet.height, mostWaste: Number.POSITIVE_INFINITY }),
  );
  const { lengths, firsts } = drained(leastSums(space, sizes.least));
  return { holds: Uint8Array.from(lengths, (length) => (length <= sheet.height ? 1 : 0)), sizes, firsts };
};

/** A limited stock is taken sheet by sheet, one round each; 0 for as many as wanted. */
const roundsOf = ({ stock }: Sheet, kinds: readonly Kind[]): number =>
  stock === null
    ? 0
    : Math.min(
        stock,
        kinds.reduce((sum, { count }) => sum + count, 0),
      );

interface Taken {
  readonly sheet: number;
  readonly way: number;
}

/** The costs of all ways after some sheets, and what was taken last: a sheet's way, or 0 for nothing. */
interface Round {
  readonly sheet: number;
  /** Whether more of the same may be taken in this round. */
  readonly again: boolean;
  readonly last: Int32Array;
}

/** Kind of sheet by kind of sheet: with as many as wanted in one round, else one round for each sheet at hand. */
const cheapest = (of: {
  readonly space: CountSpace;
  readonly kinds: readonly Kind[];
  readonly sheets: readonly Sheet[];
  readonly filled: readonly Fills[];
}): { readonly cost: number; readonly taken: readonly Taken[] } => {
  const { space, kinds, sheets, filled } = of;
  const rounds: Round[] = [];
  const parts = new Int32Array(space.size);
  let costs = new Float64Array(space.size).fill(Number.POSITIVE_INFINITY);
  costs[0] = 0;
  sheets.forEach((sheet, s) => {
    const again = sheet.stock === null;
    const { holds } = filled[s] as Fills;
    for (let round = again ? 1 : roundsOf(sheet, kinds); round > 0; round--) {
      const after = costs.slice();
      const from = again ? after : costs;
      const last = new Int32Array(space.size);
      for (let way = 1; way < space.size; way++) {
        const n = writeParts({ space, way, having: 'any', into: parts });
        for (let p = 0; p < n; p++) {
          const part = parts[p] as number;
          if (holds[part] === 0) continue;
          const cost = sheet.cost + (from[way - part] as number);
          if (cost >= (after[way] as number)) continue;
          after[way] = cost;
          last[way] = part;
        }
      }
      rounds.push({ sheet: s, again, last });
      costs = after;
    }
  });
  return { cost: costs[space.size - 1] as number, taken: takenBack(rounds, space.size - 1) };
};

/** What was taken, from the last round to the first. */
const takenBack = (rounds: readonly Round[], all: number): readonly Taken[] => {
  const taken: Taken[] = [];
  let way = all;
  for (let r = rounds.length - 1; r >= 0; r--) {
    const { sheet, again, last } = rounds[r] as Round;
    for (let more = true; more && (last[way] as number) > 0; more = again) {
      taken.push({ sheet, way: last[way] as number });
      way -= last[way] as number;
    }
  }
  return taken;
};

/** Sheets cut alike are one. */
const usesOf = (filled: readonly Fills[], taken: readonly Taken[]): readonly SheetUse[] => {
  const uses = new Map<string, SheetUse>();
  for (const { sheet, way } of taken) {
    const key = `${sheet}:${way}`;
    const known = uses.get(key);
    const { sizes, firsts } = filled[sheet] as Fills;
    const strips = known?.strips ?? together(stripWays(way, firsts).map(sizes.stripFor));
    uses.set(key, { sheet, times: 1 + (known?.times ?? 0), strips });
  }
  return [...uses.values()].sort((a, b) => a.sheet - b.sheet);
};
