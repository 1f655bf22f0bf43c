// Of the strips and ways to cut a sheet into strips found so far: which whole numbers of them hold all pieces at least cost?
// Strips and sheets are chosen apart, so that strips of one plan come to lie on sheets of another.
import { gcdOf, type IntegerProgram, type IntegerRow, type StripPattern } from '#craft/strips';
import type { SheetPattern, SheetTask } from './fill.ts';
import type { Sheet } from './job.ts';
import type { PatternUse, Plan } from './restart.ts';

interface Strip {
  readonly pattern: StripPattern;
  /** Of the sheets that it is for. */
  readonly width: number;
  readonly counts: Int32Array;
}

/** A sheet and the heights that it is cut into, tallest first. */
interface Division {
  readonly sheet: number;
  readonly heights: readonly number[];
}

export interface Choosing {
  readonly task: SheetTask;
  readonly patterns: readonly SheetPattern[];
  /** What an answer must stay below. */
  readonly below: number;
  /** Nodes times variables at most: about the time that it takes. */
  readonly effort: number;
}

/** Below, the solver is not worth asking. */
const fewestNodes = 10;

/**
 * @returns a plan that holds everything and costs less, with pieces to spare; null where the solver found none
 */
export const cheapestOf = (of: Choosing): Plan | null => {
  const { task } = of;
  const { solver, kinds } = task.job;
  if (solver === null) return null;
  const strips = stripsOf(of);
  const divisions = divisionsOf(of.patterns);
  const program = programFor(of, strips, divisions);
  const nodes = Math.max(fewestNodes, Math.floor(of.effort / program.cost.length));
  const answer = solver.minimise(program, { nodes });
  if (answer.status === 'none') return null;
  const uses = assembled({
    task,
    divisions: divisions.map((division, q) => ({ division, times: answer.x[q] as number })),
    strips: strips.map((strip, p) => ({ strip, times: answer.x[divisions.length + p] as number })),
  });
  return { uses, left: new Int32Array(kinds.length) };
};

const stripsOf = ({ task, patterns }: Choosing): readonly Strip[] => {
  const strips = new Map<string, Strip>();
  for (const { sheet, strips: own } of patterns) {
    const { width } = task.job.sheets[sheet] as Sheet;
    for (const pattern of own) {
      const counts = new Int32Array(task.job.kinds.length);
      for (const part of pattern.parts)
        for (const run of part.stack.runs)
          counts[run.kind] = Math.min(
            (counts[run.kind] as number) + part.times * run.times,
            task.job.kinds[run.kind]?.count ?? 0,
          );
      const key = `${width}:${counts.join()}`;
      const known = strips.get(key);
      if (known === undefined || known.pattern.height > pattern.height) strips.set(key, { pattern, width, counts });
    }
  }
  return [...strips.values()];
};

const divisionsOf = (patterns: readonly SheetPattern[]): readonly Division[] => {
  const divisions = new Map<string, Division>();
  for (const { sheet, strips } of patterns) {
    const heights = strips.map(({ height }) => height).sort((a, b) => b - a);
    divisions.set(`${sheet}:${heights.join()}`, { sheet, heights });
  }
  return [...divisions.values()];
};

/** Variables: how often each division is cut, then each strip. */
const programFor = (of: Choosing, strips: readonly Strip[], divisions: readonly Division[]): IntegerProgram => {
  const { kinds, sheets } = of.task.job;
  const unit = gcdOf(sheets.map(({ cost }) => cost)) || 1;
  const cost = divisions.map(({ sheet }) => (sheets[sheet] as Sheet).cost / unit);
  const most = kinds.reduce((sum, { count }) => sum + count, 0);
  const demands = kinds.map(
    ({ count }, i): IntegerRow => ({
      least: count,
      terms: strips.flatMap(({ counts }, p) =>
        (counts[i] as number) > 0 ? [[divisions.length + p, counts[i] as number] as const] : [],
      ),
    }),
  );
  const stocks = sheets.flatMap(({ stock }, s): readonly IntegerRow[] =>
    stock === null
      ? []
      : [{ least: -stock, terms: divisions.flatMap(({ sheet }, q) => (sheet === s ? [[q, -1] as const] : [])) }],
  );
  return {
    cost: [...cost, ...strips.map(() => 0)],
    upper: [...divisions.map(() => most), ...strips.map((strip) => mostOf(strip, kinds))],
    rows: [
      ...demands,
      ...placesFor(of, strips, divisions),
      ...stocks,
      ...(Number.isFinite(of.below)
        ? [{ least: -(Math.ceil(of.below / unit) - 1), terms: cost.map((c, q) => [q, -c] as const) }]
        : []),
    ],
  };
};

