// How many of each step are sewn, and where one was: kept in this browser for each quilt, never in the quilt. A step is known by its
// entry, its number and what it joins, so that a count goes when the step becomes another.
import { keptBeside, parsed } from '#workroom/room';

export interface Sewn {
  /** Entry and step that were looked at last. */
  readonly last: readonly [entry: string, step: number] | null;
  readonly counts: Readonly<Record<string, number>>;
}

const none: Sewn = { last: null, counts: {} };

export const sewnIn = (text: string | null): Sewn => {
  const kept = parsed(text);
  if (typeof kept !== 'object' || kept === null) return none;
  const { last, counts } = kept as { readonly last?: unknown; readonly counts?: unknown };
  const [entry, step] = Array.isArray(last) ? (last as readonly unknown[]) : [];
  const pairs = typeof counts === 'object' && counts !== null ? Object.entries(counts) : [];
  return {
    last: typeof entry === 'string' && isCount(step) ? [entry, step] : null,
    counts: Object.fromEntries(pairs.filter((pair): pair is [string, number] => isCount(pair[1])).slice(-most)),
  };
};

/** Our own figure: more steps than any quilt has. */
const most = 4000;

const isCount = (value: unknown): value is number => Number.isInteger(value) && (value as number) > 0;

export interface Counted {
  readonly key: string;
  readonly total: number;
}

/** Never more than there are, whatever was kept. */
export const countOf = ({ counts }: Sewn, { key, total }: Counted): number =>
  Object.hasOwn(counts, key) ? Math.min(counts[key] ?? 0, total) : 0;

/** @param to none or less takes the count out */
export const counted = (sewn: Sewn, step: Counted, to: number): Sewn => {
  const { [step.key]: _before, ...others } = sewn.counts;
  return { ...sewn, counts: to > 0 ? { ...others, [step.key]: Math.min(to, step.total) } : others };
};

/** So many of steps that are sewn together: what is more goes onto the first that are not all sewn, what is less comes off the last. */
export const countedTogether = (sewn: Sewn, steps: readonly Counted[], to: number): Sewn => {
  const change = to - sumOf(sewn, steps);
  let left = Math.abs(change);
  return (change > 0 ? steps : steps.toReversed()).reduce((now, step) => {
    const done = countOf(now, step);
    const share = Math.min(left, change > 0 ? step.total - done : done);
    left -= share;
    return share === 0 ? now : counted(now, step, done + (change > 0 ? share : -share));
  }, sewn);
};

export const sumOf = (sewn: Sewn, steps: readonly Counted[]): number =>
  steps.reduce((all, step) => all + countOf(sewn, step), 0);

export const sewnOf = keptBeside({ name: 'sewn', read: sewnIn });
