// What cloth is at hand? A cloth's id and an amount, as somebody writes them, read against the quilt's cloths.
import type { Quilt } from '#craft/design';
import { convert, type Length, length, type MeasureProblem, parseMeasure } from '#craft/measure';
import { compare, isPositive, rational, toNumber } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';

export interface WrittenAmount {
  readonly fabric: string;
  /** "2 1/2 yd"; of cloth in sheets their number. */
  readonly amount: string;
  /** Where it stands, for the problem's path. */
  readonly path: string;
}

/** In the document's unit, as it comes out of the cupboard: squaring and shrinkage still to be lost; or a number of sheets. */
export type AtHand =
  | {
      readonly kind: 'length';
      /** Of the longest piece. */
      readonly length: Length;
      /** Of the others, from the longest. */
      readonly others: readonly Length[];
    }
  | { readonly kind: 'sheets'; readonly count: number };

/** By fabric. Cloths that it does not name are bought. */
export type Cupboard = ReadonlyMap<string, AtHand>;

export type CupboardProblem = { readonly path: string; readonly fabric: string } & (
  | { readonly code: 'shopping/unknown-cloth'; readonly known: readonly string[] }
  | { readonly code: 'shopping/unreadable'; readonly found: string; readonly why: MeasureProblem }
  | { readonly code: 'shopping/no-unit'; readonly found: string }
  | { readonly code: 'shopping/nothing'; readonly found: string }
  | { readonly code: 'shopping/too-much'; readonly found: string }
  | { readonly code: 'shopping/sheets-wanted'; readonly found: string }
  /** Its document buys it in a way that cannot be named as one amount. */
  | { readonly code: 'shopping/not-one-amount' }
);

/** Every amount, pieces of one cloth together; or all that is wrong with them at once. */
export const readCupboard = (written: readonly WrittenAmount[], quilt: Quilt): Outcome<Cupboard, CupboardProblem> => {
  const cupboard = new Map<string, AtHand>();
  const problems: CupboardProblem[] = [];
  for (const one of written) {
    const read = readAmount(one, quilt);
    if ('code' in read) problems.push(read);
    else cupboard.set(one.fabric, together(cupboard.get(one.fabric), read));
  }
  return problems.length > 0 ? refused(problems) : done(cupboard);
};

const together = (before: AtHand | undefined, more: AtHand): AtHand => {
  if (before === undefined) return more;
  if (before.kind === 'sheets' || more.kind === 'sheets')
    return { kind: 'sheets', count: countOf(before) + countOf(more) };
  const all = [before.length, ...before.others, more.length, ...more.others].toSorted((a, b) => b - a);
  const [longest, ...others] = all as [Length, ...Length[]];
  return { kind: 'length', length: longest, others };
};

const countOf = (hand: AtHand): number => (hand.kind === 'sheets' ? hand.count : 0);

const readAmount = (one: WrittenAmount, quilt: Quilt): AtHand | CupboardProblem => {
  const { path, fabric: id } = one;
  const fabric = quilt.fabrics.find((cloth) => cloth.id === id);
  const spot = { path, fabric: id };
  if (fabric === undefined)
    return { code: 'shopping/unknown-cloth', ...spot, known: quilt.fabrics.map((cloth) => cloth.id) };
  if (fabric.bought.kind === 'sheets') return readSheets(one, spot);
  if (fabric.bought.kind !== 'yardage') return { code: 'shopping/not-one-amount', ...spot };
  return readLength(one, quilt, spot);
};

type ClothSpot = Pick<CupboardProblem, 'path' | 'fabric'>;

/** A kilometre of cloth: beyond it somebody has slipped. Our own figure. */
const most = { in: rational(40_000), cm: rational(100_000) } as const;

const readLength = ({ amount: found }: WrittenAmount, { unit }: Quilt, spot: ClothSpot): AtHand | CupboardProblem => {
  const read = parseMeasure(found);
  if (!read.ok) return { code: 'shopping/unreadable', ...spot, found, why: read.problems[0] as MeasureProblem };
  const { amount, unit: written } = read.value;
  if (!isPositive(amount)) return { code: 'shopping/nothing', ...spot, found };
  if (written === null) return { code: 'shopping/no-unit', ...spot, found };
  const exact = convert(amount, { from: written, to: unit });
  if (compare(exact, most[unit]) > 0) return { code: 'shopping/too-much', ...spot, found };
  return { kind: 'length', length: length(toNumber(exact)), others: [] };
};

const mostSheets = 10_000;

const readSheets = ({ amount: found }: WrittenAmount, spot: ClothSpot): AtHand | CupboardProblem => {
  const count = /^\s*(\d{1,9})(?:\s+(?:fat quarters?|fat eighths?|sheets?))?\s*$/u.exec(found)?.[1];
  if (count === undefined) return { code: 'shopping/sheets-wanted', ...spot, found };
  if (Number(count) === 0) return { code: 'shopping/nothing', ...spot, found };
  if (Number(count) > mostSheets) return { code: 'shopping/too-much', ...spot, found };
  return { kind: 'sheets', count: Number(count) };
};
