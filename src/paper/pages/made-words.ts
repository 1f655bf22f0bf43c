// A step of a block whose units are made together, in words: what is marked, laid, sewn and cut, and how many come of it.
import { type BlockPlan, type PlannedStep, type QuiltPlan, type StepWay, unitsAmong } from '#craft';
import { length } from '#craft/measure';
import { layingsOf, type Stage, stageFor } from '#craft/ways';
import { toNumber } from '#ground/exact';
import { isTrimmed } from '#paper/drawing';
import { checkSize, lengthOnPaper } from '#paper/lengths';
import { capital, inWords, wayText } from '#paper/words';
import { type Counts, titleOf } from './block-head.ts';
import { partName, pressText } from './naming.ts';
import { countIn, countsText, sameEntry } from './sized.ts';

export interface StepWords {
  readonly heading: string;
  readonly make: string;
  readonly machine: string;
  readonly press: string;
  readonly measures: string;
  /** What its pictures show, for readers who listen. */
  readonly boardAlt: string;
  readonly machineAlt: string;
}

/**
 * What a unit measures after a step, what it is trimmed to, or that it is still to be left as it is.
 *
 * @param called the name of the unit; empty where the words stand beside it
 */
export const measuresText = (plan: QuiltPlan, step: PlannedStep, called: string): string => {
  const { made } = step;
  const size = checkSize(step.unfinished, plan.quilt);
  const named = called === '' ? '' : `${called} `;
  // strips are sewn on until they can be cut apart
  if (!isTrimmed(step)) return made?.unit.strips ? '' : 'Do not trim yet.';
  return made?.way.trimmed ? `Trim ${named}to ${size}.` : capital(`${named}measures ${size}.`);
};

interface MadeStep {
  readonly block: BlockPlan;
  readonly step: PlannedStep;
  readonly made: StepWay;
  readonly counts: Counts;
  /** Of all sizes that the words are for, in the order of the counts. */
  readonly plans: readonly QuiltPlan[];
}

export const madeWords = (plan: QuiltPlan, of: MadeStep): StepWords => {
  const { block, step, made } = of;
  const title = titleOf(plan, block);
  const seam = toNumber(plan.quilt.seam);
  const stage = stageFor({ ...made, seam: length(seam) });
  const [under, over] = namesOf(of);
  const layings = of.plans.map((one) => layingsIn(one, of));
  const gives = stage?.pressed.length ?? 1;
  const heading = `${under} and ${over}, ${wayText(made.way.name)}`;
  const press = pressText(step);
  const measures = measuresText(plan, step, partName(step.makes));
  const given = gives === 1 ? '' : givenText(layings, gives);
  const strips = stage?.slices ? stripText({ plan, stage, layings }) : '';
  const together = togetherText(plan, of);
  const machine = `${howText(of, { under, over, seam: lengthOnPaper(seam, plan.quilt.unit) })}${given}${strips}${together}`;
  return {
    heading: capital(heading),
    make: `make ${countsText(of.counts, step.perBlock)}`,
    machine,
    press,
    measures,
    boardAlt: `${title}, step ${step.number} on the board: ${heading}. ${press} ${measures}`,
    machineAlt: `${title}, step ${step.number} at the machine: ${machine} Lines of sewing are dashed, the drawn line is thin.`,
  };
};

/** How often the step is laid for the whole of one size, whichever blocks share it. */
const layingsIn = (plan: QuiltPlan, { block, step }: MadeStep): number => {
  const made = sameEntry(plan, block)?.steps.find(({ number }) => number === step.number)?.made;
  if (made === undefined) return 0;
  const stage = stageFor({ ...made, seam: length(toNumber(plan.quilt.seam)) });
  const units = unitsAmong(made);
  return stage === null ? units : layingsOf(stage, { way: made.way, units });
};

/** Where pieces are left over by one block, another takes them: "All are sewn at once: 12 units for Comb and 4 for Four corners." */
const togetherText = (plan: QuiltPlan, { made, plans }: MadeStep): string => {
  if (made.among.length < 2) return '';
  const shares = made.among.flatMap((one) => {
    const entry = sameEntry(plan, one);
    if (entry === undefined) return [];
    const perBlock = one.units / entry.count;
    const counts = plans.map((other) => countIn(other, entry) * perBlock);
    return [`${countsText(counts)} for ${titleOf(plan, entry)}`];
  });
  return ` All are sewn at once: ${inWords(shares)}.`;
};

/** What lies below and what on top, as they are called. */
const namesOf = ({ block, step, made }: MadeStep): readonly [string, string] => {
  const nameAt = (part: 0 | 1): string =>
    made.parts[part].length === 1
      ? (block.patches[made.unit.patches[made.parts[part][0] as number] as number]?.piece as string)
      : partName(step.join[part]);
  const isBaseFirst = made.parts[0].includes(0);
  return isBaseFirst ? [nameAt(0), nameAt(1)] : [nameAt(1), nameAt(0)];
};

const howText = (
  { step, made }: MadeStep,
  { under, over, seam }: { readonly under: string; readonly over: string; readonly seam: string },
): string => {
  const both = `sew ${seam} from the line on both sides of it, and cut on the line.`;
  switch (made.way.name) {
    case 'two-at-a-time':
      return `Draw a line from corner to corner on the wrong side of ${over}. Lay it on ${under}, right sides together, edges even; ${both}`;
    case 'eight-at-a-time':
      return `Draw both lines from corner to corner on the wrong side of ${over}. Lay it on ${under}, right sides together; sew ${seam} from each line on both sides of it. Cut upright and level through the middle, then on the lines.`;
    case 'from-half-squares':
      return made.isLast
        ? `Lay ${step.join[0] === step.join[1] ? `two of ${under}` : `${over} on ${under}`} right sides together, seams on each other, unlike cloths facing. Draw a line from corner to corner across the seam; ${both}`
        : `Draw a line from corner to corner on the wrong side of ${over}. Lay it on ${under}, right sides together, edges even; ${both} Each is half of two units.`;
    case 'four-at-a-time':
      return made.isLast
        ? `Lay another ${over} on the corner of ${under} that is left. Draw a line from that corner to the opposite one of ${over}; ${both}`
        : `Lay two ${over} on opposite corners of ${under}, right sides together; they overlap in the middle. Draw a line from corner to corner across both; ${both}`;
    case 'sew-and-flip':
      return `Draw a line from corner to corner on the wrong side of ${over}. Lay it on the corner of ${under} as drawn, right sides together, and sew on the line. Cut both off ${seam} outside the line.`;
    case 'strip-sets':
      return `Lay the strips ${over} on ${under}, right sides together, long edges even, and sew along them.`;
    case 'singly':
      return '';
  }
};

/** "12 such pairs give 24." */
const givenText = (layings: Counts, gives: number): string =>
  layings.every((count) => count === 1)
    ? ` One such pair gives ${gives}.`
    : ` ${countsText(layings)} such pairs give ${countsText(layings, gives)}.`;

/** How many strip sets, and what is cut from each when its last seam is pressed. */
const stripText = (of: { readonly plan: QuiltPlan; readonly stage: Stage; readonly layings: Counts }): string => {
  const { cut, slices } = of.stage;
  const sets = ` Make ${countsText(of.layings)} such ${of.layings.every((count) => count === 1) ? 'set' : 'sets'}.`;
  const [first] = cut;
  if (first === undefined || slices === undefined) return sets;
  const width = lengthOnPaper(first[0].x, of.plan.quilt.unit);
  return `${sets} Press, then cut ${slices.each} slices ${width} wide from each.`;
};
