// How low can one strip be that holds given pieces? For every way to take some of each kind at once, exactly.
import type { Cutting, Job, StackUse, StripPattern } from '#craft/strips';
import { patternOf, type Run, stackOf } from '#craft/strips';
import { amongFor, type CountSpace, firstKindOf, takenOf, writeParts, writePartsAmong } from './count-space.ts';
import { type Fronts, frontsBy, isIn, lowest, narrowest, type Ranked, rankedFrom, type Writing } from './fronts.ts';
import { flattestLie, type Lie, liesOf, stripHeightsFor } from './lies.ts';

export interface StripTask {
  readonly job: Job;
  readonly cutting: Cutting;
  readonly space: CountSpace;
  /** Strips higher than this are of no use: a sheet's height. Infinity on cloth of open length. */
  readonly mostHeight: number;
  /** Strips with more cloth than this beside their pieces are of no use. Infinity where any are. */
  readonly mostWaste: number;
}

export interface StripSizes {
  /** Least height of a strip with exactly these pieces, by the number of the way; Infinity where the cloth is too narrow. */
  readonly least: Float64Array;
  /** Such a strip. */
  readonly stripFor: (way: number) => StripPattern;
}

/** Stacks first, for each way the widths and heights one may have; then strips, as sums of stacks side by side. */
export function* stripSizesBy(task: StripTask): Generator<void, StripSizes, void> {
  const { job, space, mostHeight } = task;
  const within = { width: job.width, height: mostHeight };
  const lies = job.kinds.map((kind) => liesOf(kind, within));
  const stacks = rankedFrom(yield* stackFrontsFor(task, lies));
  const strips = yield* stripFrontsFor(task, stacks);
  return {
    least: Float64Array.from(
      { length: space.size },
      (_, way) => stacks.all[lowest(strips, way)] ?? Number.POSITIVE_INFINITY,
    ),
    stripFor: (way) => rebuilt({ task, lies, stacks, strips, way }),
  };
}

/** One piece with two stages; any pieces one below the other with three. Heights are those that strips may have. */
const stackFrontsFor = (task: StripTask, lies: readonly (readonly Lie[])[]): Generator<void, Fronts, void> => {
  const { job, cutting, space, mostHeight } = task;
  const isWorthIt = worthTryingIn(task);
  const stripHeight = stripHeightsFor(job, cutting);
  const widths = [...new Set(lies.flatMap((each) => each.map((lie) => lie.width)))].sort((a, b) => a - b);
  const flattest = widths.map((width) =>
    lies.map((each) => flattestLie(each, width)?.height ?? Number.POSITIVE_INFINITY),
  );
  const singles = new Set(space.strides);
  return frontsBy(space.size, (way, into) => {
    if (way === 0 || (cutting.stages === 2 && !singles.has(way))) return 0;
    let lowestYet = Number.POSITIVE_INFINITY;
    widths.forEach((width, w) => {
      let height = 0;
      for (let k = 0; k < lies.length; k++) {
        const taken = takenOf(space, way, k);
        if (taken > 0) height += taken * ((flattest[w] as number[])[k] as number);
      }
      const allowed = stripHeight(height);
      if (allowed > mostHeight || allowed >= lowestYet || !isWorthIt(way, width * height)) return;
      lowestYet = allowed;
      into.widths.push(width);
      into.heights.push(allowed);
    });
    return widths.length;
  });
};

/** The parts of a way that may be its next stack: in rebuilding, where few ways are asked. */
const writeStacks = ({ cutting, space }: StripTask, way: number, into: Int32Array): number => {
  if (cutting.stages === 3) return writeParts({ space, way, having: 'first', into });
  into[0] = space.strides[firstKindOf(space, way)] as number;
  return 1;
};

/** What a way takes beside its pairs. */
const perWay = 10;

/** Heights of strips are those of stacks: each way notes the least width at every one of them, and keeps what is not beaten. */
const stripFrontsFor = (task: StripTask, { fronts: stacks, all }: Ranked): Generator<void, Fronts, void> => {
  const { space, job } = task;
  const isWorthIt = worthTryingIn(task);
  const parts = new Int32Array(space.size);
  const among = amongFor(space, (way) => isIn(stacks, way));
  const least = new Float64Array(all.length).fill(Number.POSITIVE_INFINITY);
  return frontsBy(space.size, (way, strips) => {
    if (way === 0) {
      strips.widths.push(0);
      strips.heights.push(0);
      return 0;
    }
    const count = writePartsAmong(among, way, parts);
    for (let p = 0; p < count; p++)
      noteBeside({ stacks, strips, stack: parts[p] as number, way, room: job.width, least });
    keepUnbeaten(least, strips, (width, place) => isWorthIt(way, width * (all[place] as number)));
    return perWay + count;
  });
};

