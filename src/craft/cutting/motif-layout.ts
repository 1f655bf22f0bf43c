// Where do pieces lie whose middle must fall on a motif of the print? In rows of motifs; the cloth between the rows and beside the
// pieces is filled with the others. How large pieces are, and what is bought, is not its business.
import { type Length, length, tidy } from '#craft/measure';
import type { Demand, LaidOut, MotifRepeat, Strip, StripPart } from './cloth.ts';
import { motifBound } from './motif-bound.ts';
import { filledBeside } from './motif-filling.ts';

export interface MotifTask {
  readonly width: Length;
  /** Those marked `motif` do not turn. */
  readonly demands: readonly Demand[];
  readonly repeat: MotifRepeat;
  /** Pieces without a motif, on cloth of this width. */
  readonly lay: (demands: readonly Demand[]) => LaidOut;
}

/**
 * A layout of exactly the pieces demanded, every motif piece with its middle on a motif, counted from the layout's upper left
 * corner; strips may have cloth between them. The shortest of filling all gaps, none between rows, and none at all.
 *
 * @returns `boundKind` 'area': the bound counts area and rows of motifs
 * @throws RangeError when no motif lies where a piece has room round it; the ledger tells those
 * @source docs/formulas.md#motifs
 */
export const planOnMotifs = (task: MotifTask): LaidOut => {
  const rows = placedRows(rowsOf(task), task);
  const ways = (['everywhere', 'beside', 'nowhere'] as const).map((fill) => strips({ rows, task, fill }));
  const best = ways.reduce((a, b) => (endOf(b) < endOf(a) - 1e-9 ? b : a));
  const long = tidy(endOf(best));
  return {
    layout: { width: task.width, length: long, strips: best },
    bound: length(Math.min(long, motifBound(task))),
    boundKind: 'area',
    motifs: {
      pieces: task.demands.reduce((sum, { motif, count }) => sum + (motif ? count : 0), 0),
      repeat: task.repeat.along,
    },
  };
};

/** Pieces of one row of motifs. */
interface Row {
  readonly height: number;
  readonly pieces: { readonly of: number; readonly x: number }[];
  right: number;
}

/** Tallest first, each into the first row with a motif left for it. */
const rowsOf = ({ demands, width, repeat }: MotifTask): readonly Row[] => {
  const rows: Row[] = [];
  const order = demands
    .map((demand, of) => ({ demand, of }))
    .filter(({ demand }) => demand.motif && demand.count > 0)
    .toSorted((a, b) => b.demand.along - a.demand.along || b.demand.across - a.demand.across || a.of - b.of);
  for (const { demand, of } of order) {
    for (let n = 0; n < demand.count; n++) {
      const wide = demand.across;
      const row = rows.find((one) => placeIn({ from: one.right, wide, width, repeat }) !== null);
      const x = placeIn({ from: row?.right ?? 0, wide, width, repeat });
      if (x === null) throw new RangeError(`no motif with room for a piece ${demand.across} by ${demand.along}`);
      if (row === undefined) rows.push({ height: demand.along, pieces: [{ of, x }], right: x + wide });
      else {
        row.pieces.push({ of, x });
        row.right = x + wide;
      }
    }
  }
  return rows;
};

/** Left edge of a piece of this width round the first motif that leaves it right of `from`; null where the cloth ends. */
export const placeIn = (of: {
  readonly from: number;
  readonly wide: number;
  readonly width: number;
  readonly repeat: MotifRepeat;
}): number | null => {
  const { across, motif } = of.repeat;
  const first = across === null ? of.from : motif[0] - of.wide / 2;
  const steps = across === null ? 0 : Math.max(0, Math.ceil((of.from - first) / across - 1e-9));
  const x = first + steps * (across ?? 0);
  return x + of.wide <= of.width + 1e-9 ? x : null;
};

interface PlacedRow extends Row {
  readonly at: number;
}

/** Each row of pieces on the next row of motifs that leaves it below the one before. */
const placedRows = (rows: readonly Row[], { repeat }: MotifTask): readonly PlacedRow[] => {
  let end = 0;
  return rows.map((row) => {
    const first = repeat.motif[1] - row.height / 2;
    const at = first + Math.max(0, Math.ceil((end - first) / repeat.along - 1e-9)) * repeat.along;
    end = at + row.height;
    return { ...row, at };
  });
};

