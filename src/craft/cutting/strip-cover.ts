// Out of all strips that the search has seen, which and how many of each cover the demand at the least length?
// An integer program over the pool; what it cuts too much is taken out again.
import type { IntegerProgram, IntegerSolver, Job, Kind } from '#craft/strips';
import { countsOf, lengthOf, patternKey, type StripPattern, type StripUse, withoutSurplus } from '#craft/strips';

/** Strips seen so far, the shortest for each set of pieces. */
export type Pool = Map<string, StripPattern>;

export const poolWith = (pool: Pool, kinds: number, strips: readonly StripUse[]): void => {
  for (const { pattern } of strips) {
    const key = countsOf(pattern, kinds).join();
    const before = pool.get(key);
    if (before === undefined || pattern.height < before.height) pool.set(key, pattern);
  }
};

/** Columns of the program at most; the fullest strips are kept, and all of the best layout. */
const mostColumns = 200;
/** Nodes the solver may branch on: measured: under 0.1 s at 10 kinds, about a second at 40. */
const mostNodes = 5;

/**
 * A layout of exactly the demand no longer than `best`, by the solver; null when it finds none that is shorter.
 * The program sees only the pool, so its proof of least length is one for the pool and none for all layouts.
 */
export const coveredBy = (of: {
  readonly job: Job;
  readonly pool: Pool;
  readonly best: readonly StripUse[];
  readonly solver: IntegerSolver;
}): readonly StripUse[] | null => {
  const { job, pool, best, solver } = of;
  const columns = columnsFor(job, pool, best);
  const counts = columns.map((p) => countsOf(p, job.kinds.length));
  const program: IntegerProgram = {
    cost: columns.map((p) => p.height),
    upper: counts.map((c) =>
      c.reduce((most, n, i) => (n === 0 ? most : Math.max(most, Math.ceil((job.kinds[i] as Kind).count / n))), 0),
    ),
    rows: [
      ...job.kinds.map((kind, i) => ({
        least: kind.count,
        terms: counts.flatMap((c, j) => ((c[i] ?? 0) > 0 ? [[j, c[i] ?? 0] as const] : [])),
      })),
      // only a shorter layout is of use: the row lets the solver give up early
      { least: 1 - lengthOf(best), terms: columns.map((p, j) => [j, -p.height] as const) },
    ],
  };
  const answer = solver.minimise(program, { nodes: mostNodes });
  if (answer.status === 'none' || answer.objective >= lengthOf(best)) return null;
  return withoutSurplus(
    job,
    columns.map((pattern, i) => ({ pattern, times: answer.x[i] ?? 0 })),
  );
};

const columnsFor = (job: Job, pool: Pool, best: readonly StripUse[]): readonly StripPattern[] => {
  const waste = (p: StripPattern): number => {
    const used = countsOf(p, job.kinds.length).reduce((sum, n, i) => {
      const k = job.kinds[i] as Kind;
      return sum + n * k.width * k.height;
    }, 0);
    return 1 - used / (p.height * job.width);
  };
  const kept = new Map(best.map(({ pattern }) => [patternKey(pattern), pattern]));
  const others = [...pool.values()]
    .map((pattern) => ({ pattern, key: patternKey(pattern), waste: waste(pattern) }))
    .sort((a, b) => a.waste - b.waste || (a.key < b.key ? -1 : 1));
  for (const { pattern, key } of others) {
    if (kept.size >= mostColumns) break;
    kept.set(key, pattern);
  }
  return [...kept.values()];
};
