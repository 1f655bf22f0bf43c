// How long the work takes: an estimate of our own, not measured. A shop should put in its own figures.
import type { Length, Unit } from '#craft/measure';

/** Our own estimate: minutes to cut one piece, to take up, sew and press one seam, and per inch of seam. */
const ownEstimate = { piece: 0.3, seam: 1, inch: 0.02 } as const;

export const minutesOf = (work: {
  readonly pieces: number;
  readonly seams: number;
  readonly seamLength: Length;
  readonly unit: Unit;
}): number => {
  const inches = work.unit === 'in' ? work.seamLength : work.seamLength / 2.54;
  return Math.round(work.pieces * ownEstimate.piece + work.seams * ownEstimate.seam + inches * ownEstimate.inch);
};
