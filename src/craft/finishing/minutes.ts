// How long a lesson takes: an estimate of our own, not measured.
import { inchIn, type Length, type Unit } from '#craft/measure';

/** Our own estimate: minutes to lay out, sew, press and measure one seam before a class, and to answer a question. */
const shownEstimate = { seam: 3, inch: 0.1 } as const;

/** Whole minutes to show one step to a class. */
export const lessonMinutesOf = (step: { readonly seam: Length; readonly unit: Unit }): number =>
  Math.round(shownEstimate.seam + (step.seam / inchIn[step.unit]) * shownEstimate.inch);
