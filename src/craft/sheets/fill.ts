// Given what is still to be cut and what each piece is worth: what goes on the next sheet? One good answer, not the best;
// asked again with other chances it gives another.
import { patternOf, type Run, type StackUse, type StripPattern, stackOf } from '#craft/strips';
import type { Chance } from '#ground/chance';
import { type Choice, type Filled, filledFor } from './filled.ts';
import type { Sheet, SheetJob } from './job.ts';
import { type Lie, liesOn } from './lies.ts';

/** A job with the ways in which its pieces lie on each of its sheets. */
export interface SheetTask {
  readonly job: SheetJob;
  readonly lies: readonly (readonly Lie[])[];
  /** Heights that a strip may have, rising, where it must be as high as some piece; else null. */
  readonly heights: readonly number[] | null;
}

export const sheetTaskFor = (job: SheetJob): SheetTask => {
  const lies = job.sheets.map((sheet) => liesOn(sheet, job));
  const isAny = job.cutting.stages === 2 || job.cutting.stripHeights === 'any';
  const heights = new Set(lies.flatMap((own) => own.map(({ height }) => height)));
  return { job, lies, heights: isAny ? null : [...heights].sort((a, b) => a - b) };
};

/** A strip of these parts, as high as it may be. */
export const stripOn = ({ heights }: SheetTask, parts: readonly StackUse[]): StripPattern => {
  const strip = patternOf(parts);
  return heights === null
    ? strip
    : { ...strip, height: heights.find((height) => height >= strip.height) ?? strip.height };
};

/** One sheet cut. */
export interface SheetPattern {
  readonly sheet: number;
  readonly strips: readonly StripPattern[];
  /** Pieces of each kind. */
  readonly counts: Int32Array;
}

export interface Filling {
  readonly task: SheetTask;
  readonly sheet: number;
  /** Pieces of each kind still to be cut. */
  readonly rest: Int32Array;
  /** Of one piece of each kind, above 0. */
  readonly worth: Float64Array;
  /** Null for the plainest choices. */
  readonly chance: Chance | null;
}

export interface FilledSheet {
  readonly pattern: SheetPattern;
  /** Worth of the pieces on it. */
  readonly value: number;
  /** Table cells looked at. */
  readonly work: number;
}

/** What is left while one sheet fills; changed in place. */
interface Open {
  readonly filling: Filling;
  readonly lies: readonly Lie[];
  readonly width: number;
  readonly rest: Int32Array;
  room: number;
  work: number;
}

/** Never more of a kind than is left; no strips where nothing fits. */
export const filledSheet = (filling: Filling): FilledSheet => {
  const { task, sheet, rest, worth } = filling;
  const { width, height } = task.job.sheets[sheet] as Sheet;
  const open: Open = {
    filling,
    lies: task.lies[sheet] as readonly Lie[],
    width,
    rest: rest.slice(),
    room: height,
    work: 0,
  };
  const strips: StripPattern[] = [];
  for (;;) {
    const strip = task.job.cutting.stages === 2 ? singlesStrip(open) : stacksStrip(open);
    if (strip === null) break;
    strips.push(strip);
    open.room -= strip.height;
  }
  const counts = rest.map((n, i) => n - (open.rest[i] as number));
  const value = counts.reduce((sum, n, i) => sum + n * (worth[i] as number), 0);
  return { pattern: { sheet, strips, counts }, value, work: open.work };
};

const usableIn = ({ lies, rest, room }: Open): readonly Lie[] =>
  lies.filter(({ kind, height }) => height <= room && (rest[kind] as number) > 0);

const take = (rest: Int32Array, run: Run): void => {
  rest[run.kind] = (rest[run.kind] as number) - run.times;
};

/** No more of a run than is left: a kind may have been taken both ways. */
const bounded = (rest: Int32Array, kind: number, times: number): number => Math.min(times, rest[kind] as number);

// Strips of single pieces: one table over the width tells what a strip of every height is worth.

const singlesStrip = (open: Open): StripPattern | null => {
  const usable = usableIn(open);
  if (usable.length === 0) return null;
  const { width, filling } = open;
  const table = filledFor(choicesAcross(usable, filling, open.rest), width);
  open.work += table.work;
  const level = levelToCut(open, table);
  const parts: StackUse[] = [];
  let left = width;
  const put = (lie: Lie, wanted: number): void => {
    const times = bounded(open.rest, lie.kind, wanted);
    if (times === 0) return;
    const run = { kind: lie.kind, turned: lie.turned, times: 1 };
    take(open.rest, { ...run, times });
    left -= times * lie.width;
    parts.push({ stack: stackOf(stackJob(filling, width), [run]), times });
  };
  table.taken(level, width, (i, times) => put(usable[i] as Lie, times));
  const highest = table.ranks[level] as number;
  fillUp({ open, usable: usable.filter(({ height }) => height <= highest), left: () => left, put });
  return patternOf(parts);
};

