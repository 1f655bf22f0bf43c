// Sizes that were measured of a block, as they are written down: kept in this browser for each quilt, never in the quilt.
import type { WrittenSize } from '#workroom/compute';
import { keptBeside, parsed } from '#workroom/room';

/** By entry. */
export type Measured = Readonly<Record<string, readonly WrittenSize[]>>;

export const measuredIn = (text: string | null): Measured => {
  const kept = parsed(text);
  if (typeof kept !== 'object' || kept === null || Array.isArray(kept)) return {};
  const lists = Object.entries(kept).map(([entry, sizes]) => [
    entry,
    Array.isArray(sizes) ? sizes.filter(isSize).slice(0, most) : [],
  ]);
  return Object.fromEntries(lists) as Measured;
};

/** Our own figure: more than anyone measures of one block. */
const most = 400;

const isSize = (value: unknown): value is WrittenSize => {
  const { step, across, down } = (value ?? {}) as Partial<WrittenSize>;
  return Number.isInteger(step) && (step as number) > 0 && typeof across === 'string' && typeof down === 'string';
};

/** One size written anew; a step of which nothing is written is not kept. */
export const written = (
  measured: Measured,
  entry: string,
  of: { readonly step: number; readonly way: 'across' | 'down'; readonly text: string },
): Measured => {
  const sizes = measured[entry] ?? [];
  const before = sizes.find(({ step }) => step === of.step) ?? { step: of.step, across: '', down: '' };
  const now = { ...before, [of.way]: of.text.slice(0, 60) };
  const others = sizes.filter(({ step }) => step !== of.step);
  const kept = `${now.across}${now.down}`.trim() === '' ? others : [...others, now];
  return { ...measured, [entry]: kept.toSorted((a, b) => a.step - b.step) };
};

export const measuredOf = keptBeside({ name: 'measured', read: measuredIn });
