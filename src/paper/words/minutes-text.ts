// Whose minutes are told? A table of our own estimate stands behind them, or what the quilt has in its place.
import type { Quilt } from '#craft/design';
import { usualMinutes } from '#craft/minutes';

/** "our own estimate"; where the quilt has a table, that, and what is left of ours. */
export const estimateText = ({ minutes }: Pick<Quilt, 'minutes'>): string => {
  const own = Object.keys(minutes ?? {}).length;
  if (own === 0) return 'our own estimate';
  return own === Object.keys(usualMinutes).length
    ? 'by the minutes of this quilt'
    : 'by the minutes of this quilt, the rest our own estimate';
};
