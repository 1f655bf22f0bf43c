// Spun centres: where the seams that come to one point of the last one all run round one way, that one can run with them, half of
// it to either side. It is spun where more seams nest so, or where many run into one point and none is lost.
import type { StepEnd, StudiedBlock } from './block.ts';
import type { PressTask, TopWhose } from './model.ts';
import { doNest, isSpun, type Press, type Way, wayAt } from './press.ts';
import type { SeamEnd } from './spots.ts';
import type { PressedInVariants } from './variants.ts';

interface End {
  readonly entry: number;
  readonly variant: 0 | 1;
  readonly step: number;
  readonly clockwise: 1 | -1;
}

/** Two ends of which at least one is a step's; runs of the top stay as they are. */
interface Pair {
  readonly ends: readonly [End | Way, End | Way];
  readonly nests: 'alike' | 'unlike';
  readonly count: number;
}

export const withSpins = (task: PressTask, found: PressedInVariants): PressedInVariants => {
  const steps = found.pressed.steps.map(([first, other]) => [[...first], [...other]] as [Press[], Press[]]);
  const pressOf = ({ entry, variant, step }: Omit<End, 'clockwise'>): Press => steps[entry]?.[variant][step] as Press;
  const wayOf = (end: End | Way): Way => (typeof end === 'number' ? end : wayAt(pressOf(end), end.clockwise));
  const pairsOf = pairsByStep(task, found);
  let { nested } = found.pressed;
  const countIn = (pairs: Iterable<Pair>): number => {
    let all = 0;
    for (const { ends, nests, count } of pairs) if (doNest(nests, wayOf(ends[0]), wayOf(ends[1]))) all += count;
    return all;
  };
  task.blocks.forEach((block, entry) => {
    // steps that run round a centre which is spun already
    const holds = [new Set<number>(), new Set<number>()] as const;
    for (const centre of centresIn(block)) {
      for (const variant of [0, 1] as const) {
        const own = steps[entry]?.[variant] as Press[];
        if (own.length === 0) continue;
        const held = holds[variant];
        const tries = (['clockwise', 'counterclockwise'] as const).flatMap((round) => {
          const changes = changesFor({ block, centre, round, own, held });
          if (changes === null) return [];
          const touched = new Set(
            [...changes.keys()].flatMap((step) => pairsOf.get(keyOf({ entry, variant, step })) ?? []),
          );
          const before = countIn(touched);
          const kept = [...changes].map(([step]) => [step, own[step] as Press] as const);
          for (const [step, press] of changes) own[step] = press;
          const gain = countIn(touched) - before;
          for (const [step, press] of kept) own[step] = press;
          return [{ changes, gain, more: againstWishes(block, own, changes) }];
        });
        const best = tries.sort((a, b) => b.gain - a.gain || a.more - b.more)[0];
        if (best === undefined || best.gain < 0 || (best.gain === 0 && !centre.isMany)) continue;
        for (const [step, press] of best.changes) own[step] = press;
        nested += best.gain;
        for (const [step] of best.changes) held.add(step);
      }
    }
  });
  return { ...found, pressed: { ...found.pressed, steps, nested } };
};

/** What must be pressed otherwise so that all run round one way; null where that cannot be. */
const changesFor = (of: {
  readonly block: StudiedBlock;
  readonly centre: Centre;
  readonly round: 'clockwise' | 'counterclockwise';
  readonly own: readonly Press[];
  readonly held: ReadonlySet<number>;
}): ReadonlyMap<number, Press> | null => {
  const { block, centre, round, own, held } = of;
  const changes = new Map<number, Press>([[centre.step, round]]);
  for (const { into, toward, of: whose } of centre.ends) {
    // y runs down: clockwise is to the right hand of one who walks away from the middle
    const clockwise = into.x * toward.y - into.y * toward.x > 0 ? 1 : -1;
    const wanted = (round === 'clockwise') === (clockwise === 1) ? 1 : -1;
    const now = changes.get(whose.step) ?? (own[whose.step] as Press);
    if (wayAt(now, whose.clockwise) === wanted) {
      changes.set(whose.step, now);
      continue;
    }
    const press = wanted === 1 ? 1 : 0;
    const isFree = (block.steps[whose.step] as StudiedBlock['steps'][number]).presses.includes(press);
    if (changes.has(whose.step) || held.has(whose.step) || isSpun(now) || !isFree) return null;
    changes.set(whose.step, press);
  }
  return changes;
};

