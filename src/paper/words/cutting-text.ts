// Pieces that a cloth has no room for, in words.
import type { CuttingProblem } from '#craft/cutting';
import type { Unit } from '#craft/measure';
import { lengthText, sizeText } from './length-text.ts';
import { quoted } from './named.ts';

export const cuttingText = (
  problem: CuttingProblem & { readonly unit: Unit },
): { readonly what: string; readonly mend: string } => {
  const { fabric, needs, usable, unit } = problem;
  return {
    what: `A piece is cut ${sizeText(needs, unit)}, but ${quoted(fabric)} is only ${lengthText(usable, unit)} wide between its selvages.`,
    mend: 'Divide the piece, or take a wider cloth and state its usableWidth.',
  };
};
