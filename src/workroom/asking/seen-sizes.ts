// "It came out the wrong size": the sizes that each step of a block should have, what is wrong with those written down, and what
// they say, in the words of the command.
import type { BlockPlan, PlannedStep, QuiltPlan } from '#craft';
import { type Diagnosis, diagnose } from '#craft/diagnosis';
import { length } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { clothSignsFor } from '#paper/cloth';
import { adviceOn, likelyRows, rescueTexts } from '#paper/diagnosis';
import { type Drawing, drawWrongSize } from '#paper/drawing';
import { checkLength } from '#paper/lengths';
import { stepWords, titleOf } from '#paper/pages';
import { lengthText, readingProblemText } from '#paper/words';
import { blockOfEntry } from './entries.ts';

export interface SizesLook {
  readonly entry: string;
  readonly written: readonly WrittenSize[];
}

/** As the maker writes them down; empty where nothing is measured. */
export interface WrittenSize {
  readonly step: number;
  readonly across: string;
  readonly down: string;
}

export interface SizesSeen {
  readonly entry: string;
  readonly title: string;
  readonly steps: readonly {
    readonly number: number;
    readonly heading: string;
    readonly across: string;
    readonly down: string;
  }[];
  readonly problems: readonly { readonly step: number | null; readonly what: string; readonly mend: string }[];
  readonly told: SizesTold | null;
}

export interface SizesTold {
  readonly what: string;
  readonly mend: string;
  readonly readTo: string;
  readonly saved: readonly string[];
  readonly likely: readonly (readonly string[])[];
  readonly picture: Drawing;
}

export const seeSizes = (plan: QuiltPlan, { entry, written }: SizesLook): SizesSeen | 'nowhere' => {
  const block = blockOfEntry(plan, entry);
  if (block === null || !isTold(block)) return 'nowhere';
  const { unit } = plan.quilt;
  const listed = written.filter(({ across, down }) => `${across}${down}`.trim() !== '');
  const found =
    listed.length === 0
      ? null
      : diagnose({ block, seam: length(toNumber(plan.quilt.seam)), unit, measured: listed.map(entryText).join('; ') });
  return {
    entry,
    title: titleOf(plan, block),
    // on a printed sheet the lines keep sizes true
    steps: block.steps.filter(hasSize).map((step) => ({
      number: step.number,
      heading: stepWords(plan, { block, step, counts: [block.count] }).heading,
      across: checkLength(step.unfinished[0], plan.quilt),
      down: checkLength(step.unfinished[1], plan.quilt),
    })),
    problems:
      found === null || found.ok
        ? []
        : found.problems.map((problem) => {
            const { what, mend } = readingProblemText(problem);
            return { step: 'place' in problem ? (listed[problem.place - 1]?.step ?? null) : null, what, mend };
          }),
    told: found?.ok ? toldOf(plan, block, found.value) : null,
  };
};

/** A size that holds what stands between sizes would be read as several. */
const entryText = ({ step, across, down }: WrittenSize): string =>
  `${step}: ${across.replaceAll(';', ' ')}${down.trim() === '' ? '' : ` x ${down.replaceAll(';', ' ')}`}`;

const toldOf = (plan: QuiltPlan, block: BlockPlan, diagnosis: Diagnosis): SizesTold => {
  const { what, mend } = adviceOn(diagnosis);
  return {
    what,
    mend,
    readTo: lengthText(diagnosis.fineness, diagnosis.unit),
    saved: rescueTexts(diagnosis),
    likely: likelyRows(diagnosis),
    picture: pictureOf(plan, block, diagnosis),
  };
};

/** Narrower than its place on a screen: its letters are read there. */
const fit = [250, 250] as const;

const pictureOf = (plan: QuiltPlan, block: BlockPlan, diagnosis: Diagnosis): Drawing => {
  const { sizes, rescues, verdict, unit } = diagnosis;
  const last = Math.max(...sizes.map(({ step }) => step));
  const step = block.steps[last] as PlannedStep;
  const read = (way: 'across' | 'down') => sizes.findLast((size) => size.step === last && size.way === way);
  const wordsFor = (way: 'across' | 'down'): string => {
    const size = read(way);
    if (size === undefined) return '';
    const found = lengthText(size.size, unit);
    return Math.abs(size.off) < 1e-9 ? `${found}, right` : `${found}, should be ${lengthText(size.drawn, unit)}`;
  };
  const trim = rescues.find((rescue) => rescue.kind === 'trim');
  const strips = rescues.find((rescue) => rescue.kind === 'strips');
  const unpicked = rescues.flatMap((one) => (one.kind === 'resew' || one.kind === 'replace' ? one.steps : []));
  const again = [...new Set(unpicked)].map((one) => one + 1);
  const pieces = verdict.kind === 'cut' ? [verdict.piece] : verdict.kind === 'swap' ? verdict.pieces : [];
  const isWhole = last === block.steps.length - 1;
  return drawWrongSize({
    block,
    signs: clothSignsFor(plan),
    seam: diagnosis.seam,
    step,
    pieces,
    again,
    trim: trim?.by ?? null,
    trimAt: trim?.at ?? null,
    strips: isWhole && trim === undefined ? (strips?.finished ?? null) : null,
    words: [wordsFor('across'), wordsFor('down')],
    fitPt: fit,
    alt: altOf(step, { pieces, again, isTrimmed: trim !== undefined }),
  });
};

const altOf = (
  { number }: PlannedStep,
  of: { readonly pieces: readonly string[]; readonly again: readonly number[]; readonly isTrimmed: boolean },
): string =>
  [
    `The unit after step ${number}`,
    ...(of.pieces.length === 0 ? [] : [`${of.pieces.join(' and ')} ringed`]),
    ...(of.again.length === 0 ? [] : [`the seams to sew again dashed: step ${of.again.join(', ')}`]),
    ...(of.isTrimmed ? ['a dashed line to trim to'] : []),
  ].join(', ');

const hasSize = ({ onPaper }: PlannedStep): boolean => onPaper === undefined;

/** Whether sizes after some of its steps tell of its seams. */
export const isTold = ({ steps }: Pick<BlockPlan, 'steps'>): boolean => steps.some(hasSize);
