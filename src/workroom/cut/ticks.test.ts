import assert from 'node:assert/strict';
import { test } from 'node:test';
import { strayTicks, ticked, ticksIn, unticked } from './ticks.ts';

test('a tick is kept once, goes when it is taken out, and what was kept otherwise is nothing', () => {
  assert.deepEqual(ticked(['a', 'b'], 'a'), ['b', 'a']);
  assert.deepEqual(unticked(['a', 'b', 'c'], new Set(['b', 'x'])), ['a', 'c']);
  for (const text of [null, 'no json', '{"a":1}', '7']) assert.deepEqual(ticksIn(text), []);
  assert.deepEqual(ticksIn('["a",3,"b"]'), ['a', 'b']);
});

test('ticks of steps that a cloth no longer has are told, and those of other cloths are not', () => {
  const ticks = ['oat: Cut 3 strips', 'oat: gone', 'oatmeal: gone', 'plum: gone'];
  assert.deepEqual(strayTicks(ticks, { cloth: 'oat', keys: new Set(['oat: Cut 3 strips']) }), ['oat: gone']);
});
