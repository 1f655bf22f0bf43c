// How few sheets of one size hold these pieces, and below what number can none? Sheets are cut like cloth: strips across,
// parts along a strip, pieces down a part. Knows nothing of prices.

import { type Length, tidy } from '#craft/measure';
import type { IntegerSolver } from '#craft/strips';
import { chanceFrom } from '#ground/chance';
import type { Demand, LaidSheets, Layout, Strip } from './cloth.ts';
import { type LayoutBudget, planLayout } from './layout.ts';
import { leastSheets } from './sheet-bound.ts';
import { columnSheets } from './sheet-columns.ts';

export interface SheetTask {
  /** Usable, across and along. */
  readonly size: readonly [Length, Length];
  readonly demands: readonly Demand[];
  readonly budget: LayoutBudget;
  readonly solver?: IntegerSolver;
}

/** The strips that one sheet is cut into. */
type Sheet = readonly Strip[];

/**
 * A layout of exactly the pieces demanded on sheets, never on more than the bare packing of strips takes; and a number
 * of sheets below which none exists.
 *
 * Strips are planned as on cloth of the sheet's width and packed into sheets; or columns first; or sheet by sheet, each filled with the
 * strips that carry most; then some sheets at a time are planned anew, a fixed number of times.
 *
 * @throws RangeError when a piece fits the sheet neither way; the ledger tells those
 */
export const planSheets = (task: SheetTask): LaidSheets => {
  const upright = { ...task, demands: task.demands.map((demand) => withinSheet(demand, task.size)) };
  const starts = [...plainLayouts(upright), ...(task.budget.steps > 0 ? [filledOneByOne(upright)] : [])];
  const first = starts.reduce((a, b) => (isBetter(b, a) ? b : a));
  const bound = leastSheets(upright);
  const sheets = improved({ task: upright, sheets: first, bound }).toSorted((a, b) => usedBy(b) - usedBy(a));
  const layouts = sheets.map(
    (strips): Layout => ({ width: task.size[0], length: task.size[1], strips: stacked(strips) }),
  );
  const all = stacked(sheets.flat());
  return {
    sheets: layouts,
    layout: { width: task.size[0], length: usedBy(all), strips: all },
    bound,
    boundKind: 'area',
  };
};

/** A piece that would not fit turned, must not turn. */
const withinSheet = (demand: Demand, [across, along]: readonly [Length, Length]): Demand => {
  if (demand.count > 0 && (demand.across > across + 1e-9 || demand.along > along + 1e-9)) {
    throw new RangeError(`a piece larger than its sheet: ${demand.across} by ${demand.along}`);
  }
  const mayTurn = demand.mayTurn && demand.along <= across + 1e-9 && demand.across <= along + 1e-9;
  return { ...demand, mayTurn };
};

/** Turning as it may; and turning nothing, for a short cloth is not always few sheets. */
const variantsOf = (task: SheetTask): readonly SheetTask[] =>
  task.demands.some(({ mayTurn }) => mayTurn)
    ? [task, { ...task, demands: task.demands.map((demand) => ({ ...demand, mayTurn: false })) }]
    : [task];

/** Strips on cloth, packed; and columns first, with pieces upright as asked, or turned where they may. */
const plainLayouts = (task: SheetTask): readonly (readonly Sheet[])[] => {
  const turned = task.demands.map((demand) =>
    demand.mayTurn && demand.across > demand.along ? onEnd(demand) : demand,
  );
  const columns = [columnSheets(task), columnSheets({ ...task, demands: turned })?.map(saidTurned(task)) ?? null];
  return [
    ...variantsOf(task).map((variant) => packed(stripsFor(variant), task.size[1])),
    ...columns.flatMap((sheets) => (sheets === null ? [] : [sheets])),
  ];
};

const onEnd = (demand: Demand): Demand => ({ ...demand, across: demand.along, along: demand.across });

/** Says of pieces that lie the other way round than demanded that they are turned. */
const saidTurned =
  ({ demands }: SheetTask) =>
  (sheet: Sheet): Sheet =>
    sheet.map((strip) => ({
      ...strip,
      parts: strip.parts.map((part) => ({
        ...part,
        pieces: part.pieces.map((piece) => ({ ...piece, turned: piece.cut[0] !== demands[piece.of]?.across })),
      })),
    }));

/** As on cloth; kinds one by one where a strip would come out longer than the sheet. */
const stripsFor = (task: SheetTask): readonly Strip[] => {
  const strips = stripsOn(task, task.demands);
  if (strips.every(({ height }) => height <= task.size[1] + 1e-9)) return strips;
  return task.demands.flatMap((demand, i) =>
    stripsOn(
      task,
      task.demands.map((other, j) => (i === j ? { ...demand, mayTurn: false } : { ...other, count: 0 })),
    ),
  );
};

const stripsOn = ({ size, budget, solver }: SheetTask, demands: readonly Demand[]): readonly Strip[] =>
  planLayout({ width: size[0], demands, budget, ...(solver ? { solver } : {}) }).layout.strips;

const usedBy = (strips: readonly Strip[]): Length => tidy(strips.reduce((sum, { height }) => sum + height, 0));

/** One below another from the top. */
const stacked = (strips: Sheet): Sheet => {
  let at = 0;
  return strips.map((strip) => {
    const placed = { ...strip, at: tidy(at) };
    at += strip.height;
    return placed;
  });
};

