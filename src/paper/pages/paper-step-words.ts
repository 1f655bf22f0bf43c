// A step on a foundation in words: which patch of the sheet is sewn on, how it is laid under the paper, and when the sheet is trimmed.
import type { OnPaper, PlannedStep } from '#craft';
import { isTrimmed } from '#paper/drawing';
import type { StepWords } from './made-words.ts';
import { partName } from './naming.ts';

/**
 * @param of.title    of the block
 * @param of.make     "make 12"
 * @param of.measured the size of the unit once its sheet is trimmed: "4½ × 4½ in"
 */
export const paperStepWords = (of: {
  readonly title: string;
  readonly step: PlannedStep;
  readonly on: OnPaper;
  readonly make: string;
  readonly measured: string;
}): StepWords => {
  const { title, step, on } = of;
  const [under, over] = step.join;
  const heading = `${on.of > 1 ? `Part ${on.section}: ` : ''}${over} goes on as patch ${on.laid}`;
  const press = `Open ${over} over patch ${on.laid} and press.`;
  const machine = on.laid === 2 ? beginText(under, over) : nextText(over, on.laid);
  const measures = isTrimmed(step)
    ? `Cut along the dashed line: ${partName(step.makes)} measures ${of.measured}.`
    : 'Do not trim the outside yet: the printed lines keep it true.';
  return {
    heading,
    make: of.make,
    machine,
    press,
    measures,
    boardAlt: `${title}, step ${step.number} on the board: ${heading}, onto ${partName(under)}. ${press}${isTrimmed(step) ? ` When its sheet is cut out it measures ${of.measured}.` : ''}`,
    machineAlt: `${title}, step ${step.number} at the machine: the printed side of the sheet is up. ${machine} The line to sew is dashed; patch ${on.laid}, which goes on, is hatched.`,
  };
};

const beginText = (under: string, over: string): string =>
  `On the blank side of the sheet lay ${under} over patch 1, right side up, past its lines on every side; lay ${under === over ? `another ${over}` : over} on it, right sides together, an allowance past the line between 1 and 2. ${sewText} Trim both to an allowance past it.`;

const nextText = (over: string, laid: number): string =>
  `Fold the sheet back along the next line and trim what lies past it to an allowance. On the blank side lay ${over} even with that edge, right sides together, so that it covers patch ${laid} when it is opened. ${sewText}`;

const sewText = 'Turn the sheet over and sew along the line, a few short stitches past both ends.';
