import assert from 'node:assert/strict';
import { test } from 'node:test';
import { noRecall, recalling } from './index.ts';

test('a question is worked out once while it is kept, and what was longest not asked for goes first', () => {
  const made: string[] = [];
  const { recall } = recalling(2);
  const ask = (key: string) => recall(key, () => made.push(key) && key.toUpperCase());
  assert.deepEqual(['a', 'b', 'a', 'c', 'a', 'b'].map(ask), ['A', 'B', 'A', 'C', 'A', 'B']);
  assert.deepEqual(made, ['a', 'b', 'c', 'b']);
});

test('an answer that is nothing is an answer', () => {
  let times = 0;
  const { recall } = recalling(2);
  for (let i = 0; i < 3; i++)
    assert.equal(
      recall('a', () => void times++),
      undefined,
    );
  assert.equal(times, 1);
  assert.equal(
    noRecall.recall('a', () => ++times),
    2,
  );
});
