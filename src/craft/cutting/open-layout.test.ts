import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { openLayout } from './open-layout.ts';

const piece = (across: number, along: number, count: number, mayTurn = false) => ({
  across: length(across),
  along: length(along),
  count,
  mayTurn,
});

test('an open layout tells its length and its bound in the unit of its pieces', () => {
  // by hand: 5 + 5 on 10 is one strip as high as the higher, 4 1/2
  const open = openLayout({ width: length(10), demands: [piece(5, 4.5, 1), piece(5, 3.25, 1)] });
  open.advance(2);
  assert.deepEqual([open.length(), open.bound(), open.isDone()], [4.5, 4.5, true]);
});

test('searched on, its length never grows and its bound never sinks, and they never cross', () => {
  const demands = [
    piece(4.875, 4.875, 7),
    piece(3.5, 2, 9, true),
    piece(6.5, 1.5, 5),
    piece(2.25, 7.125, 6),
    piece(3, 3, 11),
  ];
  const open = openLayout({ width: length(40), demands });
  const area = demands.reduce((sum, { across, along, count }) => sum + across * along * count, 0) / 40;
  let before = { length: open.length(), bound: open.bound() };
  assert.ok(before.bound >= area - 1e-9);
  for (let step = 0; step < 20; step++) {
    open.advance(2);
    const now = { length: open.length(), bound: open.bound() };
    assert.ok(now.length <= before.length && now.bound >= before.bound && now.bound <= now.length);
    before = now;
  }
});

test('of sizes on no common grid the bound is that of the pieces rounded down', () => {
  const side = Math.SQRT2 * 3;
  const open = openLayout({ width: length(10), demands: [piece(side, side, 4)] });
  open.advance(2);
  // two beside each other, two rows
  assert.ok(Math.abs(open.length() - 2 * side) < 1e-3 && open.bound() <= 2 * side + 1e-9 && open.bound() > 1.99 * side);
});
