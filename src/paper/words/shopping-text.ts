// What is wrong with an amount of cloth at hand, in words.
import type { CupboardProblem } from '#craft/shopping';
import { never } from '#ground/outcome';
import { instead, quoted } from './named.ts';
import type { ProblemText } from './problem-text.ts';

export const cupboardProblemText = (problem: CupboardProblem): ProblemText => ({
  where: problem.path,
  ...textOf(problem),
});

const likeThis = 'Write it with its unit, like "2 1/2 yd", "0.75 m" or "27 in".';

const textOf = (problem: CupboardProblem): Omit<ProblemText, 'where'> => {
  switch (problem.code) {
    case 'shopping/unknown-cloth':
      return {
        what: `The quilt has no cloth ${quoted(problem.fabric)}.`,
        mend: instead(problem.fabric, problem.known),
      };
    case 'shopping/unreadable':
      return { what: `${quoted(problem.found)} is not an amount of cloth${whyText(problem.why)}.`, mend: likeThis };
    case 'shopping/no-unit':
      return { what: `${quoted(problem.found)} does not say yards or inches, metres or centimetres.`, mend: likeThis };
    case 'shopping/nothing':
      return {
        what: `${quoted(problem.found)} of ${quoted(problem.fabric)} is no cloth at all.`,
        mend: 'Leave out a cloth that is to be bought, and state what is at hand of the others.',
      };
    case 'shopping/too-much':
      return {
        what: `${quoted(problem.found)} of ${quoted(problem.fabric)} is more than any quilt takes.`,
        mend: 'Look for a slip in the figure or in its unit.',
      };
    case 'shopping/sheets-wanted':
      return {
        what: `${quoted(problem.fabric)} is cut from sheets here, and ${quoted(problem.found)} is not their number.`,
        mend: 'Write how many there are, like 6.',
      };
    case 'shopping/not-one-amount':
      return {
        what: `The document says already in which pieces ${quoted(problem.fabric)} is bought.`,
        mend: 'Change what its "bought" says in the document, and leave it out here.',
      };
    default:
      return never(problem);
  }
};

const whyText = (why: Extract<CupboardProblem, { code: 'shopping/unreadable' }>['why']): string => {
  switch (why.fault) {
    case 'zero-denominator':
      return ': nothing can be divided by 0';
    case 'improper':
      return ': a whole number and a fraction above one could mean two things';
    case 'text-too-long':
    case 'too-fine':
      return `: it has more than ${why.most} signs`;
    default:
      return '';
  }
};
