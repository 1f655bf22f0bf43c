// The choice of sides as one: most meetings nested first, then least against the wishes. The ways of some entries may be known
// already: then it is chosen at once how each of their blocks is laid.
import type { QuarterTurn } from '#craft/design';
import { type Choices, leastCost, type PairCost } from '#ground/choices';
import type { StudiedBlock, StudiedStep } from './block.ts';
import { endAt, type Laying, type Pressed, type PressTask, type TopWhose } from './model.ts';
import { doNest, facingWay, isSpun, type Press, type SidePress, type Way, wayAt } from './press.ts';

/** How one placed block may be made and laid. */
export interface State {
  readonly variant: 0 | 1;
  readonly turn: QuarterTurn;
}

export interface KnownWay {
  /** By step; those that reach no edge do not matter. */
  readonly presses: readonly Press[];
  /** Meetings inside one block that do not nest. */
  readonly loose: number;
}

export interface Asked {
  /** By placed block, the first as good a beginning as any; only one where its entry's ways are not known. */
  readonly states: readonly (readonly State[])[];
  /** By entry and variant; null where they are to be chosen. */
  readonly known: readonly (readonly KnownWay[] | null)[];
  /** Which seams may be spun: only those that would else be pressed open, or all that could be. */
  readonly spun: 'many' | 'all';
}

export interface Answer extends Pressed {
  /** Of the whole choice: less is better, where the same states are asked for. */
  readonly loose: number;
}

/** Against the wishes, for every block that is turned: less than a seam pressed onto a few others. Our own figure. */
const costOfTurn = 100;

/** Blocks made and laid so; a seam is spun for no other reason than to nest more, or to lie flatter than open. */
export const pressAll = (task: PressTask, { variants, turns }: Laying): Pressed & Pick<Answer, 'loose'> => {
  const asked = {
    states: variants.map((variant, placed) => [{ variant, turn: turns[placed] as QuarterTurn }]),
    known: task.blocks.map(() => null),
  };
  const plain = chooseSides(task, { ...asked, spun: 'many' });
  if (plain.loose <= task.leastLoose) return { ...plain, proven: true };
  const spun = chooseSides(task, { ...asked, spun: 'all' });
  return spun.proven || spun.loose < plain.loose ? spun : { ...plain, proven: false };
};

/** @returns meetings inside the block that no choice nests; 0 where that is not proven */
export const leastLooseIn = (block: StudiedBlock): number => {
  const { loose, proven } = pressAll(alone(block), { variants: [0], turns: [0] });
  return proven ? loose : 0;
};

export const alone = (block: StudiedBlock): PressTask => ({
  blocks: [block],
  rims: [],
  entryOf: [0],
  turnsOf: [[0]],
  runs: [],
  between: [],
  leastLoose: 0,
});

export const chooseSides = (task: PressTask, asked: Asked): Answer => {
  const layout = layoutOf(task, asked);
  const met = meetingsIn(task, asked, layout);
  const choices = choicesOf({ task, asked, layout, met });
  const start = layout.variables.map((one) =>
    'states' in one ? 0 : indexOfLeast(one.costs.slice(0, one.presses.filter((press) => !isSpun(press)).length)),
  );
  const { values, proven } = leastCost(choices, [start]);
  return answerOf({ task, asked, layout, met, values, proven });
};

const indexOfLeast = (costs: readonly number[]): number => costs.indexOf(Math.min(...costs));

interface StepVariable {
  readonly presses: readonly Press[];
  /** Against the wishes, of all blocks that it stands for. */
  readonly costs: readonly number[];
  /** 1 where it is spun that need not be, or not spun that should: counts before all wishes. */
  readonly unspun: readonly number[];
}

interface PlaceVariable {
  readonly placed: number;
  readonly states: readonly State[];
}

type Variable = StepVariable | PlaceVariable;

interface Layout {
  readonly variables: readonly Variable[];
  /** By entry and variant: the variable of its first step; -1 where it is known, or no block takes it. */
  readonly firstOf: readonly (readonly [number, number])[];
  /** Blocks that take it, where its ways are to be chosen. */
  readonly counts: readonly (readonly [number, number])[];
  readonly firstRun: number;
  /** By placed block: its variable; -1 where it has one state. */
  readonly placeOf: readonly number[];
}

const layoutOf = (task: PressTask, { states, known, spun }: Asked): Layout => {
  const counts = task.blocks.map((): [number, number] => [0, 0]);
  task.entryOf.forEach((entry, placed) => {
    if (known[entry] === null) (counts[entry] as [number, number])[stateOf(states, placed, 0).variant]++;
  });
  const variables: Variable[] = [];
  const firstOf = task.blocks.map((block, entry) => {
    const first = ([0, 1] as const).map((variant) => {
      const times = counts[entry]?.[variant] as number;
      if (times === 0) return -1;
      variables.push(...block.steps.map((step, i) => stepVariable(block, { step, i, times, spun })));
      return variables.length - block.steps.length;
    });
    return first as unknown as readonly [number, number];
  });
  const firstRun = variables.length;
  variables.push(...task.runs.map(({ presses, costs }) => ({ presses, costs, unspun: presses.map(() => 0) })));
  const placeOf = states.map((own, placed) => (own.length > 1 ? variables.push({ placed, states: own }) - 1 : -1));
  return { variables, firstOf, counts, firstRun, placeOf };
};

