// How do time and memory grow with the demand and with the number of kinds?

import type { IntegerSolver, Job } from '#craft/strips';
import { msText, printTable, shareText } from '../table.ts';
import { growthSlope } from '../timing.ts';
import { stripCourse } from './engine.ts';
import { gapOf } from './measure.ts';
import { quiltProblem, timesOver } from './problems.ts';
import { flat } from './quilt-sized.ts';

interface Point {
  readonly label: string;
  readonly size: number;
  readonly job: Job;
}

const demands = [1, 4, 16, 64] as const;
const kindCounts = [10, 20, 40, 80] as const;
const middling = quiltProblem({ kinds: 20, pieces: [180, 180], seed: 1, turning: 'free' });

const byDemand: readonly Point[] = demands.map((times) => ({
  label: `20 kinds, ${180 * times} pieces`,
  size: times,
  job: timesOver(middling, times),
}));

const byKinds: readonly Point[] = kindCounts.map((kinds) => ({
  label: `${kinds} kinds, ${12 * kinds} pieces`,
  size: kinds,
  job: quiltProblem({ kinds, pieces: [12 * kinds, 12 * kinds], seed: 1, turning: 'free' }),
}));

/** Until the first layout and the first hundred steps; heap in use above what was there before. */
const rowOf = ({ label, job }: Point, solver: IntegerSolver) => {
  global.gc?.();
  const before = process.memoryUsage().heapUsed;
  const course = stripCourse({ job, cutting: flat, shop: null, solver, timesMs: [1000] });
  const grown = Math.max(0, process.memoryUsage().heapUsed - before) / 2 ** 20;
  const standing = course.at[0] ?? { value: 0, bound: 0 };
  return { label, firstMs: course.firstMs, stepMs: course.longestStepMs, gap: gapOf(standing), megabytes: grown };
};

export const printGrowth = (solver: IntegerSolver): void => {
  for (const points of [byDemand, byKinds]) {
    const rows = points.map((point) => rowOf(point, solver));
    printTable([
      ['two stages, free to turn, 1 s', 'first', 'longest step', 'gap', 'heap in use'],
      ...rows.map(({ label, firstMs, stepMs, gap, megabytes }) => [
        label,
        msText(firstMs),
        msText(stepMs),
        shareText(gap),
        `${megabytes.toFixed(1)} MB`,
      ]),
    ]);
    const slope = growthSlope(rows.map(({ firstMs }, i) => [points[i]?.size ?? 1, firstMs]));
    console.log(`Growth of the time to the first layout: slope ${slope.toFixed(2)}\n`);
  }
};
