// How high can a strip be at all? As high as some piece, or as some of the pieces below one another, none more often than it is wanted.
import type { Lies } from './lies.ts';

/** @returns heights from the lowest, none above `highest`; units of height */
export const stripHeightsWithin = (lies: Lies, highest: number): Int32Array => {
  if (lies.stripHeights === 'piece') return lies.heights.filter((height) => height <= highest);
  const reached = new Uint8Array(highest + 1);
  reached[0] = 1;
  for (let kind = 0; kind < lies.kinds; kind++) {
    const talls = tallsOf(lies, kind);
    for (let piece = 0; piece < (lies.demand[kind] as number); piece++) if (!reachMore(reached, talls)) break;
  }
  return Int32Array.from(reached.keys()).filter((height) => height > 0 && reached[height] === 1);
};

const tallsOf = (lies: Lies, kind: number): readonly number[] =>
  [...lies.tall].filter((_, lie) => lies.kind[lie] === kind);

/** One more piece, lying in any of its ways. @returns whether that made a height more */
const reachMore = (reached: Uint8Array, talls: readonly number[]): boolean => {
  let grew = false;
  for (let height = reached.length - 1; height > 0; height--) {
    if (reached[height] === 1) continue;
    // from the top down: heights below are still those without this piece
    if (!talls.some((tall) => tall <= height && reached[height - tall] === 1)) continue;
    reached[height] = 1;
    grew = true;
  }
  return grew;
};
