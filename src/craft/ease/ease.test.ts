import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import {
  countsOf,
  type Job,
  lengthOf,
  levelsFor,
  ownStripsFor,
  patternOf,
  type StripUse,
  stackOf,
} from '#craft/strips';
import { inCuttingOrder } from './cutting-order.ts';
import { eased, easeLadder } from './eased.ts';
import { compareEase, cutsIn, effortOf } from './effort.ts';

const kind = (width: number, height: number, count: number) => ({ width, height, count, mayTurn: false });

/** `[kind, pieces one below another, times]` for each part. */
const strip = (job: Job, parts: readonly (readonly [number, number, number])[], times = 1): StripUse => ({
  pattern: patternOf(
    parts.map(([k, n, t]) => ({ stack: stackOf(job, [{ kind: k, turned: false, times: n }]), times: t })),
  ),
  times,
});

const piecesIn = (job: Job, strips: readonly StripUse[]): readonly number[] =>
  job.kinds.map((_, i) => strips.reduce((n, s) => n + s.times * (countsOf(s.pattern, job.kinds.length)[i] ?? 0), 0));

test('strips of one kind take a stroke for each strip and for each piece', () => {
  // derived by hand: 42 wide, squares of 5: 8 a strip and an end of 2; 2 strips, 2 + 16 strokes; the ruler stays at 5
  const job: Job = { width: 42, kinds: [kind(5, 5, 16)] };
  const effort = effortOf(job, [strip(job, [[0, 1, 8]], 2)]);
  assert.deepEqual(effort, { length: 10, heights: 1, settings: 1, patterns: 1, strokes: 18 });
});

test('a piece as wide as the cloth takes the stroke of its strip alone', () => {
  // derived by hand: the ends of the strip are the edges of the cloth
  const job: Job = { width: 42, kinds: [kind(42, 3, 4)] };
  assert.deepEqual(effortOf(job, [strip(job, [[0, 1, 1]], 4)]), {
    length: 12,
    heights: 1,
    settings: 1,
    patterns: 1,
    strokes: 4,
  });
});

test('the rest of a strip is narrowed once for all lower parts, and a pile is cut across', () => {
  // derived by hand: strip at 8; two of 6 wide; one of 4 wide, with a stroke below its 7; the rest narrowed from 8 to 6 for three
  // piles of two 3 high: a stroke beside each and one in it. 1 + 2 + 2 + 1 + 3 + 3
  const job: Job = { width: 40, kinds: [kind(6, 8, 2), kind(5, 3, 6), kind(4, 7, 1)] };
  const { pattern } = strip(job, [
    [0, 1, 2],
    [2, 1, 1],
    [1, 2, 3],
  ]);
  assert.deepEqual(
    pattern.parts.map((p) => p.stack.height),
    [8, 7, 6],
  );
  const { strokes, measures } = cutsIn(job, pattern);
  assert.equal(strokes, 12);
  assert.deepEqual(
    [...new Set(measures)].sort((a, b) => a - b),
    [3, 4, 5, 6, 7, 8],
  );
});

test('a strip is not narrowed for one part alone', () => {
  // derived by hand: strip at 8; beside one of 7 wide; a pile of two 9 wide and 3 high: beside it and below each; one of 4 wide and 5
  // high: beside it and below it. 1 + 1 + 3 + 2; the ruler is never set to 6, what the pile is high
  const job: Job = { width: 40, kinds: [kind(7, 8, 1), kind(9, 3, 2), kind(4, 5, 1)] };
  const { pattern } = strip(job, [
    [0, 1, 1],
    [1, 2, 1],
    [2, 1, 1],
  ]);
  const { strokes, measures } = cutsIn(job, pattern);
  assert.equal(strokes, 7);
  assert.deepEqual(
    [...new Set(measures)].sort((a, b) => a - b),
    [3, 4, 5, 7, 8, 9],
  );
  // where half of its height falls off or more, that stays whole: beside the first; to 4; beside a pile of two 9 wide and 2 high,
  // and between them; beside one of 4 wide, and below its 3. 1 + 1 + 1 + 2 + 2
  const low: Job = { width: 40, kinds: [kind(7, 8, 1), kind(9, 2, 2), kind(4, 3, 1)] };
  const whole = strip(low, [
    [0, 1, 1],
    [1, 2, 1],
    [2, 1, 1],
  ]);
  assert.deepEqual(cutsIn(low, whole.pattern), { strokes: 7, measures: [8, 7, 4, 9, 2, 4, 3] });
});

test('pieces narrower than their part are trimmed with one stroke for all of a width', () => {
  // derived by hand: strip, part, one below each of the first three (they end at 5, 7, 9; the last with the strip), one trim for the narrower three
  const job: Job = { width: 40, kinds: [kind(6, 5, 1), kind(4, 2, 3)] };
  const pattern = patternOf([
    {
      stack: stackOf(job, [
        { kind: 0, turned: false, times: 1 },
        { kind: 1, turned: false, times: 3 },
      ]),
      times: 1,
    },
  ]);
  assert.equal(cutsIn(job, pattern).strokes, 1 + 1 + 3 + 1);
});

