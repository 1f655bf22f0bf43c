import assert from 'node:assert/strict';
import { test } from 'node:test';
import { isPurchaseOpen, lengthSoldBelow, stepsFor } from './shop.ts';

// eighths of an inch: 1/8 yd is 36, squaring 1 in at both ends 16
const shop = { step: 36, before: 16 };

test('a length costs the steps that hold it and what is lost at the ends', () => {
  // by hand: 56 + 16 = 72 = 2 · 36
  assert.deepEqual(
    [0, 20, 21, 56, 57].map((length) => stepsFor(length, shop)),
    [1, 1, 2, 2, 3],
  );
});

test('the longest length for a step less costs exactly that', () => {
  assert.deepEqual([lengthSoldBelow(57, shop), lengthSoldBelow(92, shop)], [56, 56]);
  for (let length = 21; length < 400; length += 7) {
    const sold = lengthSoldBelow(length, shop);
    assert.equal(stepsFor(sold, shop), stepsFor(length, shop) - 1);
    assert.equal(stepsFor(sold + 1, shop), stepsFor(length, shop));
  }
});

test('steps that are no whole number of units are rounded down', () => {
  // metric on a grid of halves: 0.1 m of 20 in steps, 2.5 cm lost at both ends, 5 % shrinkage
  assert.equal(lengthSoldBelow(30, { step: 20 / 1.05, before: 10 }), 28);
});

test('a purchase is open where the bound would cost less than the layout', () => {
  // by hand: 20 is the longest that costs one step
  assert.deepEqual(
    [20, 21, 56].map((bound) => isPurchaseOpen({ length: 56, bound }, shop)),
    [true, false, false],
  );
  assert.equal(isPurchaseOpen({ length: 56, bound: 0 }, null), false);
});
