import assert from 'node:assert/strict';
import { test } from 'node:test';
import { measuredIn, written } from './wrong-size.ts';

test('a size is kept with its step, in the order of the steps, and gone when nothing is written any more', () => {
  const one = written({}, 'cabin', { step: 4, way: 'across', text: '4 3/8' });
  const two = written(one, 'cabin', { step: 1, way: 'down', text: '2 1/2' });
  assert.deepEqual(two, {
    cabin: [
      { step: 1, across: '', down: '2 1/2' },
      { step: 4, across: '4 3/8', down: '' },
    ],
  });
  assert.deepEqual(written(two, 'cabin', { step: 4, way: 'across', text: ' ' }).cabin?.length, 1);
  assert.deepEqual(measuredIn(JSON.stringify(two)), two);
});

test('what was kept by another hand is left out where it is no size', () => {
  assert.deepEqual(measuredIn('nonsense'), {});
  assert.deepEqual(measuredIn('[1]'), {});
  assert.deepEqual(measuredIn('{"cabin":[{"step":0,"across":"1","down":""},{"step":2,"across":1,"down":""},null]}'), {
    cabin: [],
  });
});
