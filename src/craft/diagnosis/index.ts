// Diagnosis: from sizes that were measured back to what made them so.

export {
  type Diagnosis,
  diagnose,
  diagnoseTop,
  diagnosisOf,
  type MeasuredSize,
} from './diagnose.ts';
export type { Explanation } from './explanations.ts';
export type { NextMeasure } from './next-measure.ts';
export type { Reading, ReadingProblem, Unmeasured } from './readings.ts';
export type { Both, Rescue } from './rescue.ts';
export {
  readSeamTest,
  type SeamTest,
  type SeamTestFound,
  type SeamTestProblem,
  seamTestFor,
  type TestPart,
} from './seam-test.ts';
export type { Verdict } from './verdict.ts';
export type { Interval, Weighed } from './weigh.ts';
