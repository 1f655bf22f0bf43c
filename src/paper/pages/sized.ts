// A quilt in several sizes: its name and measure in each, the cloths and blocks of them all, and how many each takes.
import type { BlockPlan, QuiltPlan } from '#craft';
import { checkSize } from '#paper/lengths';

/** A size that is printed beside the quilt as drawn. */
export interface SizedPlan {
  readonly title: string;
  readonly plan: QuiltPlan;
}

/** The name of a size with its finished measure. */
export const sizeTitle = ({ title, plan }: SizedPlan): string => `${title}, ${sizeOf(plan)}`;

export const sizeOf = ({ top, quilt }: QuiltPlan): string => checkSize([top.set.width, top.set.height], quilt);

/** The entry of the same block, colouring and mirroring in another size. */
export const sameEntry = (
  plan: QuiltPlan,
  entry: Pick<BlockPlan, 'id' | 'colouring' | 'mirror'>,
): BlockPlan | undefined =>
  plan.blocks.find(
    ({ id, colouring, mirror }) => id === entry.id && colouring === entry.colouring && mirror === entry.mirror,
  );

/** 0 where that size has none. */
export const countIn = (plan: QuiltPlan, entry: BlockPlan): number => sameEntry(plan, entry)?.count ?? 0;

/** Every cloth that any of the sizes uses, in the document's order, so that one list of letters serves all. */
export const withAllCloths = (plan: QuiltPlan, sizes: readonly SizedPlan[]): QuiltPlan => {
  if (sizes.length === 0) return plan;
  const plans = [plan, ...sizes.map((size) => size.plan)];
  return {
    ...plan,
    fabrics: plan.quilt.fabrics.flatMap(({ id }) => {
      const fabric = plans.flatMap(({ fabrics }) => fabrics).find((one) => one.id === id);
      return fabric === undefined ? [] : [fabric];
    }),
  };
};

/** Blocks of the quilt as drawn, then those that only another size has, each with the plan that it stands in. */
export const blocksOfAll = (
  plan: QuiltPlan,
  sizes: readonly SizedPlan[],
): readonly { readonly plan: QuiltPlan; readonly block: BlockPlan; readonly counts: readonly number[] }[] => {
  const plans = [plan, ...sizes.map((size) => size.plan)];
  return plans.flatMap((own, i) =>
    own.blocks
      .filter((block) => plans.slice(0, i).every((before) => countIn(before, block) === 0))
      .map((block) => ({ plan: own, block, counts: plans.map((other) => countIn(other, block)) })),
  );
};

/** "36 · 9": as many as each size takes, the quilt as drawn first. */
export const countsText = (counts: readonly number[], each = 1): string =>
  counts.map((count) => String(count * each)).join(' · ');