const mostOf = ({ counts }: Strip, kinds: SheetTask['job']['kinds']): number =>
  counts.reduce((most, n, i) => (n > 0 ? Math.max(most, Math.ceil((kinds[i]?.count ?? 0) / n)) : most), 0);

/**
 * For each width and height: at least as many places of that height or more as strips. Then every strip finds a place of
 * its own, for the tallest take the tallest.
 */
const placesFor = (
  { task }: Choosing,
  strips: readonly Strip[],
  divisions: readonly Division[],
): readonly IntegerRow[] =>
  [...new Set(strips.map(({ width }) => width))].flatMap((width) => {
    const mine = divisions.map(({ sheet, heights }) => (task.job.sheets[sheet]?.width === width ? heights : []));
    const heights = new Set(strips.flatMap((strip) => (strip.width === width ? [strip.pattern.height] : [])));
    return [...heights].map(
      (height): IntegerRow => ({
        least: 0,
        terms: [
          ...mine.flatMap((own, q) => {
            const n = own.filter((h) => h >= height).length;
            return n > 0 ? [[q, n] as const] : [];
          }),
          ...strips.flatMap((strip, p) =>
            strip.width === width && strip.pattern.height >= height ? [[divisions.length + p, -1] as const] : [],
          ),
        ],
      }),
    );
  });

/** Tallest strips into the tallest places; sheets that are cut alike come together. */
const assembled = (of: {
  readonly task: SheetTask;
  readonly divisions: readonly { readonly division: Division; readonly times: number }[];
  readonly strips: readonly { readonly strip: Strip; readonly times: number }[];
}): readonly PatternUse[] => {
  const { task } = of;
  const { kinds, sheets } = task.job;
  const uses = new Map<string, { pattern: SheetPattern; times: number }>();
  for (const width of new Set(sheets.map((sheet) => sheet.width))) {
    const cut = of.divisions
      .filter(({ division }) => sheets[division.sheet]?.width === width)
      .flatMap(({ division, times }) => Array.from({ length: times }, () => ({ division, strips: [] as Strip[] })));
    const places = cut
      .flatMap((one, at) => one.division.heights.map((height) => ({ one, at, height })))
      .sort((a, b) => b.height - a.height || a.at - b.at);
    let next = 0;
    const tallest = [...of.strips]
      .filter(({ strip }) => strip.width === width)
      .sort((a, b) => b.strip.pattern.height - a.strip.pattern.height);
    for (const { strip, times } of tallest) for (let n = 0; n < times; n++) places[next++]?.one.strips.push(strip);
    for (const { division, strips } of cut) {
      if (strips.length === 0) continue;
      const counts = new Int32Array(kinds.length);
      for (const strip of strips)
        for (let i = 0; i < counts.length; i++) counts[i] = (counts[i] as number) + (strip.counts[i] as number);
      const pattern = { sheet: division.sheet, strips: strips.map((strip) => strip.pattern), counts };
      const key = `${division.sheet}:${strips.map((strip) => of.strips.findIndex((s) => s.strip === strip)).join()}`;
      const known = uses.get(key);
      if (known === undefined) uses.set(key, { pattern, times: 1 });
      else known.times++;
    }
  }
  return [...uses.values()];
};
