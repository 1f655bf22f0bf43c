// How are blocks made and laid, so that most seams nest? Where a block looks the same turned, it may be turned; where blocks of one
// kind meet, half of them may be pressed the other way. Exact where that is few choices, else a search.

import type { QuarterTurn } from '#craft/design';
import type { StudiedBlock, StudiedStep } from './block.ts';
import { asSet, endAt, isBetter, type Laying, type Pressed, type PressTask, type TopWhose } from './model.ts';
import { doNest, facingWay, isSpun, type Press, type Way, wayAt } from './press.ts';
import { alone, chooseSides, type KnownWay, leastLooseIn, meetingsInside, pressAll, type State } from './sides.ts';

/** Of an entry's blocks, that take its second way. */
const leastShare = 0.25;

/** Times that blocks are laid anew, and all is pressed anew. */
const rounds = 3;

/** Ways to press what reaches the edges, all entries together, and placed blocks to lay for each: that many are all tried. */
const mostTried = 256;
const mostLaid = 1_600;

export interface Laid {
  readonly pressed: Pressed;
  /** Whether no other sides and turns nest more, nor two ways of one block. */
  readonly proven: boolean;
}

export const layWell = (asked: Omit<PressTask, 'leastLoose'>): Laid => {
  const least = asked.blocks.map(leastLooseIn);
  const task: PressTask = {
    ...asked,
    leastLoose: asked.entryOf.reduce((all, entry) => all + (least[entry] as number), 0),
  };
  const once = pressAll(task, asSet(task));
  if (once.loose <= task.leastLoose) return { pressed: once, proven: true };
  const alike = layFreely(task, { turns: task.turnsOf, two: new Set() }, [once]);
  const two = worthTrying(task, alike.pressed);
  if (two.size === 0) return alike;
  const other = inTwoWays(task, alike.pressed, two);
  return { pressed: isBetter(other, alike.pressed) ? other : alike.pressed, proven: false };
};

export const meetingsOf = ({ blocks, entryOf, between }: Omit<PressTask, 'leastLoose'>): number =>
  entryOf.reduce((all, entry) => all + meetingsInside(blocks[entry] as StudiedBlock), between.length);

/** A second way is not worth its care for a few blocks only. */
const inTwoWays = (task: PressTask, alike: Pressed, two: ReadonlySet<number>): Pressed => {
  const { pressed } = layFreely(task, { turns: task.turnsOf, two }, [alike, asSet(task)]);
  const rare = [...two].filter((entry) => {
    const own = pressed.variants.filter((_, placed) => task.entryOf[placed] === entry);
    const ones = own.filter((variant) => variant === 1).length;
    return ones > 0 && ones < leastShare * own.length;
  });
  if (rare.length === 0) return pressed;
  const left = new Set([...two].filter((entry) => !rare.includes(entry)));
  return left.size === 0 ? alike : inTwoWays(task, alike, left);
};

/** What may be chosen besides sides: turns by placed block, and entries that may be pressed in two ways. */
interface Freedom {
  readonly turns: PressTask['turnsOf'];
  readonly two: ReadonlySet<number>;
}

/** @param from layings to begin a search with */
const layFreely = (task: PressTask, free: Freedom, from: readonly Laying[]): Laid => {
  const moving = task.blocks.map(
    (_, entry) =>
      free.two.has(entry) || task.entryOf.some((one, placed) => one === entry && (free.turns[placed]?.length ?? 1) > 1),
  );
  if (!moving.includes(true)) {
    const pressed = pressAll(task, asSet(task));
    return { pressed, proven: pressed.proven };
  }
  const exact = laidExactly(task, free, moving);
  if (exact) return exact;
  const begun = startsOf(task, free, from).map((start) => pressAll(task, start));
  const best = begun.reduce((one, other) => (isBetter(other, one) ? other : one));
  if (best.loose <= task.leastLoose) return { pressed: best, proven: true };
  const pressed = (task.entryOf.length > mostSearched ? [best] : begun)
    .map((start) => improved(task, { free, moving, start }))
    .reduce((one, other) => (isBetter(other, one) ? other : one));
  return { pressed, proven: false };
};

/** Placed blocks, above which only the best beginning is made better. */
const mostSearched = 400;

