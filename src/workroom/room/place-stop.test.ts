import assert from 'node:assert/strict';
import { test } from 'node:test';
import { placeStop } from './place-stop.ts';

test('a place in the document is mended in the view that holds it', () => {
  const blocks = [{ id: 'cabin' }, { id: 'star' }];
  assert.deepEqual(placeStop('/blocks/1/patches/list/4', blocks), { stop: 'draft', within: ['star'] });
  assert.deepEqual(placeStop('/blocks', blocks), { stop: 'draft', within: [] });
  assert.deepEqual(placeStop('/fabrics/0/colour', blocks)?.stop, 'colour');
  assert.deepEqual(placeStop('/top/borders/1', blocks)?.stop, 'set');
  assert.deepEqual(placeStop('/finish/binding/cut', blocks), { stop: 'finish', within: ['binding'] });
  for (const where of ['/seam', 'the whole document', '']) assert.equal(placeStop(where, blocks), null);
});
