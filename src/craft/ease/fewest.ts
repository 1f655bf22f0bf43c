// Out of strips that are known, which and how many of each make the least work within a length? Two integer programs: the
// fewest heights and then measures, and with these the fewest ways to fill a strip and then strokes.
import {
  countsOf,
  type IntegerProgram,
  type IntegerRow,
  type IntegerSolver,
  type Job,
  type Kind,
  type StripPattern,
  type StripUse,
  withoutSurplus,
} from '#craft/strips';
import { cutsIn } from './effort.ts';

/** Nodes the solver may branch on in each program. */
const mostNodes = 20;

type Demanded = 'at-least' | 'exactly';

interface Columns {
  readonly patterns: readonly StripPattern[];
  readonly counts: readonly (readonly number[])[];
  readonly upper: readonly number[];
  readonly strokes: readonly number[];
  /** Strip heights and all measures: indexes of the patterns that need each. */
  readonly heights: readonly (readonly number[])[];
  readonly measures: readonly (readonly number[])[];
}

export interface FewestTask {
  readonly job: Job;
  readonly patterns: readonly StripPattern[];
  readonly longest: number;
  readonly solver: IntegerSolver;
}

/**
 * Of exactly the demand, once or twice: strips that hold more than the demand lose what is too much, and may then be
 * of other heights than were chosen; so where any did, strips are chosen anew that hold no more.
 */
export function* fewestOf(task: FewestTask): Generator<readonly StripUse[]> {
  const loose = chosenOf(task, 'at-least');
  if (loose === null) return;
  const exact = withoutSurplus(task.job, loose);
  yield exact;
  if (sum(task.job, exact) === sum(task.job, loose)) return;
  const tight = chosenOf(task, 'exactly');
  if (tight !== null) yield tight;
}

const sum = (job: Job, strips: readonly StripUse[]): number =>
  strips.reduce(
    (all, { pattern, times }) => all + times * countsOf(pattern, job.kinds.length).reduce((n, m) => n + m, 0),
    0,
  );

/** Null where the solver finds none; the least of the given patterns where both programs are proven. */
const chosenOf = (of: FewestTask, demand: Demanded): readonly StripUse[] | null => {
  const { job, longest, solver } = of;
  const columns = columnsOf(job, of.patterns, longest);
  const n = columns.patterns.length;
  const needs = [
    ...demandRows(job, columns, demand),
    { least: -longest, terms: columns.patterns.map((p, j) => [j, -p.height] as const) },
  ];
  const marks = [...columns.heights, ...columns.measures];
  const first: IntegerProgram = {
    cost: [
      ...columns.patterns.map(() => 0),
      ...columns.heights.map(() => columns.measures.length + 1),
      ...columns.measures.map(() => 1),
    ],
    upper: [...columns.upper, ...marks.map(() => 1)],
    rows: [...needs, ...markRows(columns, marks, n)],
  };
  const least = solver.minimise(first, { nodes: mostNodes });
  if (least.status === 'none') return null;
  const isUsed = least.x.slice(n);
  // only patterns whose heights and measures are those found stay open
  const open = columns.upper.map((most, j) =>
    marks.some((list, m) => isUsed[m] === 0 && list.includes(j)) ? 0 : most,
  );
  const manyStrokes = columns.strokes.reduce((all, s, j) => all + s * (least.x[j] ?? 0), 0) + 1;
  const second: IntegerProgram = {
    cost: [...columns.strokes, ...columns.patterns.map(() => manyStrokes)],
    upper: [...open, ...columns.patterns.map(() => 1)],
    rows: [
      ...needs,
      ...columns.patterns.map((_, j) => ({ least: 0, terms: [[n + j, open[j] ?? 0] as const, [j, -1] as const] })),
    ],
  };
  const answer = solver.minimise(second, { nodes: mostNodes });
  const x = answer.status === 'none' ? least.x : answer.x;
  return columns.patterns.flatMap((pattern, j) => ((x[j] ?? 0) > 0 ? [{ pattern, times: x[j] as number }] : []));
};

const columnsOf = (job: Job, patterns: readonly StripPattern[], longest: number): Columns => {
  const counts = patterns.map((p) => countsOf(p, job.kinds.length));
  const cuts = patterns.map((p) => cutsIn(job, p));
  const using = (values: readonly (readonly number[])[]): readonly (readonly number[])[] =>
    [...new Set(values.flat())].map((value) => values.flatMap((list, j) => (list.includes(value) ? [j] : [])));
  return {
    patterns,
    counts,
    upper: counts.map((c, j) =>
      Math.min(
        Math.floor(longest / (patterns[j] as StripPattern).height),
        c.reduce((most, n, i) => (n === 0 ? most : Math.max(most, Math.ceil((job.kinds[i] as Kind).count / n))), 0),
      ),
    ),
    strokes: cuts.map((c) => c.strokes),
    heights: using(patterns.map((p) => [p.height])),
    measures: using(cuts.map((c) => c.measures)),
  };
};

const demandRows = (job: Job, { counts }: Columns, demand: Demanded): readonly IntegerRow[] =>
  job.kinds.flatMap((kind, i) => {
    const terms = counts.flatMap((c, j) => ((c[i] ?? 0) > 0 ? [[j, c[i] ?? 0] as const] : []));
    const enough = { least: kind.count, terms };
    if (demand === 'at-least') return [enough];
    return [enough, { least: -kind.count, terms: terms.map(([j, n]) => [j, -n] as const) }];
  });

/** A pattern may be cut only where each of its marks is paid for. */
const markRows = ({ upper }: Columns, marks: readonly (readonly number[])[], first: number): readonly IntegerRow[] =>
  marks.flatMap((list, m) =>
    list.map((j) => ({ least: 0, terms: [[first + m, upper[j] ?? 0] as const, [j, -1] as const] })),
  );
