// The searches that are measured, each plan of theirs looked at afresh before a figure of it counts.

import { searchLayout } from '#craft/layout';
import type { SheetJob, SheetsFound } from '#craft/sheets';
import { searchSheets } from '#craft/sheets';
import type { Cutting, IntegerSolver, Job, ShopStep, StripsFound, StripUse } from '#craft/strips';
import { lengthOf, levelChoicesFor, levelsFor, ownStripsFor } from '#craft/strips';
import { layoutFaults, sheetFaults } from './checked.ts';
import { type Course, courseOf } from './measure.ts';

export interface StripRun {
  readonly job: Job;
  readonly cutting: Cutting;
  readonly shop: ShopStep | null;
  readonly solver: IntegerSolver;
  readonly timesMs: readonly number[];
}

/** @throws when the layout is not what it says, or lies below its bound */
export const stripCourse = ({ timesMs, ...task }: StripRun): Course<StripsFound> => {
  const read = ({ length, bound }: StripsFound) => ({ value: length, bound });
  const course = courseOf({ search: searchLayout(task), timesMs, read });
  const { strips, length, bound } = course.last;
  refuseFaults([
    ...layoutFaults({ job: task.job, cutting: task.cutting, strips, length }),
    ...(bound > length ? [`bound ${bound} above the length ${length}`] : []),
    ...(lengthOf(strips) === length ? [] : [`${lengthOf(strips)} long, not ${length}`]),
  ]);
  return course;
};

/** @throws when the layout is not what it says, or lies below its bound */
export const sheetCourse = ({
  timesMs,
  ...job
}: SheetJob & { readonly timesMs: readonly number[] }): Course<SheetsFound> => {
  const read = ({ cost, bound }: SheetsFound) => ({ value: cost, bound });
  const course = courseOf({ search: searchSheets(job), timesMs, read });
  const { sheets: uses, cost, bound, holds } = course.last;
  refuseFaults([
    ...(holds === 'yes' ? sheetFaults({ ...job, uses }) : ['pieces are left over']),
    ...(bound > cost ? [`bound ${bound} above the cost ${cost}`] : []),
  ]);
  return course;
};

/** Lengths of the plain ways: pieces level by level, and each kind on strips of its own. */
export const plainLengths = (job: Job) => {
  const least = (rule: 'first-fit' | 'best-fit'): number => {
    const choices = levelChoicesFor(job).filter((choice) => choice.rule === rule && choice.piling === 'single');
    return Math.min(...choices.map((choice) => checkedLength(job, levelsFor(job, choice))));
  };
  return { firstFit: least('first-fit'), bestFit: least('best-fit'), own: checkedLength(job, ownStripsFor(job)) };
};

const checkedLength = (job: Job, strips: readonly StripUse[]): number => {
  const length = lengthOf(strips);
  refuseFaults(layoutFaults({ job, cutting: { stages: 2 }, strips, length }));
  return length;
};

const refuseFaults = (faults: readonly string[]): void => {
  if (faults.length > 0) throw new Error(`a layout is refused: ${faults.slice(0, 3).join('; ')}`);
};