interface Beside {
  readonly stacks: Fronts;
  readonly strips: Fronts;
  readonly stack: number;
  /** The stack and what is to lie beside it. */
  readonly way: number;
  readonly room: number;
  /** Least width at each height. */
  readonly least: Float64Array;
}

const noteBeside = ({ stacks, strips, stack, way, room, least }: Beside): void => {
  const rest = way - stack;
  const end = strips.starts[rest + 1] as number;
  for (let i = stacks.starts[stack] as number; i < (stacks.starts[stack + 1] as number); i++) {
    const width = stacks.widths[i] as number;
    const height = stacks.heights[i] as number;
    for (let j = strips.starts[rest] as number; j < end; j++) {
      const together = width + (strips.widths[j] as number);
      if (together > room) break;
      const beside = strips.heights[j] as number;
      const higher = Math.max(beside, height);
      if (together < (least[higher] as number)) least[higher] = together;
      // what follows is wider, and the strip no lower
      if (beside <= height) break;
    }
  }
};

/** Puts the widths that are less than at every lower height at the end of the lists, and forgets all. */
const keepUnbeaten = (
  least: Float64Array,
  into: Writing,
  isWanted: (width: number, place: number) => boolean,
): void => {
  const from = into.widths.length;
  let narrowestYet = Number.POSITIVE_INFINITY;
  for (let place = 0; place < least.length; place++) {
    const width = least[place] as number;
    if (width === Number.POSITIVE_INFINITY) continue;
    least[place] = Number.POSITIVE_INFINITY;
    if (width >= narrowestYet || !isWanted(width, place)) continue;
    narrowestYet = width;
    into.widths.push(width);
    into.heights.push(place);
  }
  turnRound(into.widths, from);
  turnRound(into.heights, from);
};

const turnRound = (list: number[], from: number): void => {
  for (let i = from, j = list.length - 1; i < j; i++, j--) {
    const first = list[i] as number;
    list[i] = list[j] as number;
    list[j] = first;
  }
};

/** Whether a way on so much cloth leaves no more of it than may be left. */
const worthTryingIn = ({ job, space, mostWaste }: StripTask): ((way: number, cloth: number) => boolean) => {
  if (mostWaste === Number.POSITIVE_INFINITY) return () => true;
  const areas = new Float64Array(space.size);
  job.kinds.forEach(({ width, height }, kind) => {
    for (let way = 0; way < space.size; way++)
      areas[way] = (areas[way] as number) + takenOf(space, way, kind) * width * height;
  });
  return (way, cloth) => cloth - (areas[way] as number) <= mostWaste;
};

interface Rebuilding {
  readonly task: StripTask;
  readonly lies: readonly (readonly Lie[])[];
  readonly stacks: Ranked;
  readonly strips: Fronts;
  readonly way: number;
}

/** Takes stacks off the way one by one, each time one that leaves room for the rest. */
const rebuilt = ({ task, lies, stacks: { fronts: stacks, all }, strips, way }: Rebuilding): StripPattern => {
  const { job, space } = task;
  const height = lowest(strips, way);
  const parts: StackUse[] = [];
  const nexts = new Int32Array(space.size);
  let rest = way;
  let room = job.width;
  while (rest > 0) {
    const n = writeStacks(task, rest, nexts);
    const next = nexts
      .subarray(0, n)
      .find((stack) => narrowest(stacks, stack, height) + narrowest(strips, rest - stack, height) <= room);
    if (next === undefined) throw new Error(`no strip of height ${all[height]} holds way ${way}`);
    const width = narrowest(stacks, next, height);
    parts.push({ stack: stackOf(job, runsOf({ space, lies, way: next, width })), times: 1 });
    room -= width;
    rest -= next;
  }
  return { ...patternOf(parts), height: all[height] as number };
};

const runsOf = (of: {
  readonly space: CountSpace;
  readonly lies: readonly (readonly Lie[])[];
  readonly way: number;
  readonly width: number;
}): readonly Run[] =>
  of.lies.flatMap((lies, kind) => {
    const times = takenOf(of.space, of.way, kind);
    return times === 0 ? [] : [{ kind, turned: flattestLie(lies, of.width)?.turned ?? false, times }];
  });
