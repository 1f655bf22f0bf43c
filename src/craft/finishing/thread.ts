// How much thread do seams take? By the length of seam sewn with the lockstitch of a sewing machine; says nothing of its
// weight or colour.
import { type Length, length } from '#craft/measure';

/**
 * Thread in one unit of lockstitch seam, needle and bobbin together: the two threads along the seam, and one thickness
 * of it twice for every stitch.
 *
 * @param thickness of the layers sewn, same unit as the seam
 * @param stitches  in one unit of seam
 * @source docs/formulas.md#thread
 */
export const lockstitchThread = (of: { readonly thickness: number; readonly stitches: number }): number =>
  2 + 2 * of.thickness * of.stitches;

/** With a share more for ends, tests and bobbins that run out. */
export const withWaste = (amount: number, share: number): number => amount * (1 + share);

/** Of seam length, needle and bobbin together; and the share for waste. Both of the trade: docs/formulas.md#thread. */
const perSeam = 2.5;
const waste = 0.15;

export interface Thread {
  /** All seams of blocks and top, sewn once. */
  readonly seams: Length;
  /** Needle and bobbin together, waste included; half goes on each. */
  readonly thread: Length;
}

/** @param seams their length, the document's unit */
export const threadFor = (seams: Length): Thread => ({ seams, thread: length(withWaste(seams * perSeam, waste)) });
