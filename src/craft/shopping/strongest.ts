// Which changes of a cloth's purchase are worth a line to read?
import type { PurchaseChange } from './changes.ts';

/** Sheets in place of a length are worth a line up to so many: a yard of cloth. Our own figure. */
const mostSheets = 4;

/**
 * At most so many of one cloth's changes: the largest first, each kind once a way, less or more. Of several widths that come to the
 * same, the one nearest to the cloth's own. Sheets in place of a length come last.
 *
 * @param changes of one cloth, as `purchaseChanges` gives them
 */
export const strongestOf = (changes: readonly PurchaseChange[], most: number): readonly PurchaseChange[] => {
  const kept: PurchaseChange[] = [];
  for (const change of changes) {
    if (change.difference === null) continue;
    const same = kept.findIndex((other) => isLike(change, other));
    if (same < 0) kept.push(change);
    // widths stand from the narrowest up: of narrower cloths the last is the nearest
    else if (change.difference > 0 && change.difference === kept[same]?.difference) kept[same] = change;
  }
  const otherwise = changes.filter(
    ({ difference, after, before }) =>
      difference === null && (after.unit === 'sheets' ? after.amount : before.amount) <= mostSheets,
  );
  return [...kept, ...otherwise].slice(0, most);
};

const isLike = (a: PurchaseChange, b: PurchaseChange): boolean =>
  a.code === b.code && Math.sign(a.difference ?? 0) === Math.sign(b.difference ?? 0);
