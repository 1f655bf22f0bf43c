import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { example } from '#documents';
import type { JsonObject } from '#workroom/editing';
import { askQuilt } from './asking.ts';
import { standIn } from './stand-in.ts';

const broken = (name: string): JsonObject =>
  JSON.parse(readFileSync(`examples/broken/${name}.quilt.json`, 'utf8')) as JsonObject;

test('a sound quilt stands in for itself', () => {
  const document = example('orchard-gate') as unknown as JsonObject;
  const reply = askQuilt(document);
  assert.ok(reply.ok);
  assert.deepEqual(standIn(document), reply.value.picture);
});

test('a cell, a block and a border at fault have something plain in their place, and the rest is as it was', () => {
  const document = example('orchard-gate');
  const sound = standIn(document as unknown as JsonObject);
  assert.ok(sound);
  const [block] = document.blocks;
  assert.ok(block);
  const faulty = {
    ...document,
    blocks: document.blocks.map((one) => (one.id === block.id ? { ...one, colourings: { default: {} } } : one)),
    top: {
      ...document.top,
      borders: document.top.borders?.map((border, i) => (i === 0 ? { ...border, fabric: 'none' } : border)),
    },
  } as unknown as JsonObject;
  assert.ok(!askQuilt(faulty).ok);
  const picture = standIn(faulty);
  assert.ok(picture);
  const paths = (of: typeof picture) => of.placed.map(({ path }) => path);
  assert.deepEqual(paths(picture), paths(sound));
  // a place without patches, of the block's own name
  assert.deepEqual(
    picture.entries.filter(({ patches }) => patches.length === 0).map(({ id }) => id),
    [block.id],
  );
  assert.ok(picture.strips.some(({ path }) => path === '/top/borders/0'));
});

test('of the broken examples most can be drawn, and none is stood in for without an end', () => {
  for (const name of [
    'unknown-fabric',
    'unknown-block',
    'uneven-rows',
    'negative-length',
    'gap',
    'border-that-does-not-fit',
    'seam-zero',
  ])
    assert.ok(standIn(broken(name)), name);
  // nothing is left to draw: no cloth, no top, sections that add up to nothing known
  for (const name of ['no-fabrics', 'no-rows', 'sections-of-two-heights'])
    assert.equal(standIn(broken(name)), null, name);
});

test('the document is not touched', () => {
  const document = broken('many-problems-at-once');
  const before = JSON.stringify(document);
  standIn(document);
  assert.equal(JSON.stringify(document), before);
});
