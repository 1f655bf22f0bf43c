// What is wrong with sizes that a student wrote down, in words.
import type { ReadingProblem, SeamTestProblem, Unmeasured } from '#craft/diagnosis';
import type { LengthProblem } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { never } from '#ground/outcome';
import { lengthText, nearSizeText, nearText, sizeText } from './length-text.ts';
import { counted, quoted } from './named.ts';
import type { ProblemText } from './problem-text.ts';

const likeThis = 'Write each step with its width and height, like "1: 3 3/8 x 2 1/2; 4: 4 7/16".';

export const readingProblemText = (problem: ReadingProblem): ProblemText => ({
  where: 'place' in problem ? `entry ${problem.place}` : 'what was measured',
  ...readingText(problem),
});

const wayWords = { across: 'width', down: 'height' } as const;

const readingText = (problem: ReadingProblem): Omit<ProblemText, 'where'> => {
  switch (problem.code) {
    case 'diagnosis/nothing-measured':
      return { what: 'No size is written down.', mend: likeThis };
    case 'diagnosis/unreadable':
      return { what: `${quoted(problem.found)} does not say which step measures what.`, mend: likeThis };
    case 'diagnosis/unknown-step':
      return {
        what: `There is no step ${quoted(problem.found)}: it has ${counted(problem.steps, 'step')}.`,
        mend: `Write the number of the step after which it was measured, from 1 to ${problem.steps}.`,
      };
    case 'diagnosis/length':
      return lengthProblemText(problem.problem, wayWords[problem.way]);
    case 'diagnosis/impossible':
      return {
        what: `A ${wayWords[problem.way]} of ${lengthText(problem.found, problem.unit)} after step ${problem.step + 1} is no slip of a seam or a cut: it should be ${nearText(problem.drawn, problem.unit)}.`,
        mend: 'Measure it again, from raw edge to raw edge, and look whether it is that step.',
      };
    case 'diagnosis/turned':
      return {
        what: `${sizeText(problem.found, problem.unit)} after step ${problem.step + 1} has width and height exchanged: it should be ${nearSizeText(problem.drawn, problem.unit)}.`,
        mend: 'Lay the unit as the board shows it, and write its width first.',
      };
    case 'diagnosis/no-model':
      return {
        what: `The ${wayWords[problem.way]} after step ${problem.step + 1} ${unmeasuredWords[problem.why]}, and says nothing of its seams.`,
        mend: 'Leave it out, and measure the unit the other way or after another step.',
      };
    case 'diagnosis/contradicts': {
      const { way, step, found, earlier, unit } = problem;
      const where = earlier.step === step ? 'twice over' : `as it was after step ${earlier.step + 1}`;
      return {
        what: `The ${wayWords[way]} after step ${step + 1} is the same stretch ${where}, and cannot be ${lengthText(earlier.found, unit)} and ${lengthText(found, unit)}.`,
        mend: 'Measure it again, and keep the one that is right; if you trimmed the unit between, leave out what you measured before.',
      };
    }
    default:
      return never(problem);
  }
};

const unmeasuredWords: Readonly<Record<Unmeasured, string>> = {
  'on-paper': 'is kept by a printed sheet',
  'not-whole': 'is of a unit that is still to be cut apart or trimmed',
  'inside-corner': 'goes over an inside corner',
  'in-triangles': 'ends in setting triangles that are still to be trimmed',
};

const lengthProblemText = (problem: LengthProblem, name: string): Omit<ProblemText, 'where'> => {
  const mend = 'Write it like "3 3/8", "3.375" or "8.5 cm".';
  switch (problem.fault) {
    case 'zero-denominator':
      return { what: `The ${name} ${quoted(problem.found)} divides by zero.`, mend };
    case 'improper':
      return {
        what: `The ${name} ${quoted(problem.found)} has a whole number before a fraction of one or more.`,
        mend,
      };
    case 'not-positive':
    case 'negative':
      return { what: `The ${name} ${quoted(problem.found)} is not above zero.`, mend };
    case 'too-large':
      return {
        what: `The ${name} ${quoted(problem.found)} is more than any quilt has: at most ${toNumber(problem.most)}.`,
        mend,
      };
    case 'text-too-long':
    case 'too-fine':
      return { what: `The ${name} ${quoted(problem.found)} has more than ${problem.most} signs.`, mend };
    case 'unreadable':
      return { what: `The ${name} ${quoted(problem.found)} is not a length.`, mend };
    default:
      return never(problem);
  }
};

const partWords = { middle: 'middle strip', total: 'whole' } as const;

export const seamTestProblemText = (problem: SeamTestProblem): ProblemText => ({
  where: 'the seam test',
  ...seamTestText(problem),
});

const seamTestText = (problem: SeamTestProblem): Omit<ProblemText, 'where'> => {
  switch (problem.code) {
    case 'seam-test/unreadable':
      return {
        what: `${quoted(problem.found)} does not say what the strips measure.`,
        mend: 'Write the middle strip from seam to seam, all three from edge to edge, or both: "middle 15/16, total 3 3/8".',
      };
    case 'seam-test/length':
      return lengthProblemText(problem.problem, partWords[problem.part]);
    case 'seam-test/impossible':
      return {
        what: `No seam makes the ${partWords[problem.part]} ${lengthText(problem.found, problem.unit)}: it should be ${lengthText(problem.expected, problem.unit)}.`,
        mend: 'Measure again, and look whether all three strips were cut to one width.',
      };
    default:
      return never(problem);
  }
};
