// "It came out the wrong size": the sizes that each step of a block, or of the top, should have, what is wrong with those written down, and what
// they say, in the words of the command.
import type { BlockPlan, PlannedStep, QuiltPlan, TopStep } from '#craft';
import type { SizeModel } from '#craft/accuracy';
import { type Diagnosis, diagnose, diagnoseTop, type ReadingProblem } from '#craft/diagnosis';
import { length } from '#craft/measure';
import { placeOfThing, type TopThing } from '#craft/setting';
import { topAsBlock, topSizes } from '#craft/top-sizes';
import { toNumber } from '#ground/exact';
import type { Outcome } from '#ground/outcome';
import { clothSignsFor } from '#paper/cloth';
import { adviceOn, blockPartNames, likelyRows, type PartNames, rescueTexts, topPartNames } from '#paper/diagnosis';
import { type Drawing, drawWrongSize, drawWrongTop } from '#paper/drawing';
import { checkLength } from '#paper/lengths';
import { stepWords, titleOf, topStepName } from '#paper/pages';
import { inWords, lengthText, readingProblemText } from '#paper/words';
import { blockOfEntry, topEntry } from './entries.ts';

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
      across: checkLength(step.unfinished[0], plan.quilt),
      down: checkLength(step.unfinished[1], plan.quilt),
    })),
    ...answered(look, (measured) => diagnose({ block, seam: seamOf(plan), unit, measured }), {
      names: blockPartNames,
      pictureOf: (diagnosis) => pictureOf(plan, block, diagnosis),
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
    steps: top.steps.map((step) => {
      const { heading, place } = topStepName(plan, step);
      return {
        number: step.number,
        heading: place === '' ? heading : `${place}: ${heading}`,
        across: should(step, 0),
        down: should(step, 1),
      };
    }),
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

/** The last unit that was measured. */
const topPictureOf = (plan: QuiltPlan, models: readonly SizeModel[], diagnosis: Diagnosis): Drawing => {
  const { sizes, verdict } = diagnosis;
  const last = Math.max(...sizes.map(({ step }) => step));
  const step = plan.top.steps[last] as TopStep;
  const read = sizes.filter((size) => size.step === last);
  const at = verdict.kind === 'cut' ? (verdict.at ?? null) : null;
  const blamed = piecesBlamed(verdict).map((piece) => ({ piece, things: thingsCalled(plan, step, { piece, at }) }));
  const ringed = blamed.filter(({ things }) => things.length > 0);
  const names = inWords(ringed.map(({ piece }) => topPartNames(plan)(piece, at).short));
  const [across, down] = [readWords(diagnosis, last, 'across'), readWords(diagnosis, last, 'down')];
  return drawWrongTop({
    plan,
    signs: clothSignsFor(plan),
    seam: diagnosis.seam,
    step,
    ringed: ringed.flatMap(({ things }) => things),
    lines: models
      .filter((model) => read.some(({ way }) => model.step === last && model.way === way))
      .map(({ line }) => line),
    // rows of blocks at the sides are measured as they are sewn, level
    words: step.angle % 180 === 90 ? [down, across] : [across, down],
    fitPt: fit,
    alt: `The unit after step ${step.number}, dashed where it was measured${ringed.length === 0 ? '' : `, ${names} ringed`}`,
  });
};

/** What a step joins, of that label, or of it those at some places. */
const thingsCalled = (
  { top }: QuiltPlan,
  { things }: TopStep,
  { piece, at }: { readonly piece: string; readonly at: readonly number[] | null },
): readonly TopThing[] => {
  const { patches } = topAsBlock(top);
  return things.flat().filter((thing) => {
    const place = placeOfThing(top.set, thing);
    return patches[place]?.piece === piece && (at?.includes(place) ?? true);
  });
};

/** "17 11/16 in, should be 18½ in"; empty where it was not measured. */
const readWords = ({ sizes, unit }: Diagnosis, step: number, way: 'across' | 'down'): string => {
  const size = sizes.findLast((one) => one.step === step && one.way === way);
  if (size === undefined) return '';
  const found = lengthText(size.size, unit);
  return Math.abs(size.off) < 1e-9 ? `${found}, right` : `${found}, should be ${lengthText(size.drawn, unit)}`;
};

/** Narrower than its place on a screen: its letters are read there. */
const fit = [250, 250] as const;

const pictureOf = (plan: QuiltPlan, block: BlockPlan, diagnosis: Diagnosis): Drawing => {
  const { sizes, rescues, verdict } = diagnosis;
  const last = Math.max(...sizes.map(({ step }) => step));
  const step = block.steps[last] as PlannedStep;
  const trim = rescues.find((rescue) => rescue.kind === 'trim');
  const strips = rescues.find((rescue) => rescue.kind === 'strips');
  const unpicked = rescues.flatMap((one) => (one.kind === 'resew' || one.kind === 'replace' ? one.steps : []));
  const again = [...new Set(unpicked)].map((one) => one + 1);
  const pieces = piecesBlamed(verdict);
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
    words: [readWords(diagnosis, last, 'across'), readWords(diagnosis, last, 'down')],
    fitPt: fit,
    alt: altOf(step, { pieces, again, isTrimmed: trim !== undefined }),
  });
};

const piecesBlamed = (verdict: Diagnosis['verdict']): readonly string[] => {
  switch (verdict.kind) {
    case 'cut':
    case 'cut-both':
      return [verdict.piece];
    case 'swap':
      return verdict.pieces;
    default:
      return [];
  }
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

/** Whether sizes of the top tell of its seams: of one that is sewn of several things. */
export const isTopTold = ({ top }: Pick<QuiltPlan, 'top'>): boolean => top.steps.length > 0;
