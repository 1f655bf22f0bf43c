// A seam of the top in words, as the pages of the top say it row by row: what goes on where, how it is laid at the machine and
// pressed, what it measures then, and what to mind.
import type { QuiltPlan, TopStep } from '#craft';
import { type RoundPart, type TopThing, thingsOf } from '#craft/setting';
import type { ClothSigns } from '#paper/cloth';
import { isSlanted, mitreCorner, rowsWith, sewnAt, topAway } from '#paper/drawing';
import { checkSize } from '#paper/lengths';
import { capital, inWords } from '#paper/words';
import { machineText, partName, pressText, stepHeading } from './naming.ts';
import type { StepWords } from './step-words.ts';
import { generalAdvice, kindAdvice, mitreText, partLine } from './top-borders.ts';
import { nounOf, thingText } from './top-names.ts';
import {
  cornerName,
  cornerPress,
  foldCornerText,
  pinText,
  pressedRole,
  pressWay,
  rowName,
  rowSize,
  rowsText,
  rowWayText,
  trimTexts,
  wayText,
} from './top-rows.ts';
import { sectionSeamsText, wayOf } from './top-sections.ts';

export interface TopStepWords extends StepWords {
  /** The row, section or border that it is in. */
  readonly place: string;
  /** What the pages say of all seams of its sort. */
  readonly notes: readonly string[];
}

interface TopOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
}

/** What goes where, and the row, section or border that it is in: for lists. */
export const topStepName = (plan: QuiltPlan, step: TopStep): Pick<TopStepWords, 'heading' | 'place'> => ({
  heading: headingOf(plan, step, [partCalled(plan, step, 0), partCalled(plan, step, 1)]),
  place: placeOf(plan, step),
});

export const topStepWords = (of: TopOf, step: TopStep): TopStepWords => {
  const { plan } = of;
  const called = [partCalled(plan, step, 0), partCalled(plan, step, 1)] as const;
  const { heading, place } = topStepName(plan, step);
  const press = pressOf(plan, step);
  const size =
    step.stage === 'row' || step.stage === 'rows' ? rowSize(plan, step) : checkSize(step.unfinished, plan.quilt);
  const machine = machineOf(plan, step, called);
  return {
    place,
    heading,
    make: `make ${step.total}`,
    machine: `${machine}${step.total === 1 ? '' : step.total === 2 ? ' Chain both.' : ` Chain all ${step.total}.`}`,
    press,
    measures: `${step.stage === 'mitre' || isSewnOn(step) ? 'The quilt' : capital(partName(step.makes))} measures ${size}.`,
    notes: notesOf(of, step),
    boardAlt: `The top, step ${step.number} as it lies: ${heading}. ${press} After pressing it measures ${size}.`,
    machineAlt: `The top, step ${step.number} at the machine: ${machine} The seam line is dashed along the right edge.`,
  };
};

/** Rows of blocks in a border are sewn in a frame of their own; words and pictures say how they lie in the top. */
const asItLies = (step: TopStep): TopStep => {
  const { x, y } = topAway(step);
  const side = Math.abs(x) > Math.abs(y) ? (x > 0 ? 'right' : 'left') : y > 0 ? 'bottom' : 'top';
  return { ...step, side };
};

/** A border, or its row of blocks, that goes onto the quilt. */
const isSewnOn = ({ stage, measure }: TopStep): boolean => stage === 'border' && measure !== null;

type Called = readonly [string, string];

const headingOf = (plan: QuiltPlan, step: TopStep, [first, second]: Called): string => {
  switch (step.stage) {
    case 'rows':
      return `Add ${second}`;
    case 'corner':
      return `Add the corner triangle at the ${cornerName(plan, step)}`;
    case 'mitre':
      return `Close the corner at the ${mitreCorner(plan, step).name}`;
    case 'border':
      return isSewnOn(step) ? borderHeading(plan, step) : stepHeading({ ...asItLies(step), join: [first, second] });
    case 'section':
      return stepHeading({ ...step, join: [first, second] });
    case 'row':
      return isSlanted(plan)
        ? `${capital(first === second ? `another ${second}` : second)} goes on at the upper end of ${first}`
        : stepHeading({ ...step, join: [first, second] });
  }
};

const pressOf = (plan: QuiltPlan, step: TopStep): string => {
  const { stage, pressTo } = step;
  if (pressTo === 'open') return 'Press the seam open.';
  switch (stage) {
    case 'row': {
      const sides = step.things.map((things, part) =>
        nounOf(plan, (part === 0 ? things.at(-1) : things[0]) as TopThing),
      );
      const toward = sides[0] === sides[1] ? '' : `, toward the ${pressedRole(plan, step)}`;
      return `Press ${rowWayText(plan, pressWay(step))}${toward}.`;
    }
    case 'rows':
      return `Press the seam ${wayText(plan, step)}.`;
    case 'section': {
      const way = wayOf(step.side === 'right' || step.side === 'left' ? 'across' : 'down', pressTo);
      return `Press ${way === 'left' || way === 'right' ? `to the ${way}` : way}.`;
    }
    case 'corner':
      return `Press ${cornerPress(step)}.`;
    case 'border':
      if (step.measure === null) {
        return pressText({ ...asItLies(step), join: [partCalled(plan, step, 0), partCalled(plan, step, 1)] });
      }
      return pressTo === 1 ? 'Press toward the border.' : 'Press toward the quilt or the spacer, away from the blocks.';
    case 'mitre':
      return 'Press the seam open.';
  }
};

