// The largest quilt from the cloth at hand as JSON values, for other programs.
import type { QuiltPlan } from '#craft';
import type { LargestFound, SizedQuilt } from '#craft/shopping';

/** Lengths are plain doubles in the document's unit. */
export const toLargestFile = (plan: QuiltPlan, { drawn, best, next, tried }: LargestFound): unknown => ({
  format: 'seamstead-largest',
  version: 1,
  title: plan.quilt.title,
  unit: plan.quilt.unit,
  drawn: sized(drawn),
  largest: best && sized(best),
  next: next && sized(next),
  tried,
});

const sized = ({ counts, size, continued, cloths }: SizedQuilt): unknown => ({
  rows: counts?.rows ?? null,
  columns: counts?.columns ?? null,
  continued,
  size,
  cloths,
});
