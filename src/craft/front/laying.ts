// The search for what takes least cloth, led on for as many rounds as one likes while the front is found.
import type { Found, Front } from './found.ts';
import type { LeastLaid } from './least-laid.ts';
import type { Choice } from './likely.ts';
import { inGroups, type QuiltParts } from './parts.ts';

export type Laying = ReturnType<typeof openLaying>;

/** Lays out what may take least cloth for as many rounds as one likes, and tells the bound as it rises. */
export const openLaying = (of: {
  readonly search: Generator<LeastLaid, LeastLaid, void>;
  readonly parts: QuiltParts;
  readonly groups: number;
  readonly found: Found;
}) => {
  const { search, parts, groups, found } = of;
  let at = search.next();
  return {
    goOn: function* (rounds: number): Generator<Front, void, void> {
      let front = found.front();
      for (let round = 0; round < rounds && at.done !== true; round++) {
        at = search.next();
        if (found.raiseCloth(at.value.bound)) front = found.front();
        yield front;
      }
    },
    least: (most: number): readonly Choice[] => at.value.least(most).map((taken) => inGroups(parts, taken, groups)),
  };
};
