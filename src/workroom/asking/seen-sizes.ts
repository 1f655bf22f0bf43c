// "It came out the wrong size": the sizes that each step of a block, or of the top, should have, what is wrong with those written down, and what
// they say, in the words of the command.
import type { BlockPlan, PlannedStep, QuiltPlan, TopStep } from '#craft';
import { type Diagnosis, diagnose, diagnoseTop, type ReadingProblem } from '#craft/diagnosis';
import { length } from '#craft/measure';
import { topSizes } from '#craft/top-sizes';
import { toNumber } from '#ground/exact';
import type { Outcome } from '#ground/outcome';
import { adviceOn, blockPartNames, likelyRows, type PartNames, rescueTexts, topPartNames } from '#paper/diagnosis';
import type { Drawing } from '#paper/drawing';
import { checkLength } from '#paper/lengths';
import { stepWords, titleOf, topStepName } from '#paper/pages';
import { lengthText, readingProblemText } from '#paper/words';
import { blockOfEntry, topEntry } from './entries.ts';
import { blockPictureOf, topPictureOf } from './size-pictures.ts';

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
    /** The row, section or border of the top; empty in a block. */
    readonly place: string;
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

export const seeSizes = (plan: QuiltPlan, look: SizesLook): SizesSeen | 'nowhere' => {
  if (look.entry === topEntry) return isTopTold(plan) ? topSeen(plan, look) : 'nowhere';
  const block = blockOfEntry(plan, look.entry);
  return block === null || !isTold(block) ? 'nowhere' : blockSeen(plan, block, look);
};

const blockSeen = (plan: QuiltPlan, block: BlockPlan, look: SizesLook): SizesSeen => {
  const { unit } = plan.quilt;
  return {
    entry: look.entry,
    title: titleOf(plan, block),
    // on a printed sheet the lines keep sizes true
    steps: block.steps.filter(hasSize).map((step) => ({
      number: step.number,
      heading: stepWords(plan, { block, step, counts: [block.count] }).heading,
      place: '',
      across: checkLength(step.unfinished[0], plan.quilt),
      down: checkLength(step.unfinished[1], plan.quilt),
    })),
    ...answered(look, (measured) => diagnose({ block, seam: seamOf(plan), unit, measured }), {
      names: blockPartNames,
      pictureOf: (diagnosis) => blockPictureOf(plan, block, diagnosis),
    }),
  };
};

/** Empty where a size is not measured yet: what ends in setting triangles is trimmed later. */
const topSeen = (plan: QuiltPlan, look: SizesLook): SizesSeen => {
  const { top, blocks, quilt } = plan;
  const seam = seamOf(plan);
  const models = topSizes({ top, blocks, seam });
  const measured = new Set(models.map(({ step, way }) => `${step} ${way}`));
  const should = (step: TopStep, side: 0 | 1): string =>
    measured.has(`${step.number - 1} ${side === 0 ? 'across' : 'down'}`)
      ? checkLength(step.unfinished[side], quilt)
      : '';
  return {
    entry: look.entry,
    title: 'The top',
    steps: top.steps.map((step) => ({
      number: step.number,
      ...topStepName(plan, step),
      across: should(step, 0),
      down: should(step, 1),
    })),
    ...answered(look, (written) => diagnoseTop({ top, blocks, seam, unit: quilt.unit, measured: written }), {
      names: topPartNames(plan),
      pictureOf: (diagnosis) => topPictureOf(plan, models, diagnosis),
    }),
  };
};

const seamOf = ({ quilt }: QuiltPlan) => length(toNumber(quilt.seam));

interface Telling {
  readonly names: PartNames;
  readonly pictureOf: (diagnosis: Diagnosis) => Drawing;
}

const answered = (
  { written }: SizesLook,
  diagnosed: (measured: string) => Outcome<Diagnosis, ReadingProblem>,
  telling: Telling,
): Pick<SizesSeen, 'problems' | 'told'> => {
  const listed = written.filter(({ across, down }) => `${across}${down}`.trim() !== '');
  if (listed.length === 0) return { problems: [], told: null };
  const found = diagnosed(listed.map(entryText).join('; '));
  return {
    problems: found.ok
      ? []
      : found.problems.map((problem) => {
          const { what, mend } = readingProblemText(problem);
          return { step: 'place' in problem ? (listed[problem.place - 1]?.step ?? null) : null, what, mend };
        }),
    told: found.ok ? toldOf(found.value, telling) : null,
  };
};

/** A size that holds what stands between sizes would be read as several. */
const entryText = ({ step, across, down }: WrittenSize): string =>
  `${step}: ${across.replaceAll(';', ' ')}${down.trim() === '' ? '' : ` x ${down.replaceAll(';', ' ')}`}`;

const toldOf = (diagnosis: Diagnosis, { names, pictureOf }: Telling): SizesTold => {
  const { what, mend } = adviceOn(diagnosis, names);
  return {
    what,
    mend,
    readTo: lengthText(diagnosis.fineness, diagnosis.unit),
    saved: rescueTexts(diagnosis, names),
    likely: likelyRows(diagnosis, names),
    picture: pictureOf(diagnosis),
  };
};

const hasSize = ({ onPaper }: PlannedStep): boolean => onPaper === undefined;

/** Whether sizes after some of its steps tell of its seams. */
export const isTold = ({ steps }: Pick<BlockPlan, 'steps'>): boolean => steps.some(hasSize);

/** Whether sizes of the top tell of its seams: of one that is sewn of several things. */
export const isTopTold = ({ top }: Pick<QuiltPlan, 'top'>): boolean => top.steps.length > 0;
