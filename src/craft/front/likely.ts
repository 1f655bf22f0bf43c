// Which choices of ways are likely to be worth it, before any is planned? What each way takes by itself adds up: area of cloth for
// its length, minutes, and the square of its deviation. The best three ends first, then choices far apart from each other.
import type { UnitGroup, WayOption } from './groups.ts';
import { spreadOver } from './spread.ts';

/** By group of units: which of its options. */
export type Choice = readonly number[];

interface Sum {
  readonly choice: Choice;
  readonly area: number;
  readonly minutes: number;
  readonly squares: number;
}

/** All of them where there are no more than are asked for. */
export const likelyChoices = (groups: readonly UnitGroup[], of: { readonly most: number }): readonly Choice[] => {
  const choices = groups.reduce((product, { options }) => product * options.length, 1);
  if (choices <= of.most) return everyChoice(groups.map(({ options }) => [...options.keys()]));
  const sums = groups.reduce<readonly Sum[]>(
    (before, group) =>
      thinned(unbeaten(before.flatMap((sum) => group.options.map((option, i) => added(sum, group, option, i))))),
    [{ choice: [], area: 0, minutes: 0, squares: 0 }],
  );
  return spreadOver(sums, threeOf)
    .slice(0, of.most)
    .map(({ choice }) => choice);
};

/** One of each list; what is taken of the last changes first. */
export const everyChoice = (lists: readonly (readonly number[])[]): readonly Choice[] =>
  lists.reduce<readonly Choice[]>(
    (before, list) => before.flatMap((choice) => list.map((option) => [...choice, option])),
    [[]],
  );

const added = (sum: Sum, { count }: UnitGroup, option: WayOption, index: number): Sum => ({
  choice: [...sum.choice, index],
  area: sum.area + option.area,
  minutes: sum.minutes + option.minutes,
  squares: sum.squares + count * option.deviation * option.deviation,
});

const threeOf = ({ area, minutes, squares }: Sum): readonly [number, number, number] => [area, minutes, squares];

const hair = 1e-9;

const unbeaten = (sums: readonly Sum[]): readonly Sum[] => {
  const inOrder = sums.toSorted((a, b) => a.area - b.area || a.minutes - b.minutes || a.squares - b.squares);
  const kept: Sum[] = [];
  for (const sum of inOrder) {
    const isBeaten = kept.some((other) =>
      threeOf(other).every((value, i) => value <= (threeOf(sum)[i] as number) + hair),
    );
    if (!isBeaten) kept.push(sum);
  }
  return kept;
};

/** Our own figure: more than are ever planned. */
const mostKept = 600;

const thinned = (sums: readonly Sum[]): readonly Sum[] =>
  sums.length <= mostKept ? sums : spreadOver(sums, threeOf).slice(0, mostKept);
