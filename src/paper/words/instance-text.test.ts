import assert from 'node:assert/strict';
import { test } from 'node:test';
import { instanceText } from './instance-text.ts';

test('a coarser unit is advised for lengths that are too large, and for nothing else', () => {
  const out = (path: string, found: string) =>
    instanceText({ code: 'instance/out-of-range', path, found, least: 1, most: 100 }).mend;
  assert.equal(out('/items/0/1', '101'), 'Check the figure; lengths may be counted in a coarser unit.');
  assert.equal(out('/items/0/1', '0'), 'Check the figure.');
  assert.equal(out('/items/0/2', '101'), 'Check the figure.');
  assert.equal(out('/sheets/1/count', '101'), 'Check the figure.');
});