const stateOf = (states: Asked['states'], placed: number, value: number): State => states[placed]?.[value] as State;

const rounds = ['clockwise', 'counterclockwise'] as const;

const stepVariable = (
  { centres }: StudiedBlock,
  of: { readonly step: StudiedStep; readonly i: number; readonly times: number; readonly spun: Asked['spun'] },
): StepVariable => {
  const { step, i } = of;
  const costs = step.costs.map((one) => one * of.times);
  const centre = centres.find((one) => one.step === i && (one.isMany || of.spun === 'all'));
  if (centre === undefined || step.presses.length < 2)
    return { presses: step.presses, costs, unspun: costs.map(() => 0) };
  // where many seams come together a spun one lies flatter than any other; else it is more work, worth what it nests
  const [spun, plain] = centre.isMany ? [0, 1] : [1, 0];
  return {
    presses: [...step.presses, ...rounds],
    costs: [...costs, 0, 0],
    unspun: [...costs.map(() => plain), spun, spun],
  };
};

/** By the values of a variable: which way allowances lie there. */
interface End {
  /** -1: none, it lies one way. */
  readonly variable: number;
  readonly ways: readonly Way[];
}

/** How often two ends meet. */
interface Met {
  readonly ends: readonly [End, End];
  readonly nests: 'alike' | 'unlike';
  count: number;
}

const meetingsIn = (task: PressTask, asked: Asked, layout: Layout): readonly Met[] => {
  const ends = new Map<string, End>();
  const endFor = (key: string, make: () => End): readonly [string, End] => {
    const known = ends.get(key) ?? make();
    ends.set(key, known);
    return [key, known];
  };
  const stepEnd = (of: { readonly variable: number; readonly clockwise: 1 | -1; readonly facing: 1 | -1 }) =>
    endFor(`${of.variable} ${of.clockwise} ${of.facing}`, () => {
      const { presses } = layout.variables[of.variable] as StepVariable;
      return { variable: of.variable, ways: presses.map((press) => facingWay(wayAt(press, of.clockwise), of.facing)) };
    });
  const topEnd = (whose: TopWhose): readonly [string, End] => {
    if ('run' in whose) return stepEnd({ variable: layout.firstRun + whose.run, clockwise: 1, facing: 1 });
    const { placed, slot } = whose;
    const entry = task.entryOf[placed] as number;
    const own = asked.known[entry];
    const states = asked.states[placed] as readonly State[];
    if (own)
      return endFor(`${placed} at ${slot}`, () => ({
        variable: layout.placeOf[placed] as number,
        ways: states.map(({ variant, turn }) => {
          const { step, clockwise, facing } = endAt(task, whose, turn);
          return facingWay(wayAt(own[variant]?.presses[step] as Press, clockwise), facing);
        }),
      }));
    const { variant, turn } = states[0] as State;
    const { step, clockwise, facing } = endAt(task, whose, turn);
    return stepEnd({ variable: (layout.firstOf[entry]?.[variant] as number) + step, clockwise, facing });
  };
  const met = new Map<string, Met>();
  const add = (
    [[p, a], [q, b]]: readonly [readonly [string, End], readonly [string, End]],
    nests: Met['nests'],
    count: number,
  ) => {
    const key = p < q ? `${p}, ${q}, ${nests}` : `${q}, ${p}, ${nests}`;
    const known = met.get(key);
    if (known) known.count += count;
    else met.set(key, { ends: [a, b], nests, count });
  };
  task.blocks.forEach(({ spots }, entry) => {
    for (const variant of [0, 1] as const) {
      const first = layout.firstOf[entry]?.[variant] as number;
      if (first < 0) continue;
      const count = layout.counts[entry]?.[variant] as number;
      for (const { ends: two, nests } of spots.flatMap(({ meetings }) => meetings)) {
        const [a, b] = two.map(({ of: { step, clockwise } }) =>
          stepEnd({ variable: first + step, clockwise, facing: 1 }),
        ) as [readonly [string, End], readonly [string, End]];
        add([a, b], nests, count);
      }
    }
  });
  for (const { whose, nests } of task.between) add([topEnd(whose[0]), topEnd(whose[1])], nests, 1);
  return [...met.values()];
};