/** Where a kind was counted both ways, room may be left over. */
const fillUp = (of: {
  readonly open: Open;
  readonly usable: readonly Lie[];
  readonly left: () => number;
  readonly put: (lie: Lie, times: number) => void;
}): void => {
  const { open, usable, left, put } = of;
  for (let before = -1; before !== left(); ) {
    before = left();
    const fitting = usable.filter(({ kind, width }) => width <= before && (open.rest[kind] as number) > 0);
    if (fitting.length === 0) return;
    const table = filledFor(choicesAcross(fitting, open.filling, open.rest), before);
    open.work += table.work;
    table.taken(table.ranks.length - 1, before, (i, times) => put(fitting[i] as Lie, times));
  }
};

const choicesAcross = (lies: readonly Lie[], { worth }: Filling, rest: Int32Array): readonly Choice[] =>
  lies.map(({ kind, width, height }) => ({
    size: width,
    rank: height,
    value: worth[kind] as number,
    most: rest[kind] as number,
  }));

const stackJob = ({ task }: Filling, width: number): { width: number; kinds: SheetJob['kinds'] } => ({
  width,
  kinds: task.job.kinds,
});

/** Levels that are worth more than all below them. */
interface Step {
  readonly level: number;
  /** Height or width of the level. */
  readonly size: number;
  readonly value: number;
}

const stepsOf = ({ ranks, values }: Filled, within: number): readonly Step[] => {
  const steps: Step[] = [];
  ranks.forEach((size, level) => {
    const value = values(level)[within] as number;
    const before = steps.at(-1);
    if (before === undefined || value > before.value + 1e-12) steps.push({ level, size, value });
  });
  return steps;
};

/**
 * The strip to cut first: of those that a whole sheet would best be made of the tallest; by chance the one worth most for
 * its height, or that of the tallest piece.
 */
const levelToCut = (open: Open, across: Filled): number => {
  const { chance } = open.filling;
  const steps = stepsOf(across, open.width);
  const way = chance === null ? 0 : chance();
  if (way > 0.9) return (steps.at(-1) as Step).level;
  if (way > 0.6) {
    const dense = ({ value, size }: Step): number => (value / size) * (chance === null ? 1 : 1 + 0.2 * chance());
    return densestOf(steps, dense).level;
  }
  const table = filledFor(
    steps.map(({ size, value }) => ({ size, rank: 0, value, most: Number.POSITIVE_INFINITY })),
    open.room,
  );
  open.work += table.work;
  const taken: number[] = [];
  table.taken(0, open.room, (k) => taken.push((steps[k] as Step).level));
  if (chance !== null && way > 0.45) return taken[Math.floor(chance() * taken.length)] as number;
  return Math.max(...taken);
};

const densestOf = (steps: readonly Step[], dense: (step: Step) => number): Step =>
  steps.map((step) => ({ step, dense: dense(step) })).reduce((a, b) => (b.dense > a.dense ? b : a)).step;

// Strips of stacks: a leading piece sets the height, then the stack worth most for its width comes beside it, and so on.

/** Heights tried for one strip. */
const heightsTried = 3;

const stacksStrip = (open: Open): StripPattern | null => {
  const usable = usableIn(open);
  if (usable.length === 0) return null;
  const lead = leadOf(open, usable);
  const least = usable.reduce((low, { height }) => Math.min(low, height), open.room);
  let best: { readonly strip: StripPattern; readonly rest: Int32Array; readonly dense: number } | null = null;
  for (const height of heightsFor({ open, usable, lead })) {
    const rest = open.rest.slice();
    const strip = stripOf({ open, usable, lead, height, rest });
    // what is too low for any piece is lost with this strip
    const used = open.room - strip.height < least ? open.room : strip.height;
    let value = 0;
    for (let i = 0; i < rest.length; i++)
      value += ((open.rest[i] as number) - (rest[i] as number)) * (open.filling.worth[i] as number);
    const dense = value / used;
    if (best === null || dense > best.dense + 1e-12) best = { strip, rest, dense };
  }
  if (best === null) return null;
  open.rest.set(best.rest);
  return best.strip;
};

/** The tallest, or by chance nearly so; or the one worth most. */
const leadOf = ({ filling }: Open, usable: readonly Lie[]): Lie => {
  const { chance, worth } = filling;
  const byWorth = chance !== null && chance() < 0.4;
  const weight = ({ kind, width, height }: Lie): number =>
    (byWorth ? (worth[kind] as number) : height + width / 1e6) * (chance === null ? 1 : 1 - 0.3 * chance());
  return usable.map((lie) => ({ lie, weight: weight(lie) })).reduce((a, b) => (b.weight > a.weight ? b : a)).lie;
};