test('two heights become one where that takes no more cloth', () => {
  // derived by hand: 5 + 5 + 4 is 14 long; both kinds fit on two strips of 5, 4 of 9 wide and one of 4 wide = 40: the strip, four
  // beside them, one below the last, twice
  const job: Job = { width: 40, kinds: [kind(9, 5, 8), kind(4, 4, 2)] };
  const strips = [strip(job, [[0, 1, 4]], 2), strip(job, [[1, 1, 2]])];
  const easy = eased({ job, strips, longest: 14, solver: null });
  assert.deepEqual(effortOf(job, easy), { length: 10, heights: 1, settings: 3, patterns: 1, strokes: 12 });
});

test('strips with the longest pieces are cut first, those of one height together', () => {
  // derived by hand: a binding strip of 40 by 2 comes before squares of 9, and squares of 2 with it
  const job: Job = { width: 40, kinds: [kind(9, 9, 4), kind(40, 2, 3), kind(2, 2, 20)] };
  const order = inCuttingOrder(job, [strip(job, [[2, 1, 20]]), strip(job, [[0, 1, 4]]), strip(job, [[1, 1, 1]], 3)]);
  assert.deepEqual(
    order.map((s) => [s.pattern.height, s.times]),
    [
      [2, 3],
      [2, 1],
      [9, 1],
    ],
  );
});

const jobs = fc
  .record({
    width: fc.integer({ min: 20, max: 60 }),
    kinds: fc.array(
      fc.record({
        width: fc.integer({ min: 1, max: 20 }),
        height: fc.integer({ min: 1, max: 30 }),
        count: fc.integer({ min: 1, max: 20 }),
      }),
      { minLength: 1, maxLength: 9 },
    ),
    free: fc.boolean(),
  })
  .map(
    ({ width, kinds, free }): Job => ({
      width,
      kinds: kinds.map((k) => {
        const mayTurn = free && Math.max(k.width, k.height) <= width;
        return mayTurn
          ? { width: Math.min(k.width, k.height), height: Math.max(k.width, k.height), count: k.count, mayTurn }
          : { ...k, mayTurn };
      }),
    }),
  );

const start = (job: Job): readonly StripUse[] =>
  levelsFor(job, { rule: 'first-fit', lie: 'across', piling: 'stacked' });

test('an eased layout has exactly the pieces, is no longer, and is no more work in heights, then in all', () => {
  fc.assert(
    fc.property(jobs, (job) => {
      const strips = start(job);
      const before = effortOf(job, strips);
      const easy = eased({ job, strips, longest: lengthOf(strips), solver: null });
      const after = effortOf(job, easy);
      assert.deepEqual(
        piecesIn(job, easy),
        job.kinds.map((k) => k.count),
      );
      assert.ok(after.length <= before.length);
      assert.ok(after.heights <= before.heights);
      assert.ok(compareEase(after, before) <= 0);
      for (const { pattern } of easy)
        assert.ok(pattern.parts.reduce((all, p) => all + p.times * p.stack.width, 0) <= job.width);
    }),
    { numRuns: 150, seed: 41 },
  );
});

test('the rungs of a ladder are ever longer and ever less work, within their lengths but for own strips, and at most four', () => {
  fc.assert(
    fc.property(jobs, fc.integer({ min: 1, max: 30 }), (job, step) => {
      const strips = start(job);
      const least = lengthOf(strips);
      const longests = [least, least + step, least + 2 * step];
      const ladder = easeLadder({ job, strips, longests, hardest: 0, solver: null });
      assert.ok(ladder.length >= 1 && ladder.length <= 4);
      assert.ok((ladder[0]?.effort.length ?? 0) <= least);
      ladder.forEach((rung, i) => {
        const before = ladder[i - 1];
        assert.deepEqual(effortOf(job, rung.strips), rung.effort);
        assert.ok(rung.own || rung.effort.length <= least + 2 * step);
        if (before === undefined) return;
        assert.ok(rung.effort.length > before.effort.length);
        assert.ok(compareEase({ ...rung.effort, length: 0 }, { ...before.effort, length: 0 }) < 0);
      });
      const own = effortOf(job, ownStripsFor(job));
      const isBeaten = ladder.some(
        ({ effort }) =>
          effort.length <= own.length && compareEase({ ...effort, length: 0 }, { ...own, length: 0 }) <= 0,
      );
      assert.ok(isBeaten, 'each kind on its own strips stands in the ladder, or a rung is as good');
    }),
    { numRuns: 100, seed: 42 },
  );
});
