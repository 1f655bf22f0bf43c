// What can be printed of a plan, and taken along: handouts, other sizes, pictures of blocks.
import type { QuiltPlan } from '#craft';
import { picturesOf } from '#paper/files';
import { lessonsOf, lessonTitle } from '#paper/pages';

export interface PrintsSeen {
  /** Blocks that have a handout, in the order of the lessons. */
  readonly handouts: readonly Named[];
  readonly sizes: readonly Named[];
  /** By the name of their files, without an ending: the quilt first, then blocks. */
  readonly pictures: readonly Named[];
}

interface Named {
  readonly id: string;
  readonly title: string;
}

export const seePrints = (plan: QuiltPlan, _all: Readonly<Record<never, never>>): PrintsSeen => ({
  handouts: lessonsOf(plan).map((id) => ({ id, title: lessonTitle(plan, id) })),
  sizes: plan.quilt.sizes.map(({ id, title }) => ({ id, title: title || id })),
  pictures: picturesOf(plan).map(({ name, title }) => ({ id: name('colour'), title })),
});
