// A layout as nested cuts: across the cloth into strips, along a strip into parts, across a part into pieces. Sizes are whole
// units; a piece smaller than its place is trimmed.
import type { InstanceJob, ItemShare, LayoutProblem } from '#craft/layout-instance';
import type { Kind, Run, Stack, StripUse } from '#craft/strips';
import { heightOf, widthOf } from '#craft/strips';

export type Direction = 'across' | 'along';

export type CutNode =
  | { readonly cut: Direction; readonly parts: readonly CutPart[] }
  | { readonly piece: number; readonly rot?: true };

/** `size` is a height for a cut across, a width for one along. */
export interface CutPart {
  readonly size: number;
  readonly times?: number;
  readonly node: CutNode;
}

/** Which item a piece of a kind is, and how it lies there. */
export type Draw = (run: Run) => CutNode;

/**
 * Gives out the items of each kind one after the other; pieces beyond the demand are the kind's last item. Where every kind is one
 * item, asking twice gives the same.
 */
export const drawFor = (instance: InstanceJob): Draw => {
  const { job, shares } = instance;
  const queues = shares.map((each) => each.map(({ count }) => count));
  const itemOf = (kind: number): ItemShare => {
    const queue = queues[kind] as number[];
    const at = Math.max(
      0,
      queue.findIndex((left) => left > 0),
    );
    const isDone = queue.every((left) => left <= 0);
    const place = isDone ? queue.length - 1 : at;
    queue[place] = (queue[place] as number) - 1;
    return (shares[kind] as readonly ItemShare[])[place] as ItemShare;
  };
  return ({ kind, turned }) => {
    const { item, turned: itemTurned } = itemOf(kind);
    const { width, height } = job.kinds[kind] as Kind;
    const lies = width !== height && turned !== itemTurned;
    return lies ? { piece: item, rot: true } : { piece: item };
  };
};

/** One after the other, or all alike at once. */
export const stripsNode = (of: {
  readonly strips: readonly StripUse[];
  readonly instance: InstanceJob;
  readonly problem: LayoutProblem;
  readonly draw: Draw;
}): CutNode => {
  const { strips, instance, problem, draw } = of;
  const [first, second] =
    problem.firstCut === 'across' ? (['across', 'along'] as const) : (['along', 'across'] as const);
  const stackNode = (stack: Stack): CutNode => {
    const pieces = stack.runs.flatMap((run) => Array.from({ length: run.times }, () => run));
    const [only] = pieces;
    if (pieces.length === 1 && only !== undefined) return draw(only);
    const heightsOf = (run: Run): number => heightOf(instance.job.kinds[run.kind] as Kind, run.turned);
    return { cut: first, parts: merged(pieces.map((run) => ({ size: heightsOf(run), node: draw(run) }))) };
  };
  const stripNode = ({ pattern }: StripUse): CutNode => ({
    cut: second,
    parts: merged(
      pattern.parts.flatMap(({ stack, times }) =>
        Array.from({ length: times }, () => ({ size: widthIn(stack, instance), node: stackNode(stack) })),
      ),
    ),
  });
  const parts = strips.flatMap((strip) =>
    Array.from({ length: strip.times }, () => ({ size: strip.pattern.height, node: stripNode(strip) })),
  );
  return { cut: first, parts: merged(parts) };
};

const widthIn = (stack: Stack, { job }: InstanceJob): number =>
  Math.max(...stack.runs.map((run) => widthOf(job.kinds[run.kind] as Kind, run.turned)));

/** Equal neighbours are one part, cut so many times. */
const merged = (parts: readonly { readonly size: number; readonly node: CutNode }[]): readonly CutPart[] => {
  const together: CutPart[] = [];
  let before = '';
  for (const part of parts) {
    const key = JSON.stringify(part);
    const last = together.at(-1);
    if (key === before && last !== undefined) together[together.length - 1] = timesMore(last);
    else together.push(part);
    before = key;
  }
  return together;
};

const timesMore = ({ size, times, node }: CutPart): CutPart => ({ size, times: (times ?? 1) + 1, node });
