// The job in the engine's own terms: shared factors taken out of widths and heights, the heights that a strip can have
// numbered from the lowest, and the one way that each kind lies best in a strip of each height.
import { attainableWithin, gcdOf, heightOf, type Job, type Kind, type Run, widthOf } from '#craft/strips';

/** One way for a piece to lie. */
export interface PieceLie {
  readonly kind: number;
  readonly turned: boolean;
  readonly width: number;
  readonly height: number;
}

/**
 * Widths and heights are whole numbers of their own units (`heightUnit` brings a height back to the job's). A level is a place in
 * `heights`. In a strip of some level a kind lies the narrowest way that is low enough: any other takes more width for nothing.
 */
export interface Task {
  readonly job: Job;
  readonly room: number;
  /** The most of the room that pieces can fill. */
  readonly fullest: number;
  readonly kinds: number;
  readonly demand: Int32Array;
  /** Distinct heights of lies, rising. */
  readonly heights: readonly number[];
  readonly heightUnit: number;
  readonly lies: readonly PieceLie[];
  /** By level · kinds + kind; `room` + 1 where the kind is too high. */
  readonly widths: Int32Array;
  /** Lowest level in which a kind fits. */
  readonly lowest: Int32Array;
}

export const taskFor = (job: Job): Task => {
  const raw = job.kinds.flatMap((kind, index) => liesOf(kind, index, job.width));
  const widthUnit = gcdOf(raw.map((l) => l.width));
  const heightUnit = gcdOf(raw.map((l) => l.height));
  const lies = raw.map((l) => ({ ...l, width: l.width / widthUnit, height: l.height / heightUnit }));
  const room = Math.floor(job.width / widthUnit);
  const heights = [...new Set(lies.map((l) => l.height))].sort((a, b) => a - b);
  const kinds = job.kinds.length;
  const widths = new Int32Array(heights.length * kinds).fill(room + 1);
  const lowest = new Int32Array(kinds).fill(heights.length);
  for (const lie of lies) {
    heights.forEach((height, level) => {
      const at = level * kinds + lie.kind;
      if (lie.height > height) return;
      widths[at] = Math.min(widths[at] as number, lie.width);
      lowest[lie.kind] = Math.min(lowest[lie.kind] as number, level);
    });
  }
  const demand = Int32Array.from(job.kinds, (k) => k.count);
  const sizes = lies.map((l) => ({ size: l.width, most: demand[l.kind] as number }));
  const fullest = Math.max(1, attainableWithin(room, sizes));
  return { job, room, fullest, kinds, demand, heights, heightUnit, lies, widths, lowest };
};

/** The run of one piece of a kind as it lies in a strip of this level. */
export const runIn = (task: Task, kind: number, level: number): Run => {
  const width = task.widths[level * task.kinds + kind] as number;
  const height = task.heights[level] as number;
  const lie = task.lies.find((l) => l.kind === kind && l.width === width && l.height <= height);
  return { kind, turned: lie?.turned ?? false, times: 1 };
};

const liesOf = (kind: Kind, index: number, room: number): PieceLie[] => {
  const ways = kind.mayTurn && kind.width !== kind.height ? [false, true] : [false];
  return ways
    .map((turned) => ({ kind: index, turned, width: widthOf(kind, turned), height: heightOf(kind, turned) }))
    .filter((lie) => lie.width <= room && kind.count > 0);
};
