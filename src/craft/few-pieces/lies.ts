// Which ways can a piece lie on cloth of some width, and which heights may strips have?
import type { Cutting, Job, Kind } from '#craft/strips';
import { heightOf, widthOf } from '#craft/strips';

export interface Lie {
  readonly turned: boolean;
  readonly width: number;
  readonly height: number;
}

/** As it stands first. Empty when the piece fits neither way. */
export const liesOf = (kind: Kind, within: { readonly width: number; readonly height: number }): readonly Lie[] =>
  (kind.mayTurn && kind.width !== kind.height ? [false, true] : [false])
    .map((turned) => ({ turned, width: widthOf(kind, turned), height: heightOf(kind, turned) }))
    .filter(({ width, height }) => width <= within.width && height <= within.height);

/** The lie of least height that is no wider than this; null when all are. */
export const flattestLie = (lies: readonly Lie[], width: number): Lie | null =>
  lies.reduce<Lie | null>(
    (best, lie) => (lie.width <= width && (best === null || lie.height < best.height) ? lie : best),
    null,
  );

/**
 * The least height that a strip with so high a stack may have: its own, or the next that some piece has lying on this cloth.
 *
 * @returns a function of the stack's height; Infinity where no piece is as high
 */
export const stripHeightsFor = (job: Job, cutting: Cutting): ((height: number) => number) => {
  if (cutting.stages === 2 || cutting.stripHeights === 'any') return (height) => height;
  const within = { width: job.width, height: Number.POSITIVE_INFINITY };
  const heights = job.kinds.flatMap((kind) => liesOf(kind, within).map((lie) => lie.height));
  const sorted = [...new Set(heights)].sort((a, b) => a - b);
  return (height) => sorted.find((each) => each >= height) ?? Number.POSITIVE_INFINITY;
};
