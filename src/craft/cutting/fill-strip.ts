// Given what is still to be cut, a strip height and the piece that must be in it: what else goes into the strip?
// First the best stack for every width (pieces one below another), then the stacks side by side.
import type { Job, Kind } from '#craft/strips';
import {
  heightOf,
  patternOf,
  type Run,
  type Stack,
  type StackUse,
  type StripPattern,
  stackOf,
  widthOf,
} from '#craft/strips';
import { type Choice, filledFor } from './knapsack.ts';

/** A kind as it may lie. */
export interface Lying {
  readonly kind: number;
  readonly turned: boolean;
  readonly width: number;
  readonly height: number;
}

export interface Filling {
  readonly job: Job;
  /** Narrowest first. */
  readonly lyings: readonly Lying[];
  /** Pieces of each kind still to be cut. */
  readonly rest: readonly number[];
  readonly height: number;
  readonly lead: Lying;
  /** What a unit of a kind's area is worth. */
  readonly worth: readonly number[];
}

/** Cells a capacity is divided into at most; a longer one is searched in coarser cells, sizes rounded up. */
const mostCells = 2048;

/** Every way the job's pieces may lie, narrowest first; ways that do not fit the width are left out. */
export const lyingsOf = (job: Job): readonly Lying[] =>
  job.kinds
    .flatMap((k, kind) => (k.mayTurn ? [false, true] : [false]).map((turned) => lyingOf(k, kind, turned)))
    .filter((l) => l.width <= job.width)
    .sort((a, b) => a.width - b.width || a.height - b.height || a.kind - b.kind);

const lyingOf = (k: Kind, kind: number, turned: boolean): Lying => ({
  kind,
  turned,
  width: widthOf(k, turned),
  height: heightOf(k, turned),
});

/** A strip that contains the lead and no more of a kind than is left. */
export const filledStrip = (filling: Filling): StripPattern => {
  const rest = [...filling.rest];
  const parts: StackUse[] = [];
  const state = { ...filling, rest };
  let room = filling.job.width;
  const put = (stack: Stack): void => {
    for (const run of stack.runs) rest[run.kind] = (rest[run.kind] ?? 0) - run.times;
    room -= stack.width;
    parts.push({ stack, times: 1 });
  };
  let stacks = stacksFor(state);
  put(leadStack(state, stacks));
  for (let table: 'old' | 'new' = 'old'; ; ) {
    const before = room;
    for (const stack of sideBySide({ ...state, room }, stacks)) {
      const left = clamped(filling.job, stack, rest);
      if (left !== null) put(left);
    }
    if (room < before) table = 'old';
    else if (table === 'new') return patternOf(parts);
    else {
      // what is left has changed since the table was made: one more look with a new one
      stacks = stacksFor(state);
      table = 'new';
    }
  }
};

/** The stacks that fill the room with the most value, most valuable first; some may hold more than is left. */
const sideBySide = (filling: Room, stacks: Stacks): readonly Stack[] => {
  const options = optionsFor(filling, stacks);
  if (options.length === 0) return [];
  const cell = Math.ceil(filling.room / mostCells);
  const cells = Math.floor(filling.room / cell);
  const choices = options.map(
    (o): Choice => ({ cells: Math.ceil(o.stack.width / cell), value: o.value, most: o.most }),
  );
  return [...filledFor(choices, cells).taken(choices.length, cells)]
    .sort(([a], [b]) => (options[b]?.value ?? 0) - (options[a]?.value ?? 0) || a - b)
    .flatMap(([index, times]) => Array.from({ length: times }, () => (options[index] as Option).stack));
};

interface Stacks {
  readonly lyings: readonly Lying[];
  /** Best runs for the first `upTo` ways of lying within a height. */
  readonly within: (upTo: number, height: number) => readonly Run[];
}

interface Room extends Filling {
  /** Width not yet filled. */
  readonly room: number;
}