const machineOf = (plan: QuiltPlan, step: TopStep, called: Called): string =>
  step.stage === 'mitre' ? capital(mitreText) : machineText(step, newestOf(plan, step), called);

/** What the first part was given last. */
const newestOf = (plan: QuiltPlan, { join }: TopStep): string | null => {
  const made = plan.top.steps.find(({ makes }) => makes === join[0]);
  if (made === undefined) return null;
  const [first, second] = [partCalled(plan, made, 0), partCalled(plan, made, 1)];
  return first === second ? null : second;
};

/** What a part of a step is called: "Log cabin turned 90°", "unit 4", "row 2", "strip 3", "the quilt". */
const partCalled = (plan: QuiltPlan, step: TopStep, part: 0 | 1): string => {
  const { stage, join } = step;
  if (stage === 'rows') return part === 1 ? rowName(plan, step) : rowsBefore(step);
  if (stage === 'corner') return part === 1 ? 'the corner triangle' : 'the middle';
  if (stage === 'mitre') return part === 1 ? 'the strip' : 'the quilt';
  if (isSewnOn(step)) return part === 1 ? `strip ${borderOrder(plan, step)}` : 'the quilt';
  const name = join[part];
  if (!name.startsWith('#')) return turnedName(plan, step.things[part][0] as TopThing);
  const made = plan.top.steps.find(({ makes }) => makes === name);
  return made?.stage === 'section' && made.of !== step.of ? `section ${made.of}` : partName(name);
};

const rowsBefore = ({ of }: TopStep): string => (of === 1 ? 'row 1' : 'the top so far');

/** A block that is turned in the top says so: on point, from how it stands there. */
const turnedName = (plan: QuiltPlan, thing: TopThing): string => {
  const name = thingText(plan, thing);
  if (!('block' in thing)) return name;
  const placed = sewnAt(plan, thing.block);
  const turn = (placed.turn - (placed.turn % 90) + 360) % 360;
  return turn === 0 ? name : `${name} turned ${turn}°`;
};

const placeOf = (plan: QuiltPlan, step: TopStep): string => {
  switch (step.stage) {
    case 'row':
      return rowsOf(plan, step);
    case 'rows':
      return 'Joining the rows';
    case 'section':
      return step.of === 0 ? 'Middle' : `Section ${step.of}`;
    case 'corner':
      return 'Corners';
    case 'border':
    case 'mitre':
      return 'Borders';
  }
};

/** Rows that begin or are made alike share steps: "Row 1", "Rows 1, 3 and 5". */
const rowsOf = (plan: QuiltPlan, step: TopStep): string => {
  const rows = rowsWith(plan, step).map((row) => String(row + 1));
  return rows.length > 1 ? `Rows ${inWords(rows)}` : `Row ${rows[0] ?? step.of + 1}`;
};

const notesOf = (of: TopOf, step: TopStep): readonly string[] => {
  const { plan } = of;
  switch (step.stage) {
    case 'row':
      return [rowsText(plan)];
    case 'rows':
      return [pinText];
    case 'section':
      return [sectionSeamsText];
    case 'corner': {
      const isLast = plan.top.steps.findLast(({ stage }) => stage === 'corner') === step;
      return [foldCornerText, ...(isLast ? trimTexts(plan) : [])];
    }
    case 'border':
    case 'mitre': {
      const { borders } = plan.top.set;
      const line = isSewnOn(step) ? borderLine(of, step) : null;
      return [
        ...(line === null ? [] : [line]),
        ...(step.stage === 'mitre' ? [] : generalAdvice(plan, borders)),
        ...kindAdvice(plan, step.of),
      ];
    }
  }
};

interface SewnPart {
  readonly part: RoundPart;
  /** As the picture of the borders numbers it. */
  readonly order: number;
}

/** The strip or the row of blocks that a step sews to the quilt. */
const sewnPart = ({ top }: QuiltPlan, step: TopStep): SewnPart => {
  const all = top.set.borders.flatMap(({ parts }, ring) => parts.map((part) => ({ part, ring })));
  const order = all.findIndex(
    ({ part, ring }) => ring === step.of && JSON.stringify(thingsOf(part.assembly)) === JSON.stringify(step.things[1]),
  );
  const found = all[order];
  if (found === undefined) throw new Error(`step ${step.number} of the top sews on no border`);
  return { part: found.part, order: order + 1 };
};

const borderOrder = (plan: QuiltPlan, step: TopStep): number => sewnPart(plan, step).order;

const borderHeading = (plan: QuiltPlan, step: TopStep): string => {
  const { part, order } = sewnPart(plan, step);
  return `Sew strip ${order} to the ${part.side} of the quilt`;
};

/** As its line in the table of the borders: "3: Top, cloth C. Piece D, 4 × 64½ in (C1)." */
const borderLine = (of: TopOf, step: TopStep): string => {
  const { part, order } = sewnPart(of.plan, step);
  const [, where, piece, cut] = partLine(of, part, order);
  return `Strip ${order}: ${where}. ${piece === '' ? '' : `Piece ${piece}. `}Planned cut: ${cut}.`;
};
