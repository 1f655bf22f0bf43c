// One document open twice: what was not kept yet is carried over onto what the other has kept.

import { patchesBetween } from './between.ts';
import type { Json } from './json.ts';
import { PatchMisfit, patched } from './patch.ts';
import { rebased } from './rebase.ts';
import type { Editing, Step } from './steps.ts';

/**
 * @param of.common as last kept or read
 * @param of.mine   what I have made of it since
 * @param of.hers   what is kept now
 * @returns hers with my steps after it; null where both changed one place, and a person must choose
 */
export const merged = <Document>(of: {
  readonly common: Editing<Document>;
  readonly mine: Editing<Document>;
  readonly hers: Editing<Document>;
}): Editing<Document> | null => {
  const { common, mine, hers } = of;
  const over = patchesBetween(common.document as Json, hers.document as Json);
  const own = stepsSince(common, mine);
  if (own.length === 0) return hers;
  const joined = rebased(
    own.flatMap(({ patches }) => patches),
    over,
  );
  if (joined === null) return null;
  const steps = regrouped(own, joined);
  try {
    const document = steps.reduce((before, { patches }) => patched(before, patches), hers.document as Json) as Document;
    const all = [...hers.steps.slice(0, hers.done), ...steps];
    return { document, steps: all, done: all.length };
  } catch (error) {
    if (error instanceof PatchMisfit) return null;
    throw error;
  }
};

/** My steps one by one; where I have undone what is kept, all that differs is one step. */
const stepsSince = <Document>(common: Editing<Document>, mine: Editing<Document>): readonly Step[] => {
  const before = common.steps.slice(0, common.done);
  const isOnward = mine.done >= common.done && before.every((step, i) => step === mine.steps[i]);
  if (isOnward) return mine.steps.slice(common.done, mine.done);
  const patches = patchesBetween(common.document as Json, mine.document as Json);
  return patches.length === 0 ? [] : [{ what: 'Changes made here', patches }];
};

const regrouped = (steps: readonly Step[], patches: readonly Step['patches'][number][]): readonly Step[] => {
  let from = 0;
  return steps.map((step) => {
    const own = patches.slice(from, from + step.patches.length);
    from += step.patches.length;
    return { what: step.what, patches: own };
  });
};
