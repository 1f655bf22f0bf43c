import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { askQuilt } from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import { exchange, freeCloth, isUsed } from './cloth-edits.ts';

const examples = readdirSync('examples')
  .filter((file) => file.endsWith('.quilt.json'))
  .map((file) => JSON.parse(readFileSync(`examples/${file}`, 'utf8')) as QuiltDocument);

test('a cloth that takes another’s place leaves it nowhere, in every example', () => {
  let exchangedIn = 0;
  for (const example of examples) {
    const quilt = structuredClone(example);
    const added = { ...quilt.fabrics[0], ...freeCloth(quilt.fabrics) };
    quilt.fabrics.push(added);
    const from = quilt.fabrics[0]?.id ?? '';
    exchange(quilt, { from, to: added.id });
    const reply = askQuilt(quilt as unknown as JsonObject, null);
    // a document may ask of a cloth what only that one has, such as motifs; all others must still be planned
    if (!reply.ok) assert.fail(`${quilt.title}: ${JSON.stringify(reply.problems[0])}`);
    const { picture } = reply.value;
    const found = [
      ...picture.strips.map(({ fabric }) => fabric),
      ...picture.placed.flatMap(
        ({ entry, fabrics }) => fabrics ?? picture.entries[entry]?.patches.map(({ fabric }) => fabric) ?? [],
      ),
    ];
    assert.ok(!found.includes(from), `${quilt.title} still shows ${from}`);
    if (found.includes(added.id)) exchangedIn += 1;
  }
  assert.ok(exchangedIn >= examples.length / 2, `only in ${exchangedIn}`);
});

test('a new cloth is used nowhere, and those of the quilt are', () => {
  const [quilt] = examples;
  assert.ok(quilt);
  const added = freeCloth(quilt.fabrics);
  assert.ok(!isUsed(quilt, added.id));
  assert.ok(quilt.fabrics.every(({ id }) => isUsed(quilt, id)));
});
