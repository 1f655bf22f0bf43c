// A step of a block in words: what goes where, how it is laid at the machine and pressed, and what it measures then.
import type { BlockPlan, PlannedStep, QuiltPlan } from '#craft';
import { checkSize } from '#paper/lengths';
import { type Counts, titleOf } from './block-head.ts';
import { madeWords, measuresText, type StepWords } from './made-words.ts';
import { kindText, machineText, partName, pressText, stepHeading } from './naming.ts';
import { paperStepWords } from './paper-step-words.ts';
import { partnerOf } from './partner.ts';
import { countsText } from './sized.ts';

export type { StepWords };

export const stepWords = (
  plan: QuiltPlan,
  of: {
    readonly block: BlockPlan;
    readonly step: PlannedStep;
    readonly counts: Counts;
    /** Of all sizes that the counts are of; missing where there is one. */
    readonly plans?: readonly QuiltPlan[];
  },
): StepWords => {
  const { block, step, counts, plans = [plan] } = of;
  const title = titleOf(plan, block);
  const partner = partnerOf(block, step);
  if (step.made && step.made.way.name !== 'singly')
    return madeWords(plan, { block, step, made: step.made, counts, plans });
  if (step.onPaper)
    return paperStepWords({
      title,
      step,
      on: step.onPaper,
      make: `make ${countsText(counts, step.perBlock)}`,
      measured: checkSize(step.unfinished, plan.quilt),
    });
  const heading = stepHeading(step, partner);
  const press = `${pressText(step)}${otherWayText(block, step)}`;
  const machine = `${machineText(step, newestOf(block.steps, step))}${kindText(step, partner)}`;
  const measures = checkSize(step.unfinished, plan.quilt);
  // pieces cut with room: until the unit is whole its size is none
  const isRough = step.made?.isLast === false;
  return {
    heading,
    make: `make ${countsText(counts, step.perBlock)}`,
    machine: `${machine}${manyText(step, counts)}`,
    press,
    measures: measuresText(plan, step, partName(step.makes)),
    boardAlt: `${title}, step ${step.number} on the board: ${heading}${step.kind === 'partial-close' ? ` on ${partName(step.join[0])}` : ''}. ${press}${isRough ? '' : ` After pressing it measures ${measures}.`}`,
    machineAlt: `${title}, step ${step.number} at the machine: ${machine} The seam line is dashed along the right edge.`,
  };
};

/** Where some blocks of the entry are pressed otherwise. */
const otherWayText = ({ pressing }: BlockPlan, step: PlannedStep): string => {
  if (step.otherWay === null) return '';
  const [first = '', ...rest] = pressText({ ...step, pressTo: step.otherWay })
    .replace(/^Press /, '')
    .replace(/\.$/, '');
  const way = `${first.toLowerCase()}${rest.join('')}`;
  return ` For ${pressing.otherWay === 1 ? 'the one block' : `the ${pressing.otherWay} blocks`} pressed the other way: ${way}.`;
};

/** Straight seams are fed in one after another; of others each is begun and ended by itself. */
export const isChained = ({ kind }: Pick<PlannedStep, 'kind'>): boolean => kind === 'straight';

/** How like units are sewn. */
const manyText = (step: PlannedStep, counts: Counts): string => {
  const { perBlock } = step;
  const most = Math.max(...counts) * perBlock;
  const share = perBlock === 1 ? '' : `${perBlock} a block`;
  if (most === 1) return '';
  if (!isChained(step)) return share === '' ? '' : ` There are ${share}.`;
  const all = counts.length > 1 ? 'all of them' : most === 2 ? 'both' : `all ${most}`;
  return ` Chain ${all}${share === '' ? '' : `, ${share}`}.`;
};

type Joined = Pick<PlannedStep, 'join' | 'makes'>;

/** What the first part was given last, as people can tell it: "C", or "the C sewn last" where it has others. */
export const newestOf = (steps: readonly Joined[], { join }: Joined): string | null => {
  const made = steps.find(({ makes }) => makes === join[0]);
  if (made === undefined || made.join[0] === made.join[1]) return null;
  const name = partName(made.join[1]);
  return isIn(steps, made.join[1], made.join[0]) ? `the ${name} sewn last` : name;
};

/** Whether a part went into a unit on the way, or is that unit. */
const isIn = (steps: readonly Joined[], part: string, unit: string): boolean => {
  if (part === unit) return true;
  const made = steps.find(({ makes }) => makes === unit);
  return made?.join.some((one) => isIn(steps, part, one)) ?? false;
};
