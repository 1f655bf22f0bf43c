// A slow twin of the layout search: every layout in strips, parts and pieces of up to six pieces is tried.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { lowerBoundFor } from '#craft/strips';
import { chanceFrom } from '#ground/chance';
import { checkLayout } from './check-layout.ts';
import type { Demand } from './cloth.ts';
import { scaledJobFor } from './kinds.ts';
import { planLayout } from './layout.ts';

interface Piece {
  readonly across: number;
  readonly along: number;
  readonly mayTurn: boolean;
}

/** Widths and heights of all stacks of these pieces, over all ways of turning. */
const stacksOf = (pieces: readonly Piece[]): readonly (readonly [width: number, height: number])[] =>
  pieces.reduce<readonly (readonly [number, number])[]>(
    (all, p) =>
      all.flatMap(([w, h]) => [
        [Math.max(w, p.across), h + p.along] as const,
        ...(p.mayTurn ? [[Math.max(w, p.along), h + p.across] as const] : []),
      ]),
    [[0, 0]],
  );

/** Least length of any layout in strips, by trying every division into strips and of every strip into stacks. */
const leastLength = (width: number, pieces: readonly Piece[]): number => {
  const sets = 1 << pieces.length;
  const members = (set: number): readonly Piece[] => pieces.filter((_, i) => (set >> i) & 1);
  const stacks = Array.from({ length: sets }, (_, set) => stacksOf(members(set)));
  const heights = [...new Set(stacks.flatMap((s) => s.map(([, h]) => h)))].sort((a, b) => a - b);
  const subsetsWithFirst = function* (set: number): Generator<number> {
    const first = set & -set;
    for (let part = set; part > 0; part = (part - 1) & set) if (part & first) yield part;
  };
  // narrowest[set]: least width of stacks that hold the set within a height
  const stripHeight = new Array<number>(sets).fill(Number.POSITIVE_INFINITY);
  stripHeight[0] = 0;
  for (const height of heights) {
    const narrowest = new Array<number>(sets).fill(Number.POSITIVE_INFINITY);
    narrowest[0] = 0;
    for (let set = 1; set < sets; set++) {
      for (const part of subsetsWithFirst(set)) {
        const own = Math.min(...(stacks[part] ?? []).map(([w, h]) => (h <= height ? w : Number.POSITIVE_INFINITY)));
        narrowest[set] = Math.min(narrowest[set] as number, own + (narrowest[set & ~part] as number));
      }
      if ((narrowest[set] as number) <= width) stripHeight[set] = Math.min(stripHeight[set] as number, height);
    }
  }
  const total = new Array<number>(sets).fill(Number.POSITIVE_INFINITY);
  total[0] = 0;
  for (let set = 1; set < sets; set++)
    for (const strip of subsetsWithFirst(set))
      total[set] = Math.min(total[set] as number, (stripHeight[strip] as number) + (total[set & ~strip] as number));
  return total[sets - 1] as number;
};

test('the slow twin finds what can be seen by hand', () => {
  const square = { across: 5, along: 5, mayTurn: false };
  // derived by hand: two squares side by side; three need a second strip
  assert.equal(leastLength(10, [square, square]), 5);
  assert.equal(leastLength(10, [square, square, square]), 10);
  // derived by hand: a 4 × 6 piece beside two 6 × 3 pieces, one below the other
  const tall = { across: 4, along: 6, mayTurn: false };
  const flat = { across: 6, along: 3, mayTurn: false };
  assert.equal(leastLength(10, [tall, flat, flat]), 6);
});

test('small layouts are never shorter than the least, bounds never above it, and the search mostly meets it', () => {
  const chance = chanceFrom(2024);
  const between = (low: number, high: number): number => low + Math.floor(chance() * (high - low + 1));
  const cases = 400;
  let met = 0;
  let tight = 0;
  for (let n = 0; n < cases; n++) {
    const width = between(8, 16);
    const kinds = between(1, 4);
    const demands: Demand[] = [];
    let left = 6;
    for (let k = 0; k < kinds && left > 0; k++) {
      const count = between(1, Math.min(3, left));
      left -= count;
      demands.push({
        across: length(between(1, Math.min(8, width))),
        along: length(between(1, 8)),
        count,
        mayTurn: chance() < 0.5,
      });
    }
    const pieces = demands.flatMap((d) => Array.from({ length: d.count }, () => d));
    const least = leastLength(width, pieces);
    const laid = planLayout({ width: length(width), demands, budget: { steps: 60 } });
    assert.deepEqual(checkLayout({ layout: laid.layout, width: length(width), demands }), []);
    assert.ok(laid.layout.length >= least, `case ${n}: ${laid.layout.length} is below the least length ${least}`);
    assert.ok(laid.bound <= least, `case ${n}: bound ${laid.bound} above the least length ${least}`);
    const { job, unit } = scaledJobFor({ width: length(width), demands, turning: 'as-demanded' });
    const unaware = lowerBoundFor(job, (2 * least) / unit) * unit;
    assert.ok(unaware <= least, `case ${n}: bound ${unaware} above the least length ${least}`);
    if (laid.layout.length === least) met++;
    if (laid.bound === least) tight++;
  }
  // measured when the search was written: 385 and 327
  assert.ok(met >= 0.95 * cases, `least length met in ${met} of ${cases}`);
  assert.ok(tight >= 0.8 * cases, `bound equals the least length in ${tight} of ${cases}`);
});
