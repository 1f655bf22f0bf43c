// Of the shortest strips found, which layout is cut, and what would less work cost? Strips in, a drawn layout out.
import { easeLadder, inCuttingOrder, type Rung } from '#craft/ease';
import { type Length, length } from '#craft/measure';
import { type IntegerSolver, lengthOf, type StripPattern, type StripUse } from '#craft/strips';
import type { Demand, EaseRung, Layout } from './cloth.ts';
import { type ScaledJob, unitsOf } from './kinds.ts';
import { layoutOf } from './lay.ts';

/** `least`: no longer than the shortest; `easy`: the least work that one more step of the shop holds. */
export interface Easing {
  readonly choice: 'least' | 'easy';
  /** The longest layouts that the purchase for a length holds, and those of one and more steps beyond. */
  readonly within: (least: Length) => readonly [Length, Length, ...Length[]];
}

export interface EasingTask {
  readonly scaled: ScaledJob;
  readonly demands: readonly Demand[];
  readonly width: Length;
  /** The shortest found, of exactly the demand. */
  readonly strips: readonly StripUse[];
  /** More strips that may be used. */
  readonly pool?: readonly StripPattern[];
  readonly solver: IntegerSolver | null;
  /** Without it the strips stand as they were found. */
  readonly easing: Easing | null;
}

/** The ladder begins with what is the least work at the least length; empty without easing, or without pieces. */
export const easedLayout = (task: EasingTask): { readonly layout: Layout; readonly ladder: readonly EaseRung[] } => {
  const { scaled, demands, width, easing } = task;
  const drawn = (strips: readonly StripUse[]): Layout => layoutOf({ scaled, demands, strips, width });
  if (easing === null || task.strips.length === 0)
    return { layout: drawn(inCuttingOrder(scaled.job, task.strips)), ladder: [] };
  const least = lengthOf(task.strips);
  const within = easing.within(toLength(scaled, least)).map((longest) => unitsOf(scaled, longest));
  const rungs = easeLadder({
    ...task,
    job: scaled.job,
    longests: [least, ...within],
    hardest: easing.choice === 'least' ? 0 : 2,
  });
  const longest = easing.choice === 'least' ? least : Math.max(least, within[1] as number);
  const chosen = rungs.findLast(({ effort }) => effort.length <= longest) as Rung;
  return {
    layout: drawn(chosen.strips),
    ladder: rungs.map(({ effort, own, strips }) => ({
      ...effort,
      length: toLength(scaled, effort.length),
      own,
      chosen: strips === chosen.strips,
    })),
  };
};

const toLength = ({ unit, grid }: ScaledJob, units: number): Length => length((units * unit) / grid.per);