/** Every way to press what reaches the edges of blocks that may be laid so or so; null where that is too many. */
const laidExactly = (task: PressTask, free: Freedom, moving: readonly boolean[]): Laid | null => {
  const laid = task.entryOf.filter((entry) => moving[entry]).length;
  const rims = task.blocks.map((block, entry) => (moving[entry] ? rimSteps(block) : []));
  const tried = task.blocks.reduce(
    (all, block, entry) => all * waysAtRim(block, rims[entry] as readonly number[]) ** (free.two.has(entry) ? 2 : 1),
    1,
  );
  if (tried > mostTried || tried * laid > mostLaid) return null;
  const states = statesFor(task, { free, first: asSet(task), hasOther: (entry) => free.two.has(entry) });
  const listed = task.blocks.map((block, entry): readonly (readonly KnownWay[] | null)[] => {
    if (!moving[entry]) return [null];
    const ways = rimWays(block, rims[entry] as readonly number[]);
    return free.two.has(entry)
      ? ways.flatMap((first) => ways.map((other) => [first, other]))
      : ways.map((one) => [one]);
  });
  let best: Pressed | null = null;
  let proven = true;
  const visit = (known: readonly (readonly KnownWay[] | null)[]): void => {
    const own = listed[known.length];
    if (own !== undefined) {
      for (const one of own) visit([...known, one]);
      return;
    }
    const answer = chooseSides(task, { states, known, spun: 'all' });
    proven &&= answer.proven;
    if (best === null || isBetter(answer, best)) best = answer;
  };
  visit([]);
  if (best === null || !proven) return null;
  const pressed = pressAll(task, best);
  return { pressed, proven: pressed.proven };
};

const rimSteps = ({ rim }: StudiedBlock): readonly number[] => [...new Set(rim.map(({ of }) => of.step))];

const pressesOf = ({ steps, centres }: StudiedBlock, step: number): readonly Press[] => {
  const { presses } = steps[step] as StudiedStep;
  return centres.some((centre) => centre.step === step) ? [...presses, 'clockwise', 'counterclockwise'] : presses;
};

const waysAtRim = (block: StudiedBlock, rim: readonly number[]): number =>
  rim.reduce((all, step) => all * pressesOf(block, step).length, 1);

/** With the most nested inside for each. */
const rimWays = (block: StudiedBlock, rim: readonly number[]): readonly KnownWay[] => {
  let ways: readonly ReadonlyMap<number, Press>[] = [new Map()];
  for (const step of rim)
    ways = ways.flatMap((way) => pressesOf(block, step).map((press) => new Map([...way, [step, press]])));
  return ways.flatMap((fixed) => {
    const steps = block.steps.map((step, i): StudiedStep => {
      const press = fixed.get(i);
      return press === undefined ? step : { presses: [press], costs: [0] };
    });
    const presses = pressAll(alone({ ...block, steps }), { variants: [0], turns: [0] })
      .steps[0]?.[0] as readonly Press[];
    return doRunRound(block, presses) ? [{ presses, loose: looseInside(block, presses) }] : [];
  });
};

const doRunRound = ({ centres }: StudiedBlock, presses: readonly Press[]): boolean =>
  centres.every(({ step, ends }) => {
    const press = presses[step] as Press;
    return (
      !isSpun(press) ||
      ends.every((end) => wayAt(presses[end.step] as Press, end.clockwise) === wayAt(press, end.wanted))
    );
  });

const looseInside = ({ spots }: StudiedBlock, presses: readonly Press[]): number =>
  spots
    .flatMap(({ meetings }) => meetings)
    .filter(({ ends: [a, b], nests }) => {
      const [p, q] = [a, b].map(({ of }) => wayAt(presses[of.step] as Press, of.clockwise));
      return !doNest(nests, p as Way, q as Way);
    }).length;

/** By placed block, what it has now first. */
const statesFor = (
  task: PressTask,
  of: { readonly free: Freedom; readonly first: Laying; readonly hasOther: (entry: number) => boolean },
): readonly (readonly State[])[] =>
  task.entryOf.map((entry, placed) => {
    const now: State = { variant: of.first.variants[placed] as 0 | 1, turn: of.first.turns[placed] as QuarterTurn };
    const variants = of.hasOther(entry) ? ([0, 1] as const) : ([now.variant] as const);
    const all = variants.flatMap((variant) =>
      (of.free.turns[placed] as readonly QuarterTurn[]).map((turn): State => ({ variant, turn })),
    );
    return [now, ...all.filter(({ variant, turn }) => variant !== now.variant || turn !== now.turn)];
  });

/** By turns like a checkerboard: in each turn that there is, and in two ways. */
const startsOf = (task: PressTask, free: Freedom, from: readonly Laying[]): readonly Laying[] => {
  const colours = byTurns(task);
  const isSecond = (placed: number): boolean => colours[placed] === 1;
  const turns = [...new Set(free.turns.flat())].filter((turn) => turn !== 0);
  const turned = turns.map(
    (turn): Laying => ({
      ...asSet(task),
      turns: free.turns.map((own, placed) => (isSecond(placed) && own.includes(turn) ? turn : 0)),
    }),
  );
  if (free.two.size === 0) return [...from, ...turned];
  const inTwo = (laying: Laying): Laying => ({
    ...laying,
    variants: task.entryOf.map((entry, placed) => (free.two.has(entry) && isSecond(placed) ? 1 : 0)),
  });
  return [...from, ...from.map(inTwo)];
};

