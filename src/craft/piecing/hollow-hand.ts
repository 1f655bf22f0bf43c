// On which hand is a curved seam hollow? The allowance is pressed that way: its clips open there, where on the other side the
// longer raw edge would lie in folds. Common practice, no source.
import { type Arc, arcLength } from '#ground/arc';

/** How much more of a seam must be hollow on one hand than on the other to say so: half of its arcs, our own figure. */
const mostly = 0.5;

/** The hand on which most of a seam's arcs are hollow, as they are walked; null where neither is. */
export const hollowHand = (arcs: readonly Arc[]): 'left' | 'right' | null => {
  const all = arcs.reduce((sum, arc) => sum + arcLength(arc), 0);
  // clockwise the centre is at the right hand: the left is hollow
  const left = arcs.reduce((sum, arc) => sum + (arc.clockwise ? 1 : -1) * arcLength(arc), 0);
  if (all === 0 || Math.abs(left) < mostly * all) return null;
  return left > 0 ? 'left' : 'right';
};