/** Costs that are weighed one after another: what stands later counts only where all before is even. */
const choicesOf = (of: {
  readonly task: PressTask;
  readonly asked: Asked;
  readonly layout: Layout;
  readonly met: readonly Met[];
}): Choices => {
  const { task, asked, layout, met } = of;
  const wishes = layout.variables.map((one) =>
    'states' in one ? one.states.map(({ turn }) => (turn === 0 ? 0 : costOfTurn)) : one.costs,
  );
  const unit = 1 + sumOfMost(wishes);
  const lower = layout.variables.map((one, i) =>
    (wishes[i] as readonly number[]).map(
      (wish, value) => wish + ('states' in one ? 0 : unit * (one.unspun[value] as number)),
    ),
  );
  const rest = 1 + sumOfMost(lower);
  const inTwo = layout.variables.filter((one) => 'states' in one && one.states.some(({ variant }) => variant === 1));
  // a block pressed its other way costs one meeting, and where that is even it is taken
  const worth = rest * (1 + inTwo.length);
  const single = lower.map((costs, i) => {
    const one = layout.variables[i] as Variable;
    if (!('states' in one)) return [...costs];
    const own = asked.known[task.entryOf[one.placed] as number];
    return costs.map((cost, value) => {
      const { variant } = one.states[value] as State;
      return cost + worth * (own?.[variant]?.loose ?? 0) + (variant === 1 ? worth - rest : 0);
    });
  });
  const pairs: PairCost[] = [];
  for (const { ends, nests, count } of met) {
    const [a, b] = ends.toSorted((p, q) => p.variable - q.variable) as unknown as readonly [End, End];
    const priceOf = (p: Way, q: Way): number => (doNest(nests, p, q) ? 0 : worth * count);
    const own = single[b.variable];
    if (own === undefined) continue;
    if (a.variable >= 0 && a.variable !== b.variable)
      pairs.push({ a: a.variable, b: b.variable, cost: a.ways.map((p) => b.ways.map((q) => priceOf(p, q))) });
    else
      b.ways.forEach((q, value) => {
        own[value] = (own[value] as number) + priceOf(a.ways[a.variable < 0 ? 0 : value] as Way, q);
      });
  }
  const most = worth * (1 + met.reduce((all, { count }) => all + count, 0));
  return { single, pairs: [...pairs, ...spinPairs(task, layout, most)] };
};

const sumOfMost = (costs: readonly (readonly number[])[]): number =>
  costs.reduce((all, own) => all + own.reduce((most, one) => Math.max(most, one), 0), 0);

/** What is spun takes all that comes to its middle the same way round. */
const spinPairs = ({ blocks }: PressTask, { firstOf, variables }: Layout, cost: number): readonly PairCost[] =>
  blocks.flatMap(({ centres }, entry) =>
    (firstOf[entry] as readonly [number, number]).flatMap((first) =>
      first < 0
        ? []
        : centres.flatMap(({ step, ends }) =>
            ends.map((end): PairCost => {
              const [a, b] = [first + step, first + end.step];
              const [spinning, other] = [variables[a], variables[b]] as [StepVariable, StepVariable];
              const doesRun = (round: (typeof rounds)[number], press: Press): boolean =>
                wayAt(press, end.clockwise) === (round === 'clockwise' ? end.wanted : -end.wanted);
              return {
                a,
                b,
                cost: spinning.presses.map((press) =>
                  other.presses.map((one) => (isSpun(press) && !doesRun(press, one) ? cost : 0)),
                ),
              };
            }),
          ),
    ),
  );

const answerOf = (of: {
  readonly task: PressTask;
  readonly asked: Asked;
  readonly layout: Layout;
  readonly met: readonly Met[];
  readonly values: readonly number[];
  readonly proven: boolean;
}): Answer => {
  const { task, asked, layout, met, values } = of;
  const states = asked.states.map((_, placed) =>
    stateOf(asked.states, placed, values[layout.placeOf[placed] as number] ?? 0),
  );
  const pressOf = (variable: number): Press =>
    (layout.variables[variable] as StepVariable).presses[values[variable] as number] as Press;
  const wayOf = ({ variable, ways }: End): Way => ways[values[variable] ?? 0] as Way;
  let [loose, meetings] = [0, 0];
  for (const { ends, nests, count } of met) {
    meetings += count;
    if (!doNest(nests, wayOf(ends[0]), wayOf(ends[1]))) loose += count;
  }
  states.forEach(({ variant }, placed) => {
    const entry = task.entryOf[placed] as number;
    const own = asked.known[entry];
    if (!own) return;
    loose += own[variant]?.loose ?? 0;
    meetings += meetingsInside(task.blocks[entry] as StudiedBlock);
  });
  return {
    variants: states.map(({ variant }) => variant),
    turns: states.map(({ turn }) => turn),
    steps: task.blocks.map(({ steps }, entry) => {
      const waysOf = (variant: 0 | 1): readonly Press[] => {
        const first = layout.firstOf[entry]?.[variant] as number;
        return first < 0 ? (asked.known[entry]?.[variant]?.presses ?? []) : steps.map((_, i) => pressOf(first + i));
      };
      return [waysOf(0), waysOf(1)];
    }),
    runs: task.runs.map((_, run) => pressOf(layout.firstRun + run) as SidePress),
    nested: meetings - loose,
    loose,
    proven: of.proven,
  };
};

export const meetingsInside = ({ spots }: StudiedBlock): number =>
  spots.reduce((all, { meetings }) => all + meetings.length, 0);
