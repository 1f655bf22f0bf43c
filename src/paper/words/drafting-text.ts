// Drawings that do not tile, in words.
import type { Problem } from '#craft';
import type { DraftingProblem } from '#craft/drafting';
import type { Unit } from '#craft/measure';
import { never } from '#ground/outcome';
import { lengthText, numberText } from './length-text.ts';
import { quoted } from './named.ts';

type Drafting = DraftingProblem & { readonly unit: Unit };

export const isDraftingProblem = (problem: Problem): problem is Drafting => problem.code.startsWith('drafting/');

export const draftingText = (problem: Drafting): { readonly what: string; readonly mend: string } => {
  const { unit } = problem;
  const block = quoted(problem.block);
  switch (problem.code) {
    case 'drafting/overlap': {
      const [a, b] = problem.patches;
      return {
        what: `In block ${block}, patches ${a} and ${b} of the list lie over each other by ${areaText(problem.area, unit)}, about ${spotText(problem)}.`,
        mend: 'Move the corners of one of them so that the two share an edge (patches are counted from 0).',
      };
    }
    case 'drafting/units-overlap': {
      const [a, b] = problem.units;
      return {
        what: `In block ${block}, units ${a} and ${b} of the recipe lie over each other by ${areaText(problem.area, unit)}, about ${spotText(problem)}.`,
        mend: 'Change where one of them is, or its span (units are counted from 0).',
      };
    }
    case 'drafting/gap':
      return {
        what: `Block ${block} has a hole of ${areaText(problem.area, unit)}, about ${spotText(problem)}.`,
        mend: 'Add a patch there, or move the corners round it until the patches fill the whole grid.',
      };
    case 'drafting/seam-ends-inside':
      return {
        what: `In block ${block}, a seam ends inside a patch, ${spotText(problem)}, without reaching another seam.`,
        mend: 'Lead it on to a seam or to the edge of the block, or take it out.',
      };
    case 'drafting/patch-round-patch':
      return {
        what: `In block ${block}, the seams at ${spotText(problem)} close round a patch and leave a hole in the patch outside.`,
        mend: 'Join them by seams to the others or to the edge of the block, at two places at least.',
      };
    case 'drafting/too-many-patches':
      return {
        what: `The seams of block ${block} cross so often that they make more than ${problem.most} patches.`,
        mend: 'Draw fewer seams, or divide the block.',
      };
    case 'drafting/seams-too-near':
      return {
        what: `Some seams of block ${block} lie so near to each other that they make no sound patches.`,
        mend: 'Draw seams that should meet to the same point, and keep the others further apart.',
      };
    case 'drafting/tone-on-seam':
      return {
        what: `In block ${block}, this place of a tone lies on a seam, ${spotText(problem)}, so it is not clear which patch is meant.`,
        mend: 'Move it into the middle of a patch.',
      };
    case 'drafting/two-tones': {
      const [a, b] = problem.tones;
      return {
        what: `In block ${block}, places ${a} and ${b} of the tones lie in one patch, ${spotText(problem)}.`,
        mend: 'Keep one of them, or draw the seam between them (places are counted from 0).',
      };
    }
    case 'drafting/patch-without-tone':
      return {
        what: `In block ${block}, no tone is named for the patch of ${areaText(problem.area, unit)} at ${spotText(problem)}.`,
        mend: 'Add a place in that patch to "tonesAt".',
      };
    case 'drafting/no-foundation':
      return {
        what: noFoundationText(problem),
        mend: 'Take "piecing" out of the block, or draw it so that each of its seams runs from edge to edge of what it joins.',
      };
    default:
      return never(problem);
  }
};

const noFoundationText = (of: {
  readonly block: string;
  readonly patches: number;
  readonly most: number;
  readonly curved: boolean;
}): string => {
  if (of.patches === 0) return `Block ${of.block} is made elsewhere: it has no pieces to lay on a foundation.`;
  if (of.curved)
    return `Block ${of.block} cannot be pieced on foundations: it has curved seams, and a patch is sewn to a foundation along a straight line.`;
  return of.patches > of.most
    ? `Block ${of.block} has ${of.patches} patches, and no more than ${of.most} are pieced on foundations.`
    : `Block ${of.block} cannot be pieced on foundations: not every one of its seams runs from edge to edge.`;
};

const spotText = (problem: { readonly at: readonly [number, number]; readonly unit: Unit }): string =>
  `${lengthText(problem.at[0], problem.unit)} from the left and ${lengthText(problem.at[1], problem.unit)} from the top`;

/** Slivers keep a figure: 0.0004 is not 0. */
const areaText = (area: number, unit: Unit): string =>
  `${area >= 0.001 ? numberText(area) : Number(area.toPrecision(2))} square ${unit === 'in' ? 'inches' : 'centimetres'}`;
