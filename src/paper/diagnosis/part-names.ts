// What the parts are called that a diagnosis speaks of: "piece C" of a block; "the sashes A" or "one block Log cabin" of a top.
import type { QuiltPlan, TopPlan } from '#craft';
import { entryName } from '#craft/blocks';
import { placeOfThing } from '#craft/setting';
import { entryTitle } from '#paper/cutting';
import { inWords, plural, roleNouns } from '#paper/words';

export interface PartName {
  /** "piece C", "the sashes A" */
  readonly called: string;
  /** "C", "the sashes A" */
  readonly short: string;
  readonly verb: 'is' | 'are';
  /** A block is sewn, all else cut. */
  readonly made: 'cut' | 'sewn';
}

/** @param at places in a top, where not all of the label are meant */
export type PartNames = (piece: string, at: readonly number[] | null) => PartName;

export const blockPartNames: PartNames = (piece) => ({
  called: `piece ${piece}`,
  short: piece,
  verb: 'is',
  made: 'cut',
});

export const topPartNames = (plan: QuiltPlan): PartNames => {
  const { top } = plan;
  return (piece, at) => {
    const plain = top.pieces.find(({ label }) => label === piece);
    const placed = top.set.placed.find((one) => entryName(one) === piece);
    const made = plain === undefined ? 'sewn' : 'cut';
    const noun = plain === undefined ? 'block' : roleNouns[plain.role];
    const name = plain !== undefined || placed === undefined ? piece : entryTitle(plan, placed);
    const count = plain?.count ?? top.set.placed.filter((one) => entryName(one) === piece).length;
    if (at !== null) {
      const called = `one ${noun} ${name} of those that ${stepsTaking(top, at)} joined`;
      return { called, short: called, verb: 'is', made };
    }
    const called = `the ${count === 1 ? noun : plural(noun)} ${name}`;
    return { called, short: called, verb: count === 1 ? 'is' : 'are', made };
  };
};

/** "step 3 has", "steps 1 and 2 have": where each is first sewn to something. */
const stepsTaking = ({ set, steps }: TopPlan, at: readonly number[]): string => {
  const first = at.flatMap(
    (place) => steps.find(({ things }) => things.flat().some((one) => placeOfThing(set, one) === place))?.number ?? [],
  );
  const numbers = [...new Set(first)].sort((a, b) => a - b).map(String);
  return numbers.length === 1 ? `step ${numbers[0]} has` : `steps ${inWords(numbers)} have`;
};
