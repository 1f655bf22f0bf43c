// The choice of all presses as one: a variable for every step of a block (for each of its two ways, where it has two) and for
// every run of seams in the top. Most meetings nested first, then least against the wishes.
import { type Chosen, leastCost, type PairCost } from '#ground/choices';
import type { StepEnd, StudiedBlock } from './block.ts';
import { doNest, type Press, type SidePress, wayAt } from './press.ts';

/** A seam in the top: a placed block's step, or a run of the top's own. */
export type TopWhose = (StepEnd & { readonly placed: number }) | { readonly run: number };

export interface TopMeeting {
  readonly whose: readonly [TopWhose, TopWhose];
  readonly nests: 'alike' | 'unlike';
}

export interface PressTask {
  /** By entry. */
  readonly blocks: readonly StudiedBlock[];
  /** The entry of every placed block. */
  readonly entryOf: readonly number[];
  readonly runs: readonly { readonly presses: readonly SidePress[]; readonly costs: readonly number[] }[];
  readonly between: readonly TopMeeting[];
}

/** Which of its entry's two ways each placed block is pressed. */
export type Variants = readonly (0 | 1)[];

export interface Pressed {
  /** By entry, variant and step; a variant that no block takes is empty. */
  readonly steps: readonly (readonly [readonly Press[], readonly Press[]])[];
  readonly runs: readonly SidePress[];
  /** Of all meetings in and between blocks. */
  readonly nested: number;
  /** Whether no other choice has more nested for these variants, and as many with less against the wishes. */
  readonly proven: boolean;
}

/** What each entry says of itself, so that it is not counted again for every choice of variants. */
interface Tally {
  readonly a: number;
  readonly b: number;
  readonly nests: 'alike' | 'unlike';
  readonly count: number;
}

export const pressAll = (task: PressTask, variants: Variants): Pressed => {
  const layout = variablesOf(task, variants);
  const tallies = [...tallied(innerMeetings(task, layout)), ...tallied(meetingsBetween(task, layout, variants))];
  const wishes = layout.variables.map(({ costs, times }) => costs.map((one) => one * times));
  const worth = 1 + wishes.reduce((all, costs) => all + Math.max(...costs), 0);
  const single = wishes.map((costs) => [...costs]);
  const pairs: PairCost[] = [];
  for (const { a, b, nests, count } of tallies) {
    const [first, second] = [layout.variables[a], layout.variables[b]] as [Variable, Variable];
    const priceOf = (p: SidePress, q: SidePress): number => (doNest(nests, sideOf(p), sideOf(q)) ? 0 : worth * count);
    if (a !== b) {
      pairs.push({ a, b, cost: first.presses.map((p) => second.presses.map((q) => priceOf(p, q))) });
      continue;
    }
    first.presses.forEach((p, value) => {
      const own = single[a] as number[];
      own[value] = (own[value] as number) + priceOf(p, p);
    });
  }
  const chosen = leastCost({ single, pairs }, [layout.variables.map(({ costs }) => costs.indexOf(Math.min(...costs)))]);
  return pressedAs({ task, layout, chosen, tallies });
};

interface Variable {
  readonly presses: readonly SidePress[];
  readonly costs: readonly number[];
  /** Blocks that it stands for. */
  readonly times: number;
}

interface Layout {
  readonly variables: readonly Variable[];
  /** By entry and variant: the variable of its first step; -1 for a variant that no block takes. */
  readonly firstOf: readonly (readonly [number, number])[];
  readonly counts: readonly (readonly [number, number])[];
  readonly firstRun: number;
}

const variablesOf = (task: PressTask, variants: Variants): Layout => {
  const counts = task.blocks.map((): [number, number] => [0, 0]);
  task.entryOf.forEach((entry, placed) => {
    const own = counts[entry] as [number, number];
    own[variants[placed] as 0 | 1]++;
  });
  const variables: Variable[] = [];
  const firstOf = task.blocks.map(({ steps }, entry) => {
    const first = ([0, 1] as const).map((variant) => {
      const times = counts[entry]?.[variant] as number;
      if (times === 0) return -1;
      const at = variables.length;
      variables.push(...steps.map(({ presses, costs }) => ({ presses, costs, times })));
      return at;
    });
    return first as unknown as readonly [number, number];
  });
  const firstRun = variables.length;
  variables.push(...task.runs.map(({ presses, costs }) => ({ presses, costs, times: 1 })));
  return { variables, firstOf, counts, firstRun };
};

const innerMeetings = ({ blocks }: PressTask, { firstOf, counts }: Layout): readonly Tally[] =>
  blocks.flatMap(({ spots }, entry) =>
    ([0, 1] as const).flatMap((variant) => {
      const count = counts[entry]?.[variant] as number;
      if (count === 0) return [];
      const first = firstOf[entry]?.[variant] as number;
      return spots.flatMap(({ meetings }) =>
        meetings.map(({ ends: [a, b], nests }) => ({ a: first + a.of.step, b: first + b.of.step, nests, count })),
      );
    }),
  );

const meetingsBetween = (task: PressTask, layout: Layout, variants: Variants): readonly Tally[] => {
  const variableOf = (whose: TopWhose): number =>
    'run' in whose
      ? layout.firstRun + whose.run
      : (layout.firstOf[task.entryOf[whose.placed] as number]?.[variants[whose.placed] as 0 | 1] as number) +
        whose.step;
  return task.between.map(({ whose: [a, b], nests }) => ({ a: variableOf(a), b: variableOf(b), nests, count: 1 }));
};

const tallied = (tallies: readonly Tally[]): readonly Tally[] => {
  const known = new Map<string, Tally>();
  for (const { a, b, nests, count } of tallies) {
    const [low, high] = a < b ? [a, b] : [b, a];
    const key = `${low},${high},${nests}`;
    known.set(key, { a: low, b: high, nests, count: (known.get(key)?.count ?? 0) + count });
  }
  return [...known.values()];
};

/** To a side it is the same at both ends. */
const sideOf = (press: SidePress) => wayAt(press, 1);

const pressedAs = (of: {
  readonly task: PressTask;
  readonly layout: Layout;
  readonly chosen: Chosen;
  readonly tallies: readonly Tally[];
}): Pressed => {
  const { task, layout, chosen, tallies } = of;
  const presses = layout.variables.map((one, i) => one.presses[chosen.values[i] as number] as SidePress);
  return {
    steps: task.blocks.map(({ steps }, entry) => {
      const [first, second] = layout.firstOf[entry] as readonly [number, number];
      const from = (at: number): readonly Press[] => (at < 0 ? [] : presses.slice(at, at + steps.length));
      return [from(first), from(second)];
    }),
    runs: presses.slice(layout.firstRun),
    nested: tallies.reduce(
      (all, { a, b, nests, count }) =>
        all + (doNest(nests, sideOf(presses[a] as SidePress), sideOf(presses[b] as SidePress)) ? count : 0),
      0,
    ),
    proven: chosen.proven,
  };
};