/** How much more against the wishes of their block changed presses are. */
const againstWishes = (block: StudiedBlock, own: readonly Press[], changes: ReadonlyMap<number, Press>): number => {
  let more = 0;
  for (const [step, press] of changes) {
    const { presses, costs } = block.steps[step] as StudiedBlock['steps'][number];
    const costOf = (one: Press): number => (isSpun(one) ? 0 : (costs[presses.indexOf(one)] as number));
    more += costOf(press) - costOf(own[step] as Press);
  }
  return more;
};

interface Centre {
  readonly step: number;
  /** Of all seams that come to it, from both sides. */
  readonly ends: readonly SeamEnd<StepEnd>[];
  readonly isMany: boolean;
}

/** Seams on which others come together at one point alone, in the order of sewing. */
const centresIn = ({ spots, overOf, steps }: StudiedBlock): readonly Centre[] => {
  const found = new Map<number, (typeof spots)[number][]>();
  for (const spot of spots) {
    if (spot.ends.every((side) => side.length > 0)) found.set(spot.over, [...(found.get(spot.over) ?? []), spot]);
  }
  const centres = new Map<number, Centre>();
  for (const [seam, [spot, ...more]] of found) {
    const step = overOf[seam] as number;
    if (spot === undefined || more.length > 0 || centres.has(step) || spot.meetings.length === 0) continue;
    const { presses } = steps[step] as StudiedBlock['steps'][number];
    if (presses.length > 1) centres.set(step, { step, ends: spot.ends.flat(), isMany: presses.includes('open') });
  }
  return [...centres.values()].sort((a, b) => a.step - b.step);
};

const keyOf = ({ entry, variant, step }: Omit<End, 'clockwise'>): string => `${entry} ${variant} ${step}`;

/** Every meeting that a step has a part in, in its blocks and between them. */
const pairsByStep = (
  task: PressTask,
  { pressed, variants }: PressedInVariants,
): ReadonlyMap<string, readonly Pair[]> => {
  const known = new Map<string, Pair[]>();
  const add = (pair: Pair): void => {
    const keys = pair.ends.flatMap((end) => (typeof end === 'number' ? [] : [keyOf(end)]));
    for (const key of new Set(keys)) {
      const list = known.get(key);
      if (list) list.push(pair);
      else known.set(key, [pair]);
    }
  };
  const counts = task.blocks.map((): [number, number] => [0, 0]);
  task.entryOf.forEach((entry, placed) => {
    const own = counts[entry] as [number, number];
    own[variants[placed] as 0 | 1]++;
  });
  task.blocks.forEach(({ spots }, entry) => {
    for (const variant of [0, 1] as const) {
      const count = counts[entry]?.[variant] as number;
      if (count === 0) continue;
      for (const { ends, nests } of spots.flatMap(({ meetings }) => meetings)) {
        const [a, b] = ends.map(({ of }): End => ({ entry, variant, ...of })) as [End, End];
        add({ ends: [a, b], nests, count });
      }
    }
  });
  const endOf = (whose: TopWhose): End | Way => {
    if ('run' in whose) return wayAt(pressed.runs[whose.run] as Press, 1);
    const entry = task.entryOf[whose.placed] as number;
    return { entry, variant: variants[whose.placed] as 0 | 1, step: whose.step, clockwise: whose.clockwise };
  };
  for (const { whose, nests } of task.between) add({ ends: [endOf(whose[0]), endOf(whose[1])], nests, count: 1 });
  return known;
};
