// A diagnosis as JSON values, for other programs.
import type { Diagnosis, Explanation, Interval, Rescue, SeamTestFound, Verdict, Weighed } from '#craft/diagnosis';
import type { Length, Unit } from '#craft/measure';
import { blockPartNames, type PartNames } from './part-names.ts';
import { adviceOn, rescueTexts, seamTestAdvice } from './sentences.ts';

/** Lengths are plain doubles in the document's unit; steps count from 1. */
export const toDiagnosisFile = (block: string, diagnosis: Diagnosis, names: PartNames = blockPartNames): unknown => {
  const texts = rescueTexts(diagnosis, names);
  const { next, whole, verdict } = diagnosis;
  return {
    format: 'seamstead-diagnosis',
    version: 1,
    block,
    unit: diagnosis.unit,
    seam: diagnosis.seam,
    readTo: diagnosis.fineness,
    advice: adviceOn(diagnosis, names),
    verdict: verdictFromOne(verdict),
    untold: diagnosis.untold,
    allowance: taken(diagnosis.seam, diagnosis.allowance),
    explanations: diagnosis.ranked.map((weighed) => explained(diagnosis.seam, weighed)),
    next: next && {
      step: fromOne(next.step),
      way: next.way,
      comesTo: next.comesTo,
      sooner: next.sooner && { ...next.sooner, step: fromOne(next.sooner.step) },
    },
    measured: diagnosis.sizes.map(({ step, ...size }) => ({ step: fromOne(step), ...size })),
    whole,
    rescues: diagnosis.rescues.map((rescue, i) => ({ ...numbered(rescue), text: texts[i] })),
  };
};

const verdictFromOne = (verdict: Verdict): Verdict => {
  switch (verdict.kind) {
    case 'cut':
      return verdict.orSeam === null ? verdict : { ...verdict, orSeam: fromOne(verdict.orSeam) };
    case 'trim':
    case 'far-off':
      return { ...verdict, step: fromOne(verdict.step) };
    default:
      return verdict;
  }
};

const fromOne = (step: number): number => step + 1;

/** What each seam takes from a piece; null where nothing is known. */
const taken = (seam: Length, { value, low, high }: Interval): unknown =>
  Number.isFinite(low) ? { value: seam + value, low: seam + low, high: seam + high } : null;

const explained = (seam: Length, { candidate, share, allowance, cut, other }: Weighed): unknown => ({
  ...explanationFromOne(candidate.explanation),
  share,
  allowance: taken(seam, allowance),
  ...(cut === null ? {} : { tooLarge: cut }),
  ...(other === null ? {} : { tooLargeOtherWay: other }),
});

const explanationFromOne = (explanation: Explanation): Explanation =>
  explanation.kind === 'trim' ? { ...explanation, step: fromOne(explanation.step) } : explanation;

const numbered = (rescue: Rescue): Rescue => {
  switch (rescue.kind) {
    case 'trim':
    case 'retrim':
      return { ...rescue, step: fromOne(rescue.step) };
    case 'make-up':
      return { ...rescue, from: fromOne(rescue.from) };
    case 'resew':
    case 'replace':
      return { ...rescue, steps: rescue.steps.map(fromOne) };
    case 'strips':
    case 'trim-blocks':
    case 'trim-one':
    case 'ease':
    case 'fit-borders':
    case 'widen-border':
      return rescue;
  }
};

export const toSeamTestFile = (found: SeamTestFound, seam: Length, unit: Unit): unknown => ({
  format: 'seamstead-seam-test',
  version: 1,
  unit,
  seam,
  readTo: found.fineness,
  advice: seamTestAdvice(found, seam, unit),
  verdict: found.doubtful ? 'doubtful' : found.verdict,
  allowance: taken(seam, found.allowance),
  test: found.test,
  measured: found.read,
});