/** All is pressed as the blocks lie, and blocks are laid as they are pressed, by turns, as long as that helps. */
const improved = (
  task: PressTask,
  of: { readonly free: Freedom; readonly moving: readonly boolean[]; readonly start: Pressed },
): Pressed => {
  const { free, moving } = of;
  let best = of.start;
  for (let round = 0; round < rounds; round++) {
    const { steps } = best;
    const known = task.blocks.map((block, entry): readonly KnownWay[] | null =>
      moving[entry]
        ? (steps[entry] as readonly (readonly Press[])[]).map((presses) => ({
            presses,
            loose: presses.length === 0 ? 0 : looseInside(block, presses),
          }))
        : null,
    );
    const hasOther = (entry: number): boolean =>
      free.two.has(entry) && steps[entry]?.every((one) => one.length > 0) === true;
    const laid = chooseSides(task, { states: statesFor(task, { free, first: best, hasOther }), known, spun: 'all' });
    const pressed = pressAll(task, fewerFirst(task, laid));
    if (!isBetter(pressed, best)) return best;
    best = pressed;
  }
  return best;
};

/** The way that more blocks take comes first. */
const fewerFirst = ({ entryOf }: PressTask, { variants, turns }: Laying): Laying => {
  const ones = new Map<number, number>();
  entryOf.forEach((entry, placed) => {
    ones.set(entry, (ones.get(entry) ?? 0) + (variants[placed] === 1 ? 1 : -1));
  });
  return {
    turns,
    variants: variants.map((variant, placed) =>
      (ones.get(entryOf[placed] as number) as number) > 0 ? (variant === 1 ? 0 : 1) : variant,
    ),
  };
};

/** Entries with a seam that does not nest with one of another block, and that has two ways. */
const worthTrying = (task: PressTask, pressed: Pressed): ReadonlySet<number> => {
  const found = new Set<number>();
  for (const { whose, nests } of task.between) {
    const [a, b] = whose.map((one) => topPress(task, pressed, one)) as [TopPress, TopPress];
    if (doNest(nests, a.way, b.way)) continue;
    for (const { entry, ways } of [a, b]) if (entry !== null && ways > 1) found.add(entry);
  }
  return new Set([...found].sort((a, b) => a - b));
};

export interface TopPress {
  readonly press: Press;
  /** Along the seam that runs over it, as its meeting has it. */
  readonly way: Way;
  readonly facing: 1 | -1;
  /** Of one name are copies of one seam. */
  readonly name: string;
  /** Ways that it might be pressed. */
  readonly ways: number;
  /** Null for a run of the top. */
  readonly entry: number | null;
}

/** How what ends on a seam of the top is pressed. */
export const topPress = (task: Omit<PressTask, 'leastLoose'>, pressed: Pressed, whose: TopWhose): TopPress => {
  if ('run' in whose) {
    const press = pressed.runs[whose.run] as Press;
    const ways = task.runs[whose.run]?.presses.length as number;
    return { press, way: wayAt(press, 1), facing: 1, name: `${whose.run}`, ways, entry: null };
  }
  const entry = task.entryOf[whose.placed] as number;
  const variant = pressed.variants[whose.placed] as 0 | 1;
  const { step, clockwise, facing } = endAt(task, whose, pressed.turns[whose.placed] as QuarterTurn);
  const press = pressed.steps[entry]?.[variant][step] as Press;
  return {
    press,
    way: facingWay(wayAt(press, clockwise), facing),
    facing,
    name: `${entry} ${variant} ${step}`,
    ways: task.blocks[entry]?.steps[step]?.presses.length as number,
    entry,
  };
};

/** Blocks of one entry that meet, by turns 0 and 1, as far as that goes. */
const byTurns = (task: PressTask): readonly (0 | 1)[] => {
  const near: number[][] = task.entryOf.map(() => []);
  for (const { whose } of task.between) {
    const [a, b] = whose;
    if (!('placed' in a) || !('placed' in b)) continue;
    if (task.entryOf[a.placed] !== task.entryOf[b.placed]) continue;
    near[a.placed]?.push(b.placed);
    near[b.placed]?.push(a.placed);
  }
  const colours = new Map<number, 0 | 1>();
  for (let first = 0; first < near.length; first++) {
    if (colours.has(first)) continue;
    colours.set(first, 0);
    const waiting = [first];
    for (let placed = waiting.pop(); placed !== undefined; placed = waiting.pop()) {
      for (const next of near[placed] as readonly number[]) {
        if (colours.has(next)) continue;
        colours.set(next, colours.get(placed) === 0 ? 1 : 0);
        waiting.push(next);
      }
    }
  }
  return task.entryOf.map((_, placed) => colours.get(placed) as 0 | 1);
};
