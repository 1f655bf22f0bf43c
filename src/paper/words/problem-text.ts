// Every problem in plain words: where it is, what is wrong with both figures, and how to mend it.
import type { Problem } from '#craft';
import { never } from '#ground/outcome';
import { cuttingText } from './cutting-text.ts';
import { designText, isDesignProblem } from './design-text.ts';
import { draftingText, isDraftingProblem } from './drafting-text.ts';
import { settingText } from './setting-text.ts';

export interface ProblemText {
  /** A JSON pointer into the document, or a line and column of its text. */
  readonly where: string;
  readonly what: string;
  readonly mend: string;
}

export const problemText = (problem: Problem): ProblemText => {
  const where = whereOf(problem);
  if (isDesignProblem(problem)) return { where, ...designText(problem) };
  if (isDraftingProblem(problem)) return { where, ...draftingText(problem) };
  switch (problem.code) {
    case 'setting/not-square':
    case 'setting/sizes-differ':
    case 'setting/no-block':
    case 'setting/sash-widths':
    case 'setting/no-dark-corner':
    case 'setting/border-does-not-fit':
    case 'setting/border-corner-without-fabric':
    case 'setting/section-sum':
    case 'setting/nothing-to-fill':
    case 'setting/section-open':
      return { where, ...settingText(problem) };
    case 'cutting/nothing-left':
    case 'cutting/curve-too-tight':
    case 'cutting/wider-than-cloth':
    case 'cutting/larger-than-sheet':
    case 'cutting/stock-short':
    case 'cutting/motif-in-triangle':
    case 'cutting/motif-out-of-reach':
      return { where, ...cuttingText(problem) };
    default:
      return never(problem);
  }
};

const whereOf = (problem: Problem): string => {
  if ('line' in problem && 'column' in problem) return `line ${problem.line}, column ${problem.column}`;
  return problem.path === '' ? 'the whole document' : problem.path;
};
