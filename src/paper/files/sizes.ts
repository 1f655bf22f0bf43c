// Other sizes of a quilt, planned to be printed beside it.
import { type Problem, planSize, type QuiltPlan } from '#craft';
import type { IntegerSolver } from '#craft/strips';
import { done, type Outcome } from '#ground/outcome';

export interface PlannedSize {
  readonly id: string;
  readonly title: string;
  readonly plan: QuiltPlan;
}

export interface SizesAsked {
  readonly plan: QuiltPlan;
  /** Of sizes that the document has. */
  readonly ids: readonly string[];
  readonly solver: IntegerSolver | null;
  /** Hears of each before it is planned: it takes as long as the quilt itself. */
  readonly say: (what: string) => void;
}

export const sizesPlanned = ({ plan, ids, solver, say }: SizesAsked): Outcome<readonly PlannedSize[], Problem> => {
  const { quilt } = plan;
  const sizes: PlannedSize[] = [];
  for (const id of ids) {
    say(`Planning the size ${id} …`);
    const sized = planSize({ quilt, id, options: solver === null ? { budget: { steps: 0 } } : { solver } });
    if (!sized.ok) return sized;
    sizes.push({ id, title: quilt.sizes.find((size) => size.id === id)?.title ?? id, plan: sized.value });
  }
  return done(sizes);
};
