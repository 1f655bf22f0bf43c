// The same parts on fewer strip heights: which heights to keep, and how parts of like kind lie together on strips of each.
// Parts are taken as they come; what is laid below what in them is not changed.
import {
  type Job,
  liesTurned,
  patternOf,
  type Stack,
  type StackUse,
  type StripUse,
  stackKey,
  stackOf,
} from '#craft/strips';

/** All parts of a layout, equal ones together, tallest and widest first. */
export const partsOf = (strips: readonly StripUse[]): readonly StackUse[] => {
  const all = new Map<string, StackUse>();
  for (const { pattern, times } of strips)
    for (const part of pattern.parts) {
      const key = stackKey(part.stack);
      all.set(key, { stack: part.stack, times: part.times * times + (all.get(key)?.times ?? 0) });
    }
  return tallestFirst([...all.values()]);
};

/** Every piece a part of its own. */
export const singleParts = (job: Job, lie: 'across' | 'along' | 'mixed'): readonly StackUse[] =>
  tallestFirst(
    job.kinds.map((kind, index) => ({
      stack: stackOf(job, [{ kind: index, turned: liesTurned(kind, job.width, lie), times: 1 }]),
      times: kind.count,
    })),
  );

const tallestFirst = (parts: readonly StackUse[]): readonly StackUse[] =>
  [...parts].sort(
    (a, b) =>
      b.stack.height - a.stack.height ||
      b.stack.width - a.stack.width ||
      (stackKey(a.stack) < stackKey(b.stack) ? -1 : 1),
  );

/** Above so many heights not every choice of them is tried: one is given up after the other. */
const mostHeights = 7;

/**
 * Choices of strip heights, each holding the tallest: all of them where they are few, else a row in which each leaves out
 * one more, the one whose parts cost least on the next higher strips.
 */
export const heightChoices = (parts: readonly StackUse[], width: number): readonly (readonly number[])[] => {
  const all = [...new Set(parts.map((p) => p.stack.height))].sort((a, b) => b - a);
  const [top, ...lower] = all;
  if (top === undefined) return [];
  if (all.length <= mostHeights)
    return Array.from({ length: 2 ** lower.length }, (_, bits) => [top, ...lower.filter((_, i) => (bits >> i) & 1)]);
  const choices: (readonly number[])[] = [all];
  const lengthOn = (height: number, own: number): number => height * Math.ceil(own / width);
  const kept = widthsBy(parts, all);
  while (kept.length > 1) {
    // without a height, its parts lie on strips of the next higher one, and no others move
    const costs = kept.slice(1).map(([height, own], i) => {
      const [higher, theirs] = kept[i] as OwnWidth;
      return lengthOn(higher, theirs + own) - lengthOn(higher, theirs) - lengthOn(height, own);
    });
    const out = 1 + costs.indexOf(Math.min(...costs));
    const [[, own] = [0, 0]] = kept.splice(out, 1);
    const above = kept[out - 1] as OwnWidth;
    kept[out - 1] = [above[0], above[1] + own];
    choices.push(kept.map(([height]) => height));
  }
  return choices;
};

/** A strip height, and how wide all parts are together that lie on strips of it. */
type OwnWidth = readonly [height: number, width: number];

const widthsBy = (parts: readonly StackUse[], heights: readonly number[]): OwnWidth[] => {
  const by = new Map(heights.map((height) => [height, 0]));
  for (const { stack, times } of parts) by.set(stack.height, (by.get(stack.height) as number) + times * stack.width);
  return [...by];
};

/** Length of the strips if each were as high as its choice says: one with lower parts only comes out lower, as under another choice. */
export const roughLengthOn = (parts: readonly StackUse[], heights: readonly number[], width: number): number =>
  [...sorted(parts, heights)].reduce(
    (all, [height, own]) => all + height * Math.ceil(own.reduce((sum, p) => sum + p.times * p.stack.width, 0) / width),
    0,
  );

/** Each part on the lowest strip that holds it. */
const sorted = (parts: readonly StackUse[], heights: readonly number[]): ReadonlyMap<number, readonly StackUse[]> => {
  const rising = [...heights].sort((a, b) => a - b);
  const by = new Map<number, StackUse[]>();
  for (const part of parts) {
    const height = rising.find((h) => h >= part.stack.height);
    if (height === undefined) throw new RangeError(`no strip is as high as a part of ${part.stack.height}`);
    const list = by.get(height) ?? [];
    by.set(height, list);
    list.push(part);
  }
  return by;
};

/**
 * How the strips of one height are filled: like parts on strips of their own and only their ends mixed; with whatever is
 * widest; or each with one of the tallest parts first, so that as few strips as can be come out lower than the others.
 */
export type Filling = 'own-first' | 'widest-first' | 'tall-in-each';

export const fillings: readonly Filling[] = ['own-first', 'widest-first', 'tall-in-each'];

/** All parts on strips of these heights; a strip on which only lower parts come to lie is as low as they. */
export const onHeights = (of: {
  readonly job: Job;
  readonly parts: readonly StackUse[];
  readonly heights: readonly number[];
  readonly filling: Filling;
}): readonly StripUse[] =>
  [...sorted(of.parts, of.heights)].flatMap(([, own]) => {
    if (of.filling !== 'own-first') return filled(of.job, own, of.filling);
    const whole: StripUse[] = [];
    const ends: StackUse[] = [];
    for (const { stack, times } of own) {
      const per = Math.floor(of.job.width / stack.width);
      const full = Math.floor(times / per);
      if (full > 0) whole.push({ pattern: patternOf([{ stack, times: per }]), times: full });
      if (times > full * per) ends.push({ stack, times: times - full * per });
    }
    return [...whole, ...filled(of.job, ends, 'widest-first')];
  });

interface Open {
  readonly stack: Stack;
  times: number;
}

/** Strip by strip, each with the widest that still fits, as often as the parts last. */
const filled = (job: Job, parts: readonly StackUse[], filling: Filling): readonly StripUse[] => {
  const left: Open[] = widestFirst(parts).map(({ stack, times }) => ({ stack, times }));
  const tallest = Math.max(...parts.map(({ stack }) => stack.height));
  const strips: StripUse[] = [];
  while (left.some(({ times }) => times > 0)) {
    const tall = filling === 'tall-in-each' ? left.find((p) => p.times > 0 && p.stack.height === tallest) : undefined;
    const order = tall
      ? [...left.filter((p) => p.stack.height < tallest), ...left.filter((p) => p.stack.height === tallest)]
      : left;
    let room = job.width - (tall?.stack.width ?? 0);
    const strip = new Map<Open, number>(tall ? [[tall, 1]] : []);
    for (const open of order) {
      const n = Math.min(open.times - (strip.get(open) ?? 0), Math.floor(room / open.stack.width));
      if (n <= 0) continue;
      strip.set(open, n + (strip.get(open) ?? 0));
      room -= n * open.stack.width;
    }
    const again = Math.min(...[...strip].map(([open, n]) => Math.floor(open.times / n)));
    for (const [open, n] of strip) open.times -= n * again;
    strips.push({ pattern: patternOf([...strip].map(([{ stack }, times]) => ({ stack, times }))), times: again });
  }
  return strips;
};

const widestFirst = (parts: readonly StackUse[]): readonly StackUse[] =>
  [...parts].sort(
    (a, b) =>
      b.stack.width - a.stack.width ||
      b.stack.height - a.stack.height ||
      (stackKey(a.stack) < stackKey(b.stack) ? -1 : 1),
  );