const endOf = (list: readonly Strip[]): number => list.reduce((end, { at, height }) => Math.max(end, at + height), 0);

const strips = (of: {
  readonly rows: readonly PlacedRow[];
  readonly task: MotifTask;
  readonly fill: 'everywhere' | 'beside' | 'nowhere';
}): readonly Strip[] => {
  const { rows, task, fill } = of;
  const left = task.demands.map(({ count, motif }) => (motif ? 0 : count));
  const inRows = rows.map((row) => stripOf(row, { task, left, fill: fill !== 'nowhere' }));
  const rest = laidRest(task, left);
  const between = fill === 'everywhere' ? inGaps(inRows, rest) : [];
  const used = new Set(between.map(({ strip }) => strip));
  const placed = [...inRows, ...between.map(({ strip, at }) => ({ ...strip, at: tidy(at) }))];
  const tail = rest.filter((strip) => !used.has(strip));
  const laidTail = used.size === 0 ? tail : shorter(tail, laidRest(task, countsOf(tail, left.length)));
  let end = endOf(inRows);
  const after = laidTail.map((strip) => {
    const here = { ...strip, at: tidy(end) };
    end += strip.height;
    return here;
  });
  return [...placed.toSorted((a, b) => a.at - b.at), ...after];
};

const shorter = (a: readonly Strip[], b: readonly Strip[]): readonly Strip[] => {
  const sum = (list: readonly Strip[]): number => list.reduce((all, { height }) => all + height, 0);
  return sum(b) < sum(a) - 1e-9 ? b : a;
};

const laidRest = (task: MotifTask, left: readonly number[]): readonly Strip[] =>
  left.some((count) => count > 0)
    ? task.lay(task.demands.map((demand, i) => ({ ...demand, count: left[i] ?? 0 }))).layout.strips
    : [];

const countsOf = (list: readonly Strip[], demands: number): readonly number[] => {
  const counts = new Array<number>(demands).fill(0);
  for (const { parts } of list)
    for (const { pieces } of parts) for (const { of } of pieces) counts[of] = (counts[of] ?? 0) + 1;
  return counts;
};

/** The row's pieces, lower ones in the middle of its height, and what lies beside them. Takes from `left` what it fills in. */
const stripOf = (
  row: PlacedRow,
  of: { readonly task: MotifTask; readonly left: number[]; readonly fill: boolean },
): Strip => {
  const { task, left } = of;
  const height = tidy(row.height);
  const parts: StripPart[] = [];
  let from = 0;
  const beside = (to: number): void => {
    if (of.fill) parts.push(...filledBeside({ from, to, height: row.height, demands: task.demands, left }));
  };
  for (const { of: index, x } of row.pieces) {
    beside(x);
    const { across, along } = task.demands[index] as Demand;
    const piece = { at: tidy((row.height - along) / 2), cut: [across, along] as const, turned: false, of: index };
    parts.push({ at: tidy(x), width: across, pieces: [piece] });
    from = x + across;
  }
  beside(task.width);
  return { at: tidy(row.at), height, parts };
};

/** Strips of the others in the cloth between two rows, each gap as full as their heights allow. */
const inGaps = (
  rows: readonly Strip[],
  rest: readonly Strip[],
): readonly { readonly strip: Strip; readonly at: number }[] => {
  const placed: { strip: Strip; at: number }[] = [];
  let free = rest;
  let end = 0;
  for (const row of rows) {
    let at = end;
    const taken = new Set(fullest(free, row.at - end));
    for (const strip of free.filter((one) => taken.has(one))) {
      placed.push({ strip, at });
      at += strip.height;
    }
    free = free.filter((strip) => !taken.has(strip));
    end = row.at + row.height;
  }
  return placed;
};

/** The plain table over sums of heights. */
const fullest = (list: readonly Strip[], room: number): readonly Strip[] => {
  let sums = new Map<number, readonly Strip[]>([[0, []]]);
  for (const strip of list) {
    if (strip.height > room + 1e-9) continue;
    const next = new Map(sums);
    for (const [used, taken] of sums) {
      const height = Math.round((used + strip.height) * 1e6) / 1e6;
      if (height <= room + 1e-6 && !next.has(height)) next.set(height, [...taken, strip]);
    }
    sums = next;
  }
  return sums.get(Math.max(...sums.keys())) ?? [];
};
