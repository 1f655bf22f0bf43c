// Which search is led for a problem of an instance? One small road from the instance to the searches in craft.
import { searchLayout } from '#craft/layout';
import type { InstanceJob, LayoutProblem } from '#craft/layout-instance';
import { searchSheets } from '#craft/sheets';
import type { BoundKind, IntegerSolver, Job } from '#craft/strips';
import type { LaidInstance } from '#paper/layout-file';

/** The best so far: `value` is its length, or the cost of its sheets. */
export interface InstanceFound {
  readonly laid: LaidInstance;
  readonly value: number;
  readonly bound: number;
  readonly boundKind: BoundKind;
}

export interface InstanceTask {
  readonly problem: LayoutProblem;
  readonly cut: InstanceJob;
  readonly solver: IntegerSolver;
}

/**
 * Each `next()` is a short step; it ends when it knows nothing more. 'no': the sheets at hand cannot hold the pieces;
 * 'not-found': no layout so far that holds them all.
 */
export type InstanceSearch = Generator<InstanceFound | 'no' | 'not-found', void, void>;

export const searchFor = (task: InstanceTask): InstanceSearch =>
  task.problem.kind === 'strip' ? stripsOn(task) : sheetsOf(task);

function* stripsOn({ problem, cut, solver }: InstanceTask): InstanceSearch {
  const least = problem.packing === 'any' ? areaBound(cut.job) : 0;
  const search = searchLayout({ job: cut.job, cutting: problem.cutting, shop: null, solver });
  for (let isDone = false; !isDone; ) {
    const next = search.next();
    isDone = next.done === true;
    const { strips, length, bound, boundKind } = next.value;
    const laid = { on: 'cloth', strips } as const;
    if (problem.packing === 'staged') yield { laid, value: length, bound, boundKind };
    else yield { laid, value: length, bound: least, boundKind: 'area' };
  }
}

/** Below this lies no packing at all: area over width, the highest piece, and pieces of which no two lie side by side. */
const areaBound = ({ width, kinds }: Job): number => {
  let area = 0;
  let tallest = 0;
  let alone = 0;
  for (const kind of kinds) {
    const lower = kind.mayTurn ? Math.min(kind.width, kind.height) : kind.height;
    const narrower = kind.mayTurn ? Math.min(kind.width, kind.height) : kind.width;
    area += kind.width * kind.height * kind.count;
    tallest = Math.max(tallest, lower);
    if (2 * narrower > width) alone += kind.count * lower;
  }
  return Math.max(Math.ceil(area / width), tallest, alone);
};

/** Only layouts that leave no piece over count. */
function* sheetsOf({ problem, cut, solver }: InstanceTask): InstanceSearch {
  const { sheets, job } = cut;
  const search = searchSheets({ kinds: job.kinds, cutting: problem.cutting, sheets, solver });
  for (let isDone = false; !isDone; ) {
    const next = search.next();
    isDone = next.done === true;
    const { sheets: uses, cost, bound, boundKind, holds } = next.value;
    if (holds === 'yes') yield { laid: { on: 'sheets', sheets: uses }, value: cost, bound, boundKind };
    else yield holds;
    if (holds === 'no') return;
  }
}
