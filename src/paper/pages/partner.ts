// Which step closes a seam that another begins, and which began it.
import type { BlockPlan, PlannedStep } from '#craft';

/** The number of the step that closes a seam begun here, or that began the seam closed here; null for other seams. */
export const partnerOf = (block: BlockPlan, step: PlannedStep): number | null => {
  const { steps } = block;
  if (step.kind === 'partial-begin') return answering(steps.slice(step.number), 'partial-close');
  if (step.kind === 'partial-close') return answering(steps.slice(0, step.number - 1).toReversed(), 'partial-begin');
  return null;
};

/** The first step of a kind, passing over pairs that are begun and closed on the way: such seams nest. */
const answering = (steps: readonly PlannedStep[], kind: 'partial-begin' | 'partial-close'): number | null => {
  let open = 0;
  for (const step of steps) {
    if (step.kind === kind && open === 0) return step.number;
    if (step.kind === kind) open--;
    else if (step.kind === 'partial-begin' || step.kind === 'partial-close') open++;
  }
  return null;
};
