// Pieces that a cloth has no room for, or that come to nothing, in words.
import type { CuttingProblem } from '#craft/cutting';
import type { Unit } from '#craft/measure';
import { lengthText, sizeText } from './length-text.ts';
import { counted, quoted } from './named.ts';

export const cuttingText = (
  problem: CuttingProblem & { readonly unit: Unit },
): { readonly what: string; readonly mend: string } => {
  const { unit } = problem;
  if (problem.code === 'cutting/nothing-left')
    return {
      what: `Piece ${problem.label} of ${problem.block === null ? 'the top' : `block ${quoted(problem.block)}`} finishes ${Number(problem.finished.toPrecision(2))} ${unit} wide: under half a mark of the ruler (${lengthText(problem.ruler, unit)}), so nothing of it is left between its seams.`,
      mend: 'Make it wider, or leave it out; a finer ruler helps where it is nearly wide enough.',
    };
  if (problem.code === 'cutting/curve-too-tight')
    return {
      what: `Piece ${problem.label} of block ${quoted(problem.block)} has a hollow side with a radius of ${lengthText(problem.radius, unit)}: the allowance of ${lengthText(problem.seam, unit)} has no room inside it.`,
      mend: 'Make the block larger, or draw the arc with a wider radius.',
    };
  if (problem.code === 'cutting/motif-in-triangle')
    return {
      what: `A piece of ${quoted(problem.fabric)} that is to be cut round a motif is a triangle out of a square of ${lengthText(problem.square, unit)}: where its middle falls cannot be chosen.`,
      mend: 'Take its tone out of "motifs", or draw the block so that the motif lies in a square, a rectangle or another shape.',
    };
  if (problem.code === 'cutting/motif-out-of-reach')
    return {
      what: `A piece of ${quoted(problem.fabric)} is cut ${lengthText(problem.needs, unit)} across, and no motif within ${lengthText(problem.usable, unit)} of width has so much cloth round it.`,
      mend: 'Check "motif" and "across" of its repeat, or make the piece smaller.',
    };
  if (problem.code === 'cutting/stock-short') return shortText(problem, unit);
  const { fabric, needs } = problem;
  if (problem.code === 'cutting/larger-than-sheet')
    return {
      what: `A piece is cut ${sizeText(needs, unit)}, but the largest of what ${quoted(fabric)} comes in has only ${sizeText(problem.sheet, unit)} of usable cloth.`,
      mend: 'Divide the piece, name a larger sheet or a longer length, or let the cloth be bought as yardage.',
    };
  return {
    what: `A piece is cut ${sizeText(needs, unit)}, but ${quoted(fabric)} is only ${lengthText(problem.usable, unit)} wide between its selvages.`,
    mend: 'Divide the piece, or take a wider cloth and state its usableWidth.',
  };
};

const shortText = (
  { fabric, left }: Extract<CuttingProblem, { code: 'cutting/stock-short' }>,
  unit: Unit,
): { readonly what: string; readonly mend: string } => {
  const pieces = left.reduce((sum, { count }) => sum + count, 0);
  const listed = left.slice(0, 3).map(({ cut, count }) => `${count} of ${sizeText(cut, unit)}`);
  const more = left.length - listed.length;
  return {
    what: `What there is of ${quoted(fabric)} does not suffice: no room was found for ${counted(pieces, 'piece')} (${listed.join(', ')}${more > 0 ? ` and ${counted(more, 'more size')}` : ''}).`,
    mend: 'Raise a count, add another kind of sheet or length, or leave a count out for what can be bought as needed.',
  };
};
