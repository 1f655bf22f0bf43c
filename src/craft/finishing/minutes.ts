// How long the work takes: an estimate of our own, not measured. A shop should put in its own figures.
import type { Length, Unit } from '#craft/measure';

/** Our own estimate: minutes to cut one piece, to take up, sew and press one seam, and per inch of seam. */
const ownEstimate = { piece: 0.3, seam: 1, inch: 0.02 } as const;

/** Our own estimate: minutes to lay out, sew, press and measure one seam before a class, and to answer a question. */
const shownEstimate = { seam: 3, inch: 0.1 } as const;

/** Whole minutes to show one step to a class. */
export const lessonMinutesOf = (step: { readonly seam: Length; readonly unit: Unit }): number =>
  Math.round(shownEstimate.seam + inchesOf(step.seam, step.unit) * shownEstimate.inch);

const inchesOf = (value: Length, unit: Unit): number => (unit === 'in' ? value : value / 2.54);

export const minutesOf = (work: {
  readonly pieces: number;
  readonly seams: number;
  readonly seamLength: Length;
  readonly unit: Unit;
}): number => {
  const inches = inchesOf(work.seamLength, work.unit);
  return Math.round(work.pieces * ownEstimate.piece + work.seams * ownEstimate.seam + inches * ownEstimate.inch);
};
