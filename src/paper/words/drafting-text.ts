// Drawings that do not tile, in words.
import type { DraftingProblem } from '#craft/drafting';
import type { Unit } from '#craft/measure';
import { never } from '#ground/outcome';
import { lengthText, numberText } from './length-text.ts';
import { quoted } from './named.ts';

export const draftingText = (
  problem: DraftingProblem & { readonly unit: Unit },
): { readonly what: string; readonly mend: string } => {
  const { unit, block } = problem;
  const area = areaText(problem.area, unit);
  const spot = `${lengthText(problem.at[0], unit)} from the left and ${lengthText(problem.at[1], unit)} from the top`;
  switch (problem.code) {
    case 'drafting/overlap': {
      const [a, b] = problem.patches;
      return {
        what: `In block ${quoted(block)}, patches ${a} and ${b} of the list lie over each other by ${area}, about ${spot}.`,
        mend: 'Move the corners of one of them so that the two share an edge (patches are counted from 0).',
      };
    }
    case 'drafting/gap':
      return {
        what: `Block ${quoted(block)} has a hole of ${area}, about ${spot}.`,
        mend: 'Add a patch there, or move the corners round it until the patches fill the whole grid.',
      };
    default:
      return never(problem);
  }
};

/** Slivers keep a figure: 0.0004 is not 0. */
const areaText = (area: number, unit: Unit): string =>
  `${area >= 0.001 ? numberText(area) : Number(area.toPrecision(2))} square ${unit === 'in' ? 'inches' : 'centimetres'}`;
