// What can be wrong with an instance of a layout problem, in words.
import type { Counted, InstanceProblem, Shape } from '#craft/layout-instance';
import { never } from '#ground/outcome';
import type { WhatAndMend } from './design-text.ts';
import { counted, instead, quoted } from './named.ts';
import type { ProblemText } from './problem-text.ts';

const shapes: Readonly<Record<Shape, string>> = {
  object: 'an object in braces',
  list: 'a list in square brackets',
  text: 'a text in quotation marks',
  'whole-number': 'a whole number',
  number: 'a number',
  'true-or-false': 'true or false',
  item: 'a list of three whole numbers, [width, height, count],',
};

const countedNouns: Readonly<Record<Counted, string>> = {
  items: 'kinds of piece',
  pieces: 'pieces',
  sheets: 'kinds of sheet',
  problems: 'listed problems',
};

export const instanceText = (problem: InstanceProblem): ProblemText => ({
  where: whereOf(problem),
  ...whatAndMend(problem),
});

const whereOf = (problem: InstanceProblem): string => {
  if ('line' in problem) return `line ${problem.line}, column ${problem.column}`;
  return problem.path === '' ? 'the whole instance' : problem.path;
};

const whatAndMend = (problem: InstanceProblem): WhatAndMend => {
  switch (problem.code) {
    case 'instance/too-long':
      return {
        what: `The instance has ${problem.found} characters; at most ${problem.most} are read.`,
        mend: 'Check that this is an instance of a layout problem, and divide it.',
      };
    case 'instance/not-json':
      return problem.found === null
        ? {
            what: 'The text ends before the instance does: it is not whole JSON.',
            mend: 'Look for a bracket or quotation mark that is never closed, or fetch the whole file again.',
          }
        : {
            what: `The text is not JSON: ${quoted(problem.found)} cannot stand here.`,
            mend: 'Look just before this place for a missing comma, quotation mark or bracket.',
          };
    case 'instance/too-deep':
      return {
        what: `Lists and objects lie more than ${problem.most} deep inside each other.`,
        mend: 'Look for brackets that are opened and never closed.',
      };
    case 'instance/key-twice':
      return {
        what: `The key ${quoted(problem.key)} stands twice in one object, so it is not clear which one counts.`,
        mend: 'Remove one of the two.',
      };
    case 'instance/missing-key':
      return {
        what: `The key ${quoted(problem.key)} is missing; it holds ${shapes[problem.expected]}.`,
        mend: `Add it; ${formIn}.`,
      };
    case 'instance/wrong-type':
      return {
        what: `Here stands ${problem.found}, where ${shapes[problem.expected].replace(/,$/, '')} is expected.`,
        mend: `Put ${shapes[problem.expected]} in its place.`,
      };
    case 'instance/out-of-range':
      return {
        what: `Here stands ${problem.found}; it must lie between ${problem.least} and ${problem.most}.`,
        mend:
          isCount(problem.path) || Number(problem.found) <= problem.most
            ? 'Check the figure.'
            : 'Check the figure; lengths may be counted in a coarser unit.',
      };
    case 'instance/not-one-of':
      return {
        what: `Here stands ${problem.found}, which is none of the possible values.`,
        mend: `Write one of ${problem.options.join(', ')}.`,
      };
    case 'instance/too-many':
      return {
        what: `There are ${problem.found} ${countedNouns[problem.what]}; at most ${problem.most} are possible.`,
        mend: 'Divide the instance into several.',
      };
    case 'instance/no-items':
      return { what: 'There is no piece to cut.', mend: 'List the pieces as [width, height, count].' };
    case 'instance/id-twice':
      return {
        what: `The name ${quoted(problem.id)} is given already, at ${problem.first}.`,
        mend: 'Give each its own name.',
      };
    case 'instance/unknown-problem':
      return {
        what: `The instance lists no problem ${quoted(problem.found)}, and the name does not say one.`,
        mend: instead(problem.found, problem.known),
      };
    case 'instance/untrimmed':
      return {
        what: `Problem ${quoted(problem.problem)} allows no trimming: every piece would have to come out to size by the cuts of its stages alone.`,
        mend: 'Layouts are planned with trimming; ask for a problem that says "trim": true.',
      };
    case 'instance/stages':
      return {
        what: `Problem ${quoted(problem.problem)} asks for ${counted(problem.found, 'stage')} of cuts; layouts are planned in 2 or 3.`,
        mend:
          problem.found > 3
            ? 'Ask for a problem of 3 stages: its layouts are valid with more stages too.'
            : 'Ask for a problem of 2 or 3 stages.',
      };
    case 'instance/cut-along-first':
      return {
        what: `Problem ${quoted(problem.problem)} cuts along the cloth first; on cloth of open length strips are planned across it.`,
        mend: 'Ask for a problem with "firstCut": "across", or give the length as a sheet.',
      };
    case 'instance/no-cloth':
      return {
        what: `Problem ${quoted(problem.problem)} cuts from cloth of open length, but the instance has no width "W".`,
        mend: 'Add "W", or ask for a problem on sheets, such as sheets2-o.',
      };
    case 'instance/no-sheets':
      return {
        what: `Problem ${quoted(problem.problem)} cuts from sheets, but the instance lists none.`,
        mend: 'Add "sheets", or ask for a problem on cloth of open length, such as strip2-o.',
      };
    case 'instance/too-large': {
      const [width, height] = problem.size;
      const piece = `The piece of ${width} across and ${height} along`;
      const cloth = problem.cloth === null ? 'any sheet at hand' : `the cloth, which is ${problem.cloth} wide`;
      return {
        what: problem.mayTurn
          ? `${piece} fits neither as it is nor turned on ${cloth}.`
          : `${piece} does not fit on ${cloth}.`,
        mend: problem.mayTurn
          ? 'Check the size, or take wider cloth or a larger sheet.'
          : 'Check the size, or take wider cloth or a larger sheet; where it would fit turned, ask for the problem with turning (-r).',
      };
    }
    case 'instance/too-few-sheets':
      return {
        what: problem.isProven
          ? `The sheets at hand cannot hold all pieces of problem ${quoted(problem.problem)}.`
          : `No layout was found in which the sheets at hand hold all pieces of problem ${quoted(problem.problem)}; it is not proven that there is none.`,
        mend: `Raise the "count" of a sheet, or leave it out for as many as wanted${problem.isProven ? '' : '; or allow more --seconds'}.`,
      };
    default:
      return never(problem);
  }
};

const formIn = 'bench/instances/README.md describes the form';

/** Where no length stands: how many of a piece, or of a sheet. */
const isCount = (path: string): boolean => /^\/items\/\d+\/2$|\/count$/u.test(path);
