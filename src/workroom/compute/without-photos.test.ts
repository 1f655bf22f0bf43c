import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import type { JsonObject } from '#workroom/editing';
import { withoutPhotos } from './without-photos.ts';

const bramble = JSON.parse(readFileSync('examples/bramble-lane.quilt.json', 'utf8'));

test('without its photographs a document is planned as with them, and none of them is sent', () => {
  const photo = { image: 'data:image/png;base64,iVBORw0KGgo=', width: '9' };
  const document = structuredClone(bramble);
  document.fabrics[1].photo = photo;
  document.colourways[0].fabrics.cream.photo = photo;
  const before = structuredClone(document);
  const bare = withoutPhotos(document);
  assert.ok(!JSON.stringify(bare).includes('iVBOR'));
  assert.deepEqual(bare, bramble);
  assert.deepEqual(document, before);
  const [all, less] = [document, bare].map((one) => planQuilt(one, { budget: { steps: 0 } }));
  assert.ok(all?.ok && less?.ok);
  assert.deepEqual(less.value.fabrics, all.value.fabrics);
  assert.deepEqual(less.value.notes, all.value.notes);
});

test('what has no photographs stays as it is, whatever else is wrong with it', () => {
  assert.deepEqual(withoutPhotos(bramble), bramble);
  for (const odd of [
    { format: 'x', fabrics: 3, colourways: null },
    { fabrics: [3, null, 'oat'], colourways: [null, { fabrics: [] }] },
  ] as readonly JsonObject[])
    assert.deepEqual(withoutPhotos(odd), odd);
});
