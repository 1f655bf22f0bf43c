// What finishing takes once the top is sewn: backing joined, three layers held together, quilted in the straight lines that the
// plan spreads over the top, bound, sleeve and label sewn on. Its pieces are cut with all others.
import { inchIn, type Length, length } from '#craft/measure';
import { allWork, seamWork, type Work } from '#craft/minutes';
import type { QuiltPlan } from '#craft/plan';

type Finished = Pick<QuiltPlan, 'quilt' | 'top' | 'finish'>;

/** @source docs/formulas.md#time */
export const finishWork = (plan: Finished): Work =>
  allWork([backingWork(plan), layersWork(plan), bindingWork(plan), sleeveWork(plan), labelWork(plan)]);

const inchesIn = (value: number, { quilt }: Finished): number => value / inchIn[quilt.unit];

const joins = (plan: Finished, seam: number, total: number): Work =>
  seamWork({ seam: length(seam), total, matches: 0 }, plan.quilt.unit);

/** Panels are joined along their length. */
const backingWork = (plan: Finished): Work => {
  const { backing } = plan.finish;
  if (backing === null) return {};
  return joins(plan, backing.run === 'upright' ? backing.height : backing.width, backing.panels - 1);
};

/** A square foot of the top at a time is smoothed and pinned; each line of quilting is begun like a seam. */
const layersWork = (plan: Finished): Work => {
  const { batting } = plan.finish;
  if (batting === null) return {};
  const [wide, high] = [inchesIn(plan.top.set.width, plan), inchesIn(plan.top.set.height, plan)];
  const { upright, level } = batting.lines;
  return {
    baste: (wide * high) / 144,
    seam: upright.count + level.count,
    quilt: upright.count * high + level.count * wide,
  };
};

/** Joined at 45 degrees, sewn on from the front, turned and sewn down by hand. */
const bindingWork = (plan: Finished): Work => {
  const { binding } = plan.finish;
  if (binding === null) return {};
  const round = inchesIn(2 * (plan.top.set.width + plan.top.set.height), plan);
  return allWork([joins(plan, binding.cut * Math.SQRT2, binding.joins), { seam: 4, inch: round, hand: round }]);
};

/** One long seam makes the tube; both its long sides are sewn on by hand. */
const sleeveWork = (plan: Finished): Work => {
  const { sleeve } = plan.finish;
  if (sleeve === null) return {};
  const [long] = sleeve.finished;
  return allWork([
    joins(plan, sleeve.cut[1], sleeve.cuts.length - 1),
    joins(plan, long, 1),
    { hand: 2 * inchesIn(long, plan) },
  ]);
};

const labelWork = (plan: Finished): Work => {
  const { label } = plan.finish;
  return label === null ? {} : { hand: inchesIn(around(label.finished), plan) };
};

const around = ([width, height]: readonly [Length, Length]): number => 2 * (width + height);
