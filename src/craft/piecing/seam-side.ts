// On which side of a unit the next part lies, told from the line of their seam.
import type { Side } from '#craft/design';
import type { SeamLine } from './chords.ts';

/**
 * Where the part on one hand of the line lies, seen from the other.
 *
 * @param hand what lies 'after' the line is below a level one and to the right of any other; 'before' is the rest.
 *   A slanted seam counts as upright up to 45 degrees from it, else as level.
 */
export const sideOfSeam = (line: SeamLine, hand: 'before' | 'after'): Side => {
  if (line.lie === 0) return hand === 'after' ? 'bottom' : 'top';
  const upright = hand === 'after' ? 'right' : 'left';
  const dx = line.to.x - line.from.x;
  const dy = line.to.y - line.from.y;
  if (Math.abs(dx) <= Math.abs(dy) * (1 + 1e-6)) return upright;
  // the line runs up and to the right or left: what lies right of it lies below or above
  return (hand === 'after') === dx > 0 ? 'bottom' : 'top';
};
