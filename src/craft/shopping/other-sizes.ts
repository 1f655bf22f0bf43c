// In which other sizes can a quilt be made, and what is it then? More or fewer rows and columns, ending as it was drawn: a
// pattern that repeats or is an arrangement goes on, another is begun again or cut short. Sections have one size.
import type { ArrangementKind, CellDesign, CellRows, OnPointTop, Quilt, StraightTop, TopDesign } from '#craft/design';
import { arrangedAs, arrangedCells } from './arranged.ts';

export interface Counts {
  readonly rows: number;
  readonly columns: number;
}

/** How far rows or columns go on. */
interface Way {
  readonly count: number;
  /** Lines until the pattern comes again; `count` where it does not. */
  readonly repeat: number;
  /** Goes on to any count that ends alike; else whole repeats of all there is; or no further. */
  readonly on: 'goes-on' | 'begins-again' | 'ends';
}

/** Rows and columns that the quilt may have, up to so many, each from the fewest; null for sections. */
export const sizesOf = (
  top: TopDesign,
  most: number,
): { readonly rows: readonly number[]; readonly columns: readonly number[] } | null => {
  const ways = waysOf(top);
  return ways && { rows: countsOf(ways.rows, most), columns: countsOf(ways.columns, most) };
};

export const drawnCounts = (top: TopDesign): Counts | null => {
  if (top.set === 'sections') return null;
  return { rows: top.rows.length, columns: top.rows[0]?.length ?? 0 };
};

/**
 * The quilt with so many rows and columns, out of those that `sizesOf` gives.
 *
 * @throws RangeError for sections
 */
export const resized = (quilt: Quilt, counts: Counts): Quilt => {
  const { top } = quilt;
  if (top.set === 'sections') throw new RangeError('sections have one size');
  return { ...quilt, top: top.set === 'straight' ? resizedStraight(top, counts) : resizedOnPoint(top, counts) };
};

/** How rows or columns come to their number: as drawn, as the pattern goes on, the last ones left out, or begun again. */
export type Continuation = 'as-drawn' | 'goes-on' | 'cut-short' | 'begun-again';

/** Down, then across; null for sections. */
export const continuationsOf = (top: TopDesign, counts: Counts): readonly [Continuation, Continuation] | null => {
  const ways = waysOf(top);
  return ways && [continuationOf(ways.rows, counts.rows), continuationOf(ways.columns, counts.columns)];
};

const continuationOf = ({ count, on }: Way, n: number): Continuation => {
  if (n === count) return 'as-drawn';
  if (on === 'goes-on') return 'goes-on';
  return n < count ? 'cut-short' : 'begun-again';
};

const countsOf = ({ count, repeat, on }: Way, most: number): readonly number[] => {
  const all = Array.from({ length: Math.max(0, most) }, (_, i) => i + 1);
  if (on === 'goes-on') return all.filter((n) => n % repeat === count % repeat);
  return all.filter((n) => n <= count || (on === 'begins-again' && n % count === 0));
};

/** Arrangements that come in groups keep whole ones, where they were drawn whole. */
const groupOf: Readonly<Record<ArrangementKind, number>> = {
  'barn-raising': 1,
  'straight-furrow': 1,
  'sunshine-and-shadow': 1,
  'streak-of-lightning': 1,
  'fields-and-furrows': 2,
  pinwheel: 2,
};

const waysOf = (top: TopDesign): { readonly rows: Way; readonly columns: Way } | null => {
  if (top.set === 'sections') return null;
  const counts = drawnCounts(top) as Counts;
  const kind = top.set === 'straight' ? (top.arrangement ?? arrangedAs(top.rows))?.kind : undefined;
  if (kind !== undefined) {
    const group = groupOf[kind];
    return { rows: grouped(counts.rows, group), columns: grouped(counts.columns, group) };
  }
  const between = top.set === 'on-point' ? top.between : [];
  return {
    rows: wayOf(linesOf(top.rows), top.set === 'on-point' ? linesOf(between) : null),
    columns: wayOf(linesOf(turnedOver(top.rows)), top.set === 'on-point' ? linesOf(turnedOver(between)) : null),
  };
};

const grouped = (count: number, group: number): Way => ({ count, repeat: group, on: 'goes-on' });

const wayOf = (lines: readonly string[], between: readonly string[] | null): Way => {
  const count = lines.length;
  for (let repeat = 1; repeat < count; repeat++) {
    if (comesAgain(lines, repeat) && comesAgain(between ?? [], repeat)) return { count, repeat, on: 'goes-on' };
  }
  // on point the cells between the last row and a first that begins again are nowhere drawn
  if (between !== null) return { count, repeat: count, on: 'ends' };
  return { count, repeat: count, on: count === 1 ? 'goes-on' : 'begins-again' };
};

const comesAgain = (lines: readonly string[], repeat: number): boolean =>
  lines.every((line, i) => i < repeat || line === lines[i - repeat]);

const linesOf = (rows: CellRows): readonly string[] => rows.map((row) => row.map(textOf).join('|'));

const textOf = (cell: CellDesign): string =>
  JSON.stringify(cell.kind === 'plain' ? [cell.fabric] : [cell.block, cell.colouring, cell.turn, cell.mirror]);

const turnedOver = (rows: CellRows): CellRows =>
  (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] as CellDesign));

/** Cell by cell: a line that is not drawn is the one that it repeats. */
const continued = (rows: CellRows, of: { readonly counts: Counts; readonly down: number; readonly across: number }) =>
  Array.from({ length: of.counts.rows }, (_, i) =>
    Array.from({ length: of.counts.columns }, (_, j) => rows[i % of.down]?.[j % of.across] as CellDesign),
  );

const repeatsOf = (top: TopDesign): { readonly down: number; readonly across: number } => {
  const ways = waysOf(top);
  return { down: ways?.rows.repeat ?? 1, across: ways?.columns.repeat ?? 1 };
};

const resizedStraight = (top: StraightTop, counts: Counts): StraightTop => {
  const arranged = top.arrangement === null ? arrangedAs(top.rows) : null;
  const rows = arranged ? arrangedCells(arranged, counts) : continued(top.rows, { counts, ...repeatsOf(top) });
  return { ...top, rows, arrangement: top.arrangement && { ...top.arrangement, ...counts } };
};

const resizedOnPoint = (top: OnPointTop, counts: Counts): OnPointTop => {
  const repeats = repeatsOf(top);
  const inside =
    counts.columns === 1 ? { rows: 0, columns: 0 } : { rows: counts.rows - 1, columns: counts.columns - 1 };
  return {
    ...top,
    rows: continued(top.rows, { counts, ...repeats }),
    between: continued(top.between, { counts: inside, ...repeats }),
  };
};
