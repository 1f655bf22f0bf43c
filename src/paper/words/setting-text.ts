// Tops whose parts do not fit together, in words.
import type { Unit } from '#craft/measure';
import type { SettingProblem } from '#craft/setting';
import { never } from '#ground/outcome';
import { lengthText, sizeText } from './length-text.ts';
import { quoted } from './named.ts';

export const settingText = (
  problem: SettingProblem & { readonly unit: Unit },
): { readonly what: string; readonly mend: string } => {
  const { unit } = problem;
  switch (problem.code) {
    case 'setting/not-square':
      return {
        what: `Block ${quoted(problem.block)} is ${sizeText(problem.found, unit)}, and only square blocks can be set this way.`,
        mend: 'Make the block square, or set the top straight by rows.',
      };
    case 'setting/sizes-differ':
      return {
        what: `Block ${quoted(problem.block)} is ${lengthText(problem.found, unit)} square, block ${quoted(problem.other)} ${lengthText(problem.expected, unit)}.`,
        mend: 'On point all blocks have one size: change a size, or put a frame round the smaller one.',
      };
    case 'setting/no-block':
      return {
        what: 'The top holds only plain cells, so nothing says how large they are.',
        mend: 'Put at least one block into it.',
      };
    case 'setting/sash-widths':
      return {
        what: `The sashing is ${lengthText(problem.across, unit)} wide across and ${lengthText(problem.down, unit)} down, but on point every sash lies slanted.`,
        mend: 'Give the sashing one width.',
      };
    case 'setting/no-dark-corner':
      return {
        what: `No corner of block ${quoted(problem.block)} is clearly the darkest in colouring ${quoted(problem.colouring)}.`,
        mend: 'Name it by "darkCorner", such as "lower-right", or choose cloths whose lights and darks lie further apart.',
      };
    case 'setting/border-does-not-fit': {
      const [across, down] = problem.sides;
      const [sides, ends] = problem.spacer;
      return {
        what: `Blocks ${quoted(problem.block)} of ${lengthText(problem.along, unit)} do not divide ${sizeText([across, down], unit)} evenly.`,
        mend: `Name a "spacer" fabric: strips of ${lengthText(sides, unit)} at the left and right and ${lengthText(ends, unit)} at the top and bottom make them fit. Or change the size of the blocks.`,
      };
    }
    case 'setting/border-corner-without-fabric':
      return {
        what: `Blocks ${quoted(problem.block)} of ${sizeText(problem.size, unit)} are not square, so they cannot fill the corners of the border.`,
        mend: 'Name a "spacer" fabric for plain corner squares, or use a square block.',
      };
    case 'setting/section-sum':
      return {
        what: `Here the ${problem.side} is ${lengthText(problem.found, unit)}, and what lies beside it has ${lengthText(problem.expected, unit)}.`,
        mend: 'Make both equal: change a size, add a strip, or add a fill, which takes what is missing.',
      };
    case 'setting/nothing-to-fill':
      return {
        what: `The other parts of this section have a ${problem.side} of ${lengthText(problem.found, unit)} together, out of ${lengthText(problem.available, unit)}: nothing is left for the fill.`,
        mend: 'Take the fill out, or make the other parts smaller.',
      };
    case 'setting/section-open':
      return {
        what: `Nothing says what ${problem.side} this section has: every part of it could take any.`,
        mend: 'Let one part have a size of its own: take a fill out of it, or put a strip of known width in its place.',
      };
    default:
      return never(problem);
  }
};
