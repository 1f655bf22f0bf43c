import assert from 'node:assert/strict';
import { test } from 'node:test';
import { actionFor } from './drawing-keys.ts';

const none = { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false };

test('arrows go to the neighbour; with Shift they take it too where several can be chosen, else move the drawing', () => {
  assert.deepEqual(actionFor({ ...none, key: 'ArrowLeft' }, 'several'), { kind: 'go', way: 'left' });
  assert.deepEqual(actionFor({ ...none, key: 'ArrowLeft', shiftKey: true }, 'several'), {
    kind: 'extend',
    way: 'left',
  });
  assert.equal(actionFor({ ...none, key: 'ArrowLeft', shiftKey: true }, 'one')?.kind, 'pan');
});

test('the command key with an arrow moves the drawing whatever can be chosen, and is for others with any other key', () => {
  for (const choosing of ['one', 'several'] as const) {
    assert.equal(actionFor({ ...none, key: 'ArrowUp', ctrlKey: true }, choosing)?.kind, 'pan');
    assert.equal(actionFor({ ...none, key: 'ArrowUp', metaKey: true, shiftKey: true }, choosing)?.kind, 'pan');
    assert.equal(actionFor({ ...none, key: '0', ctrlKey: true }, choosing), null);
    assert.equal(actionFor({ ...none, key: 'ArrowUp', altKey: true }, choosing), null);
  }
});

test('Space takes one more or one less, letters are for others', () => {
  assert.deepEqual(actionFor({ ...none, key: ' ' }, 'several'), { kind: 'toggle' });
  assert.equal(actionFor({ ...none, key: 't' }, 'several'), null);
});
