// Where blocks of one kind lie side by side, half of them may be pressed the other way, by turns like a checkerboard: is it
// worth while? Which block takes which way is a search; how each way is pressed is then chosen as one.

import { type Pressed, type PressTask, pressAll, type TopMeeting, type TopWhose, type Variants } from './model.ts';
import { doNest, type Press, type Way, wayAt } from './press.ts';

export interface PressedInVariants {
  readonly variants: Variants;
  readonly pressed: Pressed;
  /** Whether the variants themselves leave nothing to find. */
  readonly proven: boolean;
}

/** Of an entry's blocks, that take its second way. */
const leastShare = 0.25;

/** Times that blocks are looked at again, one by one. */
const rounds = 3;

/** All blocks of an entry alike, and where that nests more, in two ways: the ways that nest most last. */
export const pressInVariants = (task: PressTask): readonly PressedInVariants[] => {
  const plain: Variants = task.entryOf.map(() => 0);
  const once = pressAll(task, plain);
  const candidates = worthTrying(task, once);
  const alike: PressedInVariants = { variants: plain, pressed: once, proven: once.proven && candidates.size === 0 };
  if (candidates.size === 0) return [alike];
  const all = improved(task, byTurns(task, candidates));
  const kept = [...candidates].reduce((best, entry) => withoutIdle(task, best, entry), all);
  return kept.pressed.nested > once.nested ? [alike, { ...kept, proven: false }] : [alike];
};

/** Entries with a seam that does not nest with one of another block, and that has two ways. */
const worthTrying = (task: PressTask, pressed: Pressed): ReadonlySet<number> => {
  const found = new Set<number>();
  const ways = waysOf(task, pressed);
  for (const { whose, nests } of task.between) {
    if (doNest(nests, ways(whose[0], 0), ways(whose[1], 0))) continue;
    for (const one of whose) {
      if (!('placed' in one)) continue;
      const entry = task.entryOf[one.placed] as number;
      if ((task.blocks[entry]?.steps[one.step]?.presses.length ?? 1) > 1) found.add(entry);
    }
  }
  return new Set([...found].sort((a, b) => a - b));
};

const waysOf =
  (task: PressTask, pressed: Pressed) =>
  (whose: TopWhose, variant: 0 | 1): Way =>
    'run' in whose
      ? wayAt(pressed.runs[whose.run] as Press, 1)
      : wayAt(pressed.steps[task.entryOf[whose.placed] as number]?.[variant][whose.step] as Press, whose.clockwise);

/** Blocks of one entry that meet take their two ways by turns, as far as that goes. */
const byTurns = (task: PressTask, candidates: ReadonlySet<number>): Variants => {
  const near: number[][] = task.entryOf.map(() => []);
  for (const { whose } of task.between) {
    const [a, b] = whose;
    if (!('placed' in a) || !('placed' in b)) continue;
    const entry = task.entryOf[a.placed] as number;
    if (entry !== task.entryOf[b.placed] || !candidates.has(entry)) continue;
    near[a.placed]?.push(b.placed);
    near[b.placed]?.push(a.placed);
  }
  const variants = new Map<number, 0 | 1>();
  for (let first = 0; first < near.length; first++) {
    if (variants.has(first)) continue;
    variants.set(first, 0);
    const waiting = [first];
    for (let placed = waiting.pop(); placed !== undefined; placed = waiting.pop()) {
      for (const next of near[placed] as readonly number[]) {
        if (variants.has(next)) continue;
        variants.set(next, variants.get(placed) === 0 ? 1 : 0);
        waiting.push(next);
      }
    }
  }
  return task.entryOf.map((_, placed) => variants.get(placed) as 0 | 1);
};

interface Try {
  readonly variants: Variants;
  readonly pressed: Pressed;
}

/** Every block by itself takes the way that nests more, and all is pressed anew, as long as that helps. */
const improved = (task: PressTask, begun: Variants): Try => {
  let best: Try = { variants: begun, pressed: pressAll(task, begun) };
  const meetingsOf = byPlaced(task);
  for (let round = 0; round < rounds; round++) {
    const variants = [...best.variants];
    const ways = waysOf(task, best.pressed);
    meetingsOf.forEach((meetings, placed) => {
      const other = variants[placed] === 0 ? 1 : 0;
      if (best.pressed.steps[task.entryOf[placed] as number]?.[other].length === 0) return;
      const nestedAs = (variant: 0 | 1): number => {
        const wayOf = (whose: TopWhose): Way =>
          ways(whose, 'run' in whose ? 0 : whose.placed === placed ? variant : (variants[whose.placed] as 0 | 1));
        return meetings.filter(({ whose: [a, b], nests }) => doNest(nests, wayOf(a), wayOf(b))).length;
      };
      if (nestedAs(other) > nestedAs(variants[placed] as 0 | 1)) variants[placed] = other;
    });
    if (variants.every((variant, placed) => variant === best.variants[placed])) break;
    const pressed = pressAll(task, variants);
    if (pressed.nested <= best.pressed.nested) break;
    best = { variants, pressed };
  }
  return best;
};

const byPlaced = (task: PressTask): readonly (readonly TopMeeting[])[] => {
  const lists: TopMeeting[][] = task.entryOf.map(() => []);
  for (const meeting of task.between) {
    for (const placed of new Set(meeting.whose.flatMap((one) => ('placed' in one ? [one.placed] : [])))) {
      lists[placed]?.push(meeting);
    }
  }
  return lists;
};

/** A second way is not worth its care where it nests fewer meetings than blocks are pressed so, or for a few blocks only. */
const withoutIdle = (task: PressTask, tried: Try, entry: number): Try => {
  const own = tried.variants.filter((_, placed) => task.entryOf[placed] === entry);
  const ones = own.filter((variant) => variant === 1).length;
  if (ones === 0) return tried;
  const variants = tried.variants.map((variant, placed) => (task.entryOf[placed] === entry ? 0 : variant));
  const pressed = pressAll(task, variants);
  const fewer = Math.min(ones, own.length - ones);
  const gain = tried.pressed.nested - pressed.nested;
  if (gain < fewer || fewer < leastShare * own.length) return { variants, pressed };
  // the way that more blocks take comes first
  return ones > own.length - ones ? turnedRound(task, tried, entry) : tried;
};

const turnedRound = (task: PressTask, { variants, pressed }: Try, entry: number): Try => ({
  variants: variants.map((variant, placed) => (task.entryOf[placed] !== entry ? variant : variant === 0 ? 1 : 0)),
  pressed: {
    ...pressed,
    steps: pressed.steps.map((steps, i) => (i === entry ? [steps[1], steps[0]] : steps)),
  },
});
