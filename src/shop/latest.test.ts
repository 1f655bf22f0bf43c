import assert from 'node:assert/strict';
import { test } from 'node:test';
import { latest } from './latest.ts';

test('what was asked for last is kept, and of too many the one that was asked for longest ago goes', () => {
  const made: string[] = [];
  const kept = latest<string>(2);
  const ask = (key: string): string =>
    kept.of(key, () => {
      made.push(key);
      return `made ${key}`;
    });
  assert.equal(ask('a'), 'made a');
  ask('b');
  ask('a');
  ask('c'); // b goes: a was asked for after it
  ask('a');
  assert.deepEqual(made, ['a', 'b', 'c']);
  ask('b');
  assert.deepEqual(made, ['a', 'b', 'c', 'b']);
});
