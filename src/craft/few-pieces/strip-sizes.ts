// How low can one strip be that holds given pieces? For every way to take some of each kind at once, exactly.
import type { Cutting, Job, StackUse, StripPattern } from '#craft/strips';
import { patternOf, type Run, stackOf } from '#craft/strips';
import { amongFor, type CountSpace, firstKindOf, takenOf, writeParts, writePartsAmong } from './count-space.ts';
import { type Fronts, frontsBy, gather, isIn, lowest, narrowest } from './fronts.ts';
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
  const stacks = yield* stackFrontsFor(task, lies);
  const strips = yield* stripFrontsFor(task, stacks);
  return {
    least: Float64Array.from({ length: space.size }, (_, way) => lowest(strips, way)),
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
  return frontsBy(space.size, (way, gathering) => {
    if (way === 0 || (cutting.stages === 2 && !singles.has(way))) return 0;
    widths.forEach((width, w) => {
      let height = 0;
      for (let k = 0; k < lies.length; k++) {
        const taken = takenOf(space, way, k);
        if (taken > 0) height += taken * ((flattest[w] as number[])[k] as number);
      }
      const allowed = stripHeight(height);
      if (allowed <= mostHeight && allowed < Number.POSITIVE_INFINITY && isWorthIt(way, width * height))
        gather(gathering, width, allowed);
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

const stripFrontsFor = (task: StripTask, stacks: Fronts): Generator<void, Fronts, void> => {
  const { space, job } = task;
  const isWorthIt = worthTryingIn(task);
  const parts = new Int32Array(space.size);
  const among = amongFor(space, (way) => isIn(stacks, way));
  return frontsBy(space.size, (way, gathering, before) => {
    if (way === 0) gather(gathering, 0, 0);
    if (way === 0) return 0;
    const count = writePartsAmong(among, way, parts);
    for (let p = 0; p < count; p++) {
      const stack = parts[p] as number;
      const rest = way - stack;
      for (let i = stacks.starts[stack] as number; i < (stacks.starts[stack + 1] as number); i++) {
        const width = stacks.widths[i] as number;
        const height = stacks.heights[i] as number;
        for (let j = before.starts[rest] as number; j < (before.starts[rest + 1] as number); j++) {
          const all = width + (before.widths[j] as number);
          const high = Math.max(height, before.heights[j] as number);
          if (all <= job.width && isWorthIt(way, all * high)) gather(gathering, all, high);
        }
      }
    }
    return perWay + count;
  });
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
  readonly stacks: Fronts;
  readonly strips: Fronts;
  readonly way: number;
}

/** Takes stacks off the way one by one, each time one that leaves room for the rest. */
const rebuilt = ({ task, lies, stacks, strips, way }: Rebuilding): StripPattern => {
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
    if (next === undefined) throw new Error(`no strip of height ${height} holds way ${way}`);
    const width = narrowest(stacks, next, height);
    parts.push({ stack: stackOf(job, runsOf({ space, lies, way: next, width })), times: 1 });
    room -= width;
    rest -= next;
  }
  return { ...patternOf(parts), height };
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