const heightsFor = (of: {
  readonly open: Open;
  readonly usable: readonly Lie[];
  readonly lead: Lie;
}): ReadonlySet<number> => {
  const { open, usable, lead } = of;
  const { cutting } = open.filling.task.job;
  const chance = open.filling.chance ?? (() => 0.5);
  const heights = new Set([lead.height]);
  const some = (): number => (usable[Math.floor(chance() * usable.length)] as Lie).height;
  const isAny = cutting.stages === 3 && cutting.stripHeights === 'any';
  const offers = isAny
    ? [open.room, lead.height + some(), some() + some(), lead.height * 2]
    : [some(), some(), some(), some()];
  const first = Math.floor(chance() * offers.length);
  for (let k = 0; k < offers.length && heights.size < heightsTried; k++) {
    const height = offers[(first + k) % offers.length] as number;
    if (height >= lead.height && height <= open.room) heights.add(height);
  }
  return heights;
};

const stripOf = (of: {
  readonly open: Open;
  readonly usable: readonly Lie[];
  readonly lead: Lie;
  readonly height: number;
  readonly rest: Int32Array;
}): StripPattern => {
  const { open, lead, height, rest } = of;
  const { chance } = open.filling;
  const job = stackJob(open.filling, open.width);
  const parts: StackUse[] = [];
  let room = open.width;
  const put = (runs: readonly Run[], most: number): void => {
    const stack = stackOf(job, runs);
    let times = Math.min(most, Math.floor(room / stack.width));
    for (const { kind } of stack.runs) {
      // a kind may lie in it both ways
      const each = stack.runs.reduce((all, run) => all + (run.kind === kind ? run.times : 0), 0);
      times = Math.min(times, Math.floor((rest[kind] as number) / each));
    }
    times = Math.max(1, times);
    for (const run of stack.runs) take(rest, { ...run, times: run.times * times });
    room -= stack.width * times;
    parts.push({ stack, times });
  };
  const within = of.usable.filter((lie) => lie.height <= height);
  // the lead, and below it what no wider piece would need
  rest[lead.kind] = (rest[lead.kind] as number) - 1;
  const below = stackFor({
    open,
    lies: within,
    rest,
    room: lead.width,
    height: height - lead.height,
    only: lead.width,
  });
  rest[lead.kind] = (rest[lead.kind] as number) + 1;
  put(together([{ kind: lead.kind, turned: lead.turned, times: 1 }, ...(below ?? [])]), Number.POSITIVE_INFINITY);
  for (;;) {
    const runs = stackFor({ open, lies: within, rest, room, height, only: null });
    if (runs === null) return stripOn(open.filling.task, parts);
    put(runs, chance !== null && chance() < 0.5 ? 1 : Number.POSITIVE_INFINITY);
  }
};

/**
 * The runs worth most for the width that they take; `only` asks for the best within that width instead. By chance the
 * stack is chosen as part of the best row of stacks.
 */
const stackFor = (of: {
  readonly open: Open;
  readonly lies: readonly Lie[];
  readonly rest: Int32Array;
  readonly room: number;
  readonly height: number;
  readonly only: number | null;
}): readonly Run[] | null => {
  const { open, rest, room, height, only } = of;
  const { worth, chance } = open.filling;
  const lies = of.lies.filter((lie) => lie.width <= room && lie.height <= height && (rest[lie.kind] as number) > 0);
  if (lies.length === 0) return null;
  const table = filledFor(
    lies.map(({ kind, width: rank, height: size }) => ({
      size,
      rank,
      value: worth[kind] as number,
      most: rest[kind] as number,
    })),
    height,
  );
  open.work += table.work;
  const level = only === null ? chosenWidth({ open, table, height, room, chance }) : table.ranks.length - 1;
  const runs: Run[] = [];
  const left = new Map<number, number>();
  table.taken(level, height, (i, wanted) => {
    const { kind, turned } = lies[i] as Lie;
    const have = left.get(kind) ?? (rest[kind] as number);
    const times = Math.min(wanted, have);
    left.set(kind, have - times);
    if (times > 0) runs.push({ kind, turned, times });
  });
  return runs;
};

const chosenWidth = (of: {
  readonly open: Open;
  readonly table: Filled;
  readonly height: number;
  readonly room: number;
  readonly chance: Chance | null;
}): number => {
  const { open, table, height, room, chance } = of;
  const steps = stepsOf(table, height);
  if (chance === null || chance() < 0.5) {
    const row = filledFor(
      steps.map(({ size, value }) => ({ size, rank: 0, value, most: Math.min(4, Math.floor(room / size)) })),
      room,
    );
    open.work += row.work;
    const taken: number[] = [];
    row.taken(0, room, (k) => taken.push((steps[k] as Step).level));
    return Math.max(...taken);
  }
  const narrowest = table.ranks[0] as number;
  const dense = ({ size, value }: Step): number => {
    const used = room - size < narrowest ? room : size;
    return (value / used) * (1 + 0.1 * chance());
  };
  return densestOf(steps, dense).level;
};

const together = (runs: readonly Run[]): readonly Run[] => {
  const all: Run[] = [];
  for (const run of runs) {
    const same = all.findIndex(({ kind, turned }) => kind === run.kind && turned === run.turned);
    if (same < 0) all.push(run);
    else all[same] = { ...run, times: run.times + (all[same] as Run).times };
  }
  return all;
};
