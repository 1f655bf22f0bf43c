// Which units to sew before a demonstration, so that every step can be shown at once: the fewest.
import { type BlockPlan, type LaidAlone, layAlone, type PlannedStep, type QuiltPlan } from '#craft';

export interface Sample {
  /** The step that makes it, by index. */
  readonly step: number;
  readonly count: number;
}

/**
 * Every step is shown once, with the units that were sewn before the class's eyes as far as they go. A step takes a unit up for good, and a
 * unit is made once in the showing; so of each unit one less is sewn beforehand than the steps take, and no fewer would do.
 *
 * @returns in the order of sewing; none where every step goes on from the last
 */
export const samplesFor = ({ steps }: Pick<BlockPlan, 'steps'>): readonly Sample[] => {
  const makers = new Map(steps.map((step, index) => [step.makes, index] as const));
  const taken = new Map<number, number>();
  for (const step of steps) {
    for (const part of partsTaken(step)) {
      const maker = makers.get(part);
      if (maker !== undefined) taken.set(maker, (taken.get(maker) ?? 0) + 1);
    }
  }
  return [...taken]
    .filter(([, count]) => count > 1)
    .map(([step, count]) => ({ step, count: count - 1 }))
    .toSorted((a, b) => a.step - b.step);
};

/** Patches that the samples are made of, by the label of their kind. */
export const samplePieces = (block: Pick<BlockPlan, 'steps' | 'patches'>): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const { step, count } of samplesFor(block)) {
    for (const patch of new Set(block.steps[step]?.patches.flat())) {
      const label = block.patches[patch]?.piece as string;
      counts.set(label, (counts.get(label) ?? 0) + count);
    }
  }
  return counts;
};

/** The cloth that the samples take besides the quilt, cut by themselves. */
export const sampleCloths = (plan: QuiltPlan, block: BlockPlan): readonly LaidAlone[] =>
  layAlone(plan, block, samplePieces(block));

/** A seam that is closed has both its parts in hand already: of them only the unit of the step before counts. */
const partsTaken = ({ join, kind }: PlannedStep): readonly string[] => (kind === 'partial-close' ? [join[0]] : join);
