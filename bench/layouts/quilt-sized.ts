// How near the bound do layouts of one quilt's cloth come, how soon, and how often is the purchase proven least? Seeded
// problems of three sizes, of borders and of kits, beside the plain ways in the same run.

import { type Cutting, type IntegerSolver, type Job, type ShopStep, type StripsFound, stepsFor } from '#craft/strips';
import { msText, ofText, printTable, shareText } from '../table.ts';
import { plainLengths, stripCourse } from './engine.ts';
import { type Course, gapOf, mean, median } from './measure.ts';
import { borderProblem, kitProblem, quiltClasses, quiltProblem, shopStep, type Turning } from './problems.ts';

export interface ProblemClass {
  readonly name: string;
  readonly turning: Turning;
  readonly problem: (seed: number) => Job;
}

const turnings: readonly Turning[] = ['fixed', 'free'];

export const quiltSized: readonly ProblemClass[] = quiltClasses.flatMap(({ name, kinds, pieces }) =>
  turnings.map((turning) => ({
    name,
    turning,
    problem: (seed: number) => quiltProblem({ kinds, pieces, seed, turning }),
  })),
);

const bordered: readonly ProblemClass[] = turnings.map((turning) => ({
  name: '12 kinds, 4 borders',
  turning,
  problem: (seed) => borderProblem({ seed, turning }),
}));

export const kitSized: readonly ProblemClass[] = [16, 32].flatMap((kinds) =>
  turnings.map((turning) => ({
    name: `kits, ${kinds} kinds`,
    turning,
    problem: (seed: number) => kitProblem({ kinds, seed, turning }),
  })),
);

export const everyClass = [...quiltSized, ...bordered, ...kitSized];

/** Milliseconds at which a search is looked at. */
const timesMs = [100, 150, 2000] as const;

export const flat: Cutting = { stages: 2 };
export const deep: Cutting = { stages: 3, stripHeights: 'any' };

export interface ClassRun {
  readonly each: ProblemClass;
  /** Seeds from 1. */
  readonly problems: number;
  readonly cutting: Cutting;
  readonly shop: ShopStep | null;
  readonly solver: IntegerSolver;
}

interface ClassCourse {
  readonly job: Job;
  readonly course: Course<StripsFound>;
}

/** A problem that is not counted comes first: the machine warms up. */
const coursesOf = ({ each, problems, cutting, shop, solver }: ClassRun): readonly ClassCourse[] => {
  stripCourse({ job: each.problem(0), cutting, shop, solver, timesMs: [300] });
  return Array.from({ length: problems }, (_, i) => {
    const job = each.problem(i + 1);
    return { job, course: stripCourse({ job, cutting, shop, solver, timesMs }) };
  });
};

/** Gaps to the bound at each time; of the lengths of the plain ways, how much is saved at the last. */
export const printGaps = (
  of: Omit<ClassRun, 'each' | 'shop'> & { readonly classes: readonly ProblemClass[] },
): void => {
  const rows = of.classes.map((each) => {
    const all = coursesOf({ ...of, each, shop: null });
    const standing = (time: number) => all.map(({ course }) => course.at[time] ?? { value: 0, bound: 0 });
    const last = standing(timesMs.length - 1);
    const plain = all.map(({ job }) => plainLengths(job));
    const saved = (way: 'firstFit' | 'bestFit' | 'own'): string =>
      shareText(mean(plain.map((lengths, i) => 100 * (1 - (last[i]?.value ?? 0) / lengths[way]))));
    const beaten = plain.filter(({ firstFit, bestFit }, i) => (last[i]?.value ?? 0) > Math.min(firstFit, bestFit));
    if (beaten.length > 0) throw new Error(`${each.name}: a level heuristic is shorter`);
    const gaps = timesMs.map((_, time) => {
      const each = standing(time).map(gapOf);
      return `${shareText(mean(each))} / ${shareText(Math.max(...each))}`;
    });
    return [
      each.name,
      each.turning,
      msText(median(all.map(({ course }) => course.firstMs))),
      ...gaps,
      ofText(last.filter(({ value, bound }) => bound >= value).length, all.length),
      msText(Math.max(...all.map(({ course }) => course.longestStepMs))),
      saved('firstFit'),
      saved('bestFit'),
      saved('own'),
    ];
  });
  const times = timesMs.map((ms) => `gap at ${ms} ms, mean / most`);
  printTable([
    ['problems', 'turning', 'first', ...times, 'proven', 'longest step', 'saved: first fit', 'best fit', 'own strips'],
    ...rows,
  ]);
};

/** How often no layout at all would be bought with fewer steps of the shop. */
export const printPurchases = (
  of: Omit<ClassRun, 'each' | 'shop'> & { readonly classes: readonly ProblemClass[] },
): void => {
  const rows = of.classes.map((each) => {
    const all = coursesOf({ ...of, each, shop: shopStep });
    const provenAt = (time: number): number =>
      all.filter(({ course }) => {
        const { value, bound } = course.at[time] ?? { value: 1, bound: 0 };
        return stepsFor(value, shopStep) === stepsFor(bound, shopStep);
      }).length;
    return [
      each.name,
      each.turning,
      ...timesMs.map((_, time) => ofText(provenAt(time), all.length)),
      msText(mean(all.map(({ course }) => course.ms))),
    ];
  });
  const times = timesMs.map((ms) => `proven at ${ms} ms`);
  printTable([['purchase in 1/8 yd', 'turning', ...times, 'mean time'], ...rows]);
};