/** Fewer sheets; else the same number, more unevenly filled, so that the emptiest may be emptied next. */
const isBetter = (a: readonly Sheet[], b: readonly Sheet[]): boolean => {
  if (a.length !== b.length) return a.length < b.length;
  const evenness = (sheets: readonly Sheet[]): number => sheets.reduce((sum, strips) => sum + usedBy(strips) ** 2, 0);
  return evenness(a) > evenness(b) + 1e-9;
};

/** The better of tallest first into the first sheet with room, and of filling sheet by sheet as full as strips allow. */
const packed = (strips: readonly Strip[], room: Length): readonly Sheet[] => {
  const [first, full] = [firstFit(strips, room), fullest(strips, room)];
  return isBetter(full, first) ? full : first;
};

const byHeight = (strips: readonly Strip[]): readonly Strip[] => strips.toSorted((a, b) => b.height - a.height);

const firstFit = (strips: readonly Strip[], room: Length): readonly Sheet[] => {
  const sheets: Strip[][] = [];
  for (const strip of byHeight(strips)) {
    const open = sheets.find((sheet) => usedBy(sheet) + strip.height <= room + 1e-9);
    if (open) open.push(strip);
    else sheets.push([strip]);
  }
  return sheets;
};

const fullest = (strips: readonly Strip[], room: Length): readonly Sheet[] => {
  const sheets: Sheet[] = [];
  let left = byHeight(strips);
  while (left.length > 0) {
    const chosen = new Set(chosenFor(left, room, ({ height }) => height));
    sheets.push(left.filter((strip) => chosen.has(strip)));
    left = left.filter((strip) => !chosen.has(strip));
  }
  return sheets;
};

/** Strips whose worth adds up to most within the room: the plain table over the sums of heights that occur. At least one. */
const chosenFor = (strips: readonly Strip[], room: Length, worthOf: (strip: Strip) => number): readonly Strip[] => {
  let best = new Map<number, { readonly worth: number; readonly strips: readonly Strip[] }>([
    [0, { worth: 0, strips: [] }],
  ]);
  for (const strip of strips) {
    const next = new Map(best);
    for (const [used, sheet] of best) {
      const height = Math.round((used + strip.height) * 1e6) / 1e6;
      const worth = sheet.worth + worthOf(strip);
      if (height > room + 1e-6 || worth <= (next.get(height)?.worth ?? -1)) continue;
      next.set(height, { worth, strips: [...sheet.strips, strip] });
    }
    best = next;
  }
  return [...best.values()].reduce((a, b) => (b.worth > a.worth + 1e-9 ? b : a)).strips;
};

/** Plans all that is left, takes the strips that carry most cloth for one sheet, and plans the rest anew. */
const filledOneByOne = (task: SheetTask): readonly Sheet[] => {
  const sheets: Sheet[] = [];
  let demands = task.demands;
  const quick = { ...task, budget: { steps: Math.min(2, task.budget.steps) } };
  while (demands.some(({ count }) => count > 0)) {
    const strips = stripsFor({ ...quick, demands });
    const sheet = chosenFor(strips, task.size[1], clothIn);
    // with many like sheets to come one is as good as the next
    const times = Math.max(1, Math.min(...timesIn(demands, sheet)));
    for (let n = 0; n < times; n++) sheets.push(sheet);
    demands = less(demands, sheet, times);
  }
  return sheets;
};

const clothIn = (strip: Strip): number =>
  strip.parts.reduce((all, { pieces }) => all + pieces.reduce((sum, { cut }) => sum + cut[0] * cut[1], 0), 0);

const countsIn = (sheet: Sheet): ReadonlyMap<number, number> => {
  const counts = new Map<number, number>();
  for (const strip of sheet)
    for (const part of strip.parts) for (const { of } of part.pieces) counts.set(of, (counts.get(of) ?? 0) + 1);
  return counts;
};

const timesIn = (demands: readonly Demand[], sheet: Sheet): readonly number[] =>
  [...countsIn(sheet)].map(([of, count]) => Math.floor((demands[of]?.count ?? 0) / count));

const less = (demands: readonly Demand[], sheet: Sheet, times: number): readonly Demand[] => {
  const counts = countsIn(sheet);
  return demands.map((demand, of) => ({ ...demand, count: demand.count - times * (counts.get(of) ?? 0) }));
};

/** Rounds of improving for each step of the budget; our own choice. */
const roundsPerStep = 4;

/** Takes a few sheets apart, the emptiest more likely among them, and keeps what comes out better. */
const improved = (of: {
  readonly task: SheetTask;
  readonly sheets: readonly Sheet[];
  readonly bound: number;
}): readonly Sheet[] => {
  const { task } = of;
  let sheets = of.sheets;
  for (let round = 0; round < roundsPerStep * task.budget.steps && sheets.length > of.bound; round++) {
    const chance = chanceFrom(round + 1);
    const order = sheets
      .map((sheet, i) => ({ sheet, i, key: usedBy(sheet) * (0.4 + chance()) }))
      .toSorted((a, b) => a.key - b.key || a.i - b.i);
    const opened = order.slice(0, 2 + (round % 3));
    const kept = order.slice(opened.length).map(({ sheet }) => sheet);
    const counts = countsIn(opened.flatMap(({ sheet }) => sheet));
    const demands = task.demands.map((demand, i) => ({ ...demand, count: counts.get(i) ?? 0 }));
    const part = { ...task, demands, budget: { steps: 2 + (round % 4) } };
    for (const made of [...plainLayouts(part), filledOneByOne(part)]) {
      if (
        isBetter(
          made,
          opened.map(({ sheet }) => sheet),
        )
      ) {
        sheets = [...kept, ...made];
        break;
      }
    }
  }
  return sheets;
};
