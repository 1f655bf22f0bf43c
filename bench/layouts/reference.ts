// The reference problems: what is found in so many seconds, beside the best value known.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Instance, jobFor, type LayoutProblem, parseInstance, problemFor } from '#craft/layout-instance';
import type { IntegerSolver } from '#craft/strips';
import { ofText, printTable, shareText } from '../table.ts';
import { sheetCourse, stripCourse } from './engine.ts';
import type { Standing } from './measure.ts';

const folder = fileURLToPath(new URL('../instances', import.meta.url));

export const referenceInstances = (): readonly Instance[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => {
      const read = parseInstance(readFileSync(join(folder, file), 'utf8'));
      if (!read.ok) throw new Error(`${file} is refused: ${read.problems[0]?.code}`);
      return read.value;
    });

interface Wanted {
  readonly instance: Instance;
  readonly problem: LayoutProblem;
  readonly solver: IntegerSolver;
  readonly ms: number;
}

const standingFor = ({ instance, problem, solver, ms }: Wanted): Standing => {
  const cut = jobFor(instance, problem);
  if (!cut.ok) throw new Error(`${instance.name}: ${cut.problems[0]?.code}`);
  const { job, sheets } = cut.value;
  const { cutting } = problem;
  const course =
    problem.kind === 'strip'
      ? stripCourse({ job, cutting, shop: null, solver, timesMs: [ms] })
      : sheetCourse({ kinds: job.kinds, cutting, sheets, solver, timesMs: [ms] });
  return course.at[0] ?? { value: 0, bound: 0 };
};

/** Names of a problem without its turning: strip2, strip3r, strip3, sheets2, bins3. */
const familyOf = (id: string): string => id.replace(/-[or]$/, '');

interface Row extends Standing {
  readonly instance: string;
  readonly problem: string;
  readonly family: string;
  readonly best: number;
}

/** Problems of any packing are left out: only staged layouts can be compared. */
export const printReference = (of: {
  readonly solver: IntegerSolver;
  readonly ms: number;
  readonly isWanted: (instance: string, problem: string) => boolean;
}): void => {
  const rows = referenceInstances().flatMap((instance) =>
    instance.problems.flatMap(({ id, best }): readonly Row[] => {
      const problem = problemFor(instance, id);
      if (!problem.ok || problem.value.packing === 'any' || best === null) return [];
      if (!of.isWanted(instance.name, id)) return [];
      const standing = standingFor({ instance, problem: problem.value, solver: of.solver, ms: of.ms });
      return [{ instance: instance.name, problem: id, family: familyOf(id), best, ...standing }];
    }),
  );
  printTable([
    ['instance', 'problem', 'best known', 'ours', 'over', 'bound', 'least proven'],
    ...rows.map(({ instance, problem, best, value, bound }) => [
      instance,
      problem,
      `${best}`,
      `${value}${value < best ? ' (better)' : ''}`,
      shareText(100 * (value / best - 1)),
      `${bound}`,
      bound >= value ? 'yes' : '',
    ]),
  ]);
  console.log('');
  const families = [...new Set(rows.map(({ family }) => family))];
  printTable([
    ['problems', 'best known met or beaten', 'beaten', 'most over', 'least proven'],
    ...families.map((family) => {
      const own = rows.filter((row) => row.family === family);
      return [
        family,
        ofText(own.filter(({ value, best }) => value <= best).length, own.length),
        `${own.filter(({ value, best }) => value < best).length}`,
        shareText(Math.max(...own.map(({ value, best }) => 100 * (value / best - 1)))),
        ofText(own.filter(({ value, bound }) => bound >= value).length, own.length),
      ];
    }),
  ]);
};
