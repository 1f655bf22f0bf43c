// A top seen as a block: its blocks and plain pieces are the patches, each by its place, and its steps join them.
import type { SewnBlock } from '#craft/accuracy';
import { entryName } from '#craft/blocks';
import type { TopPlan } from '#craft/plan';
import { outlineOfPlaced, placeOfThing, type TopThing } from '#craft/setting';

/** A block goes by the name that the steps have for its entry, and has no cut of its own. */
export const topAsBlock = ({ set, pieces, steps }: TopPlan): SewnBlock => {
  const labels = new Map(pieces.flatMap(({ label, strips }) => strips.map((strip) => [strip, label] as const)));
  const placeOf = (thing: TopThing): number => placeOfThing(set, thing);
  return {
    finished: [set.width, set.height],
    patches: [
      ...set.placed.map((placed) => ({ piece: entryName(placed), points: outlineOfPlaced(placed) })),
      ...set.strips.map(({ points }, strip) => ({ piece: labels.get(strip) ?? '', points })),
    ],
    pieces: pieces.map(({ label, cut }) => ({ label, cut })),
    steps: steps.map(({ join, things: [first, second], unfinished }) => ({
      join,
      patches: [first.map(placeOf), second.map(placeOf)],
      unfinished,
    })),
  };
};