/** One table serves every stack width: ways of lying come narrowest first, and a stack takes the first so many. */
const stacksFor = ({ lyings, rest, height, worth }: Filling): Stacks => {
  const usable = lyings.filter((l) => l.height <= height && (rest[l.kind] ?? 0) > 0);
  const cell = Math.ceil(height / mostCells);
  const choices = usable.map(
    (l): Choice => ({ cells: Math.ceil(l.height / cell), value: worthOf(l, worth), most: rest[l.kind] ?? 0 }),
  );
  const table = filledFor(choices, Math.floor(height / cell));
  const within = (upTo: number, h: number): readonly Run[] =>
    [...table.taken(upTo, Math.floor(h / cell))].map(([index, times]) => {
      const l = usable[index] as Lying;
      return { kind: l.kind, turned: l.turned, times };
    });
  return { lyings: usable, within };
};

const worthOf = (l: Lying, worth: readonly number[]): number => l.width * l.height * (worth[l.kind] ?? 1);

const leadStack = ({ job, lead, height, rest }: Filling, stacks: Stacks): Stack => {
  const upTo = upToWidth(stacks.lyings, lead.width);
  const pure = Math.min(rest[lead.kind] ?? 0, Math.floor(height / lead.height));
  const runs = [{ kind: lead.kind, turned: lead.turned, times: pure }];
  const more = stacks.within(upTo, height - pure * lead.height);
  return clamped(job, stackOf(job, together([...runs, ...more])), rest) ?? stackOf(job, runs);
};

const upToWidth = (lyings: readonly Lying[], width: number): number => {
  let n = 0;
  while (n < lyings.length && (lyings[n] as Lying).width <= width) n++;
  return n;
};

interface Option {
  readonly stack: Stack;
  readonly value: number;
  readonly most: number;
}

/** For each width the best mixed stack; for each way of lying as many as fit, with the space below them filled. */
const optionsFor = ({ job, rest, height, worth, room }: Room, { lyings, within }: Stacks): readonly Option[] => {
  const options: Option[] = [];
  const seen = new Set<string>();
  const offer = (runs: readonly Run[]): void => {
    if (runs.length === 0) return;
    const stack = clamped(job, stackOf(job, together(runs)), rest);
    if (stack === null) return;
    const key = stack.runs.map((r) => `${r.kind}${r.turned}${r.times}`).join();
    if (seen.has(key)) return;
    seen.add(key);
    let value = 0;
    let most = Number.POSITIVE_INFINITY;
    const used = new Map<number, number>();
    for (const r of stack.runs) {
      const k = job.kinds[r.kind] as Kind;
      value += r.times * k.width * k.height * (worth[r.kind] ?? 1);
      used.set(r.kind, (used.get(r.kind) ?? 0) + r.times);
    }
    for (const [kind, n] of used) most = Math.min(most, Math.floor((rest[kind] ?? 0) / n));
    if (most > 0) options.push({ stack, value, most });
  };
  lyings.forEach((l, i) => {
    if (l.width > room) return;
    const upTo = i + 1 === lyings.length || (lyings[i + 1] as Lying).width > l.width ? i + 1 : 0;
    if (upTo > 0) offer(within(upTo, height));
    const pure = Math.min(rest[l.kind] ?? 0, Math.floor(height / l.height));
    const below = height - pure * l.height;
    if (pure === 0) return;
    const runs = [{ kind: l.kind, turned: l.turned, times: pure }];
    offer(below > 0 ? [...runs, ...within(upToWidth(lyings, l.width), below)] : runs);
  });
  return options;
};

const together = (runs: readonly Run[]): readonly Run[] => {
  const all: Run[] = [];
  for (const run of runs) {
    const same = all.findIndex((r) => r.kind === run.kind && r.turned === run.turned);
    if (same < 0) all.push(run);
    else all[same] = { ...run, times: run.times + (all[same] as Run).times };
  }
  return all;
};

/** The stack with no more of a kind than is left; null when nothing remains of it. */
const clamped = (job: Job, stack: Stack, rest: readonly number[]): Stack | null => {
  const left = new Map<number, number>();
  let whole = true;
  const runs: Run[] = [];
  for (const run of stack.runs) {
    const have = left.get(run.kind) ?? rest[run.kind] ?? 0;
    const times = Math.min(run.times, have);
    left.set(run.kind, have - times);
    if (times < run.times) whole = false;
    if (times > 0) runs.push({ ...run, times });
  }
  if (whole) return stack;
  return runs.length === 0 ? null : stackOf(job, runs);
};
