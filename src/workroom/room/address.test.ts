import assert from 'node:assert/strict';
import { test } from 'node:test';
import { addressIn, addressText } from './address.ts';

test('an address leads back to where it was made, whatever a block is called', () => {
  for (const address of [
    { at: 'home' },
    { at: 'demo', file: 'heron-hanging' },
    { at: 'quilt', id: 'abc', stop: 'set', within: [] },
    { at: 'quilt', id: 'abc', stop: 'draft', within: ['Log cabin 2/b, 50 % dark'] },
    { at: 'quilt', id: 'abc', stop: 'sew', within: ['cabin', '3'] },
  ] as const) {
    assert.deepEqual(addressIn(addressText(address)), address);
  }
});

test('an address that leads nowhere is said to', () => {
  for (const hash of ['#/quilt', '#/quilt/abc', '#/quilt/abc/fly', '#/else', '#/demo', '#/demo/a/b', '#/%E0%A4%A']) {
    assert.equal(addressIn(hash).at, 'nowhere', hash);
  }
  assert.equal(addressIn('').at, 'home');
});
