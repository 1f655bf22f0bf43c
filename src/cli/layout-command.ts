// seamstead layout INSTANCE: the least cloth or the cheapest sheets for the pieces of a reference problem, searched for as long
// as one likes.
import {
  type Instance,
  type InstanceJob,
  type InstanceProblem,
  jobFor,
  type LayoutProblem,
  parseInstance,
  problemFor,
} from '#craft/layout-instance';
import type { Outcome } from '#ground/outcome';
import { layoutFileText, layoutSummary } from '#paper/layout-file';
import { instanceText } from '#paper/words';
import { openSolver } from '#solver';
import { calledName, readDocument } from './documents.ts';
import { type InstanceFound, searchFor } from './layout-search.ts';
import { textLines } from './problems.ts';
import { exits, print, progressOn, type Terminal, WrongUse } from './terminal.ts';

export interface LayoutWishes {
  readonly file: string;
  /** Null: the first that the instance lists. */
  readonly problem: string | null;
  /** As written. */
  readonly seconds: string;
  readonly json: boolean;
}

export const runLayout = async (wishes: LayoutWishes, terminal: Terminal): Promise<number> => {
  const seconds = secondsOf(wishes.seconds);
  const asked = askedFor(await readDocument(wishes.file, terminal), wishes.problem);
  const refuse = async (problems: readonly InstanceProblem[], more: number): Promise<number> => {
    const texts = problems.map(instanceText);
    await print(terminal.stderr, textLines(calledName(wishes.file), texts, more));
    return exits.problems;
  };
  if (!asked.ok) return refuse(asked.problems, asked.more);
  const { instance, problem, cut } = asked.value;
  let begun = performance.now();
  const solver = await openSolver({ secondsLeft: () => seconds - (performance.now() - begun) / 1000 });
  const progress = progressOn(terminal.stderr);
  progress.say('Laying out …');
  const search = searchFor({ problem, cut, solver });
  begun = performance.now();
  const searched = await timedSearch({ search, begun, seconds, say: progress.say });
  progress.clear();
  if (searched === 'no' || searched === 'not-found')
    return refuse(
      [{ code: 'instance/too-few-sheets', path: '/sheets', problem: problem.id, isProven: searched === 'no' }],
      0,
    );
  const report = { instance, problem, cut, ...searched };
  await print(terminal.stdout, wishes.json ? layoutFileText(report) : layoutSummary(report));
  return exits.done;
};

interface Asked {
  readonly instance: Instance;
  readonly problem: LayoutProblem;
  readonly cut: InstanceJob;
}

const askedFor = (text: string, id: string | null): Outcome<Asked, InstanceProblem> => {
  const instance = parseInstance(text);
  if (!instance.ok) return instance;
  const problem = problemFor(instance.value, id);
  if (!problem.ok) return problem;
  const cut = jobFor(instance.value, problem.value);
  if (!cut.ok) return cut;
  return { ok: true, value: { instance: instance.value, problem: problem.value, cut: cut.value } };
};

const mostSeconds = 86_400;

const secondsOf = (written: string): number => {
  const seconds = Number(written);
  if (written.trim() !== '' && seconds >= 0 && seconds <= mostSeconds) return seconds;
  throw new WrongUse(
    `--seconds ${written}: this is not a time. Write seconds from 0 to ${mostSeconds}, such as 2 or 0.5.`,
  );
};

interface Searched extends InstanceFound {
  readonly firstMs: number;
  readonly bestMs: number;
  readonly seconds: number;
}

/** Steps until the time is over or the search ends; the first step is always taken. */
const timedSearch = async (of: {
  readonly search: ReturnType<typeof searchFor>;
  readonly begun: number;
  readonly seconds: number;
  readonly say: (what: string) => void;
}): Promise<Searched | 'no' | 'not-found'> => {
  const { begun } = of;
  let best: InstanceFound | null = null;
  let firstMs = 0;
  let bestMs = 0;
  for (const found of of.search) {
    const now = performance.now() - begun;
    if (found === 'no') return 'no';
    if (found === 'not-found') {
      if (now >= of.seconds * 1000) break;
      continue;
    }
    if (best === null) firstMs = now;
    if (best === null || found.value < best.value) {
      bestMs = now;
      of.say(`Laying out … ${found.value}`);
    }
    best = found;
    if (now >= of.seconds * 1000 || found.bound >= found.value) break;
  }
  if (best === null) return 'not-found';
  return { ...best, firstMs, bestMs, seconds: (performance.now() - begun) / 1000 };
};
