import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { examples, pictureOf } from '#documents';
import { changePrint, exchange, freeCloth, isUsed, swapCloths } from './cloth-edits.ts';
import { isScrappy } from './tone-edits.ts';

const all = examples();

test('a cloth that takes another’s place leaves it nowhere, in every example', () => {
  let exchangedIn = 0;
  for (const example of all) {
    const quilt = structuredClone(example);
    const added = { ...quilt.fabrics[0], ...freeCloth(quilt.fabrics) };
    quilt.fabrics.push(added);
    const from = quilt.fabrics[0]?.id ?? '';
    exchange(quilt, { from, to: added.id });
    // a document may ask of a cloth what only that one has, such as motifs; all others must still be planned
    const picture = pictureOf(quilt);
    const found = [
      ...picture.strips.map(({ fabric }) => fabric),
      ...picture.placed.flatMap(
        ({ entry, fabrics }) => fabrics ?? picture.entries[entry]?.patches.map(({ fabric }) => fabric) ?? [],
      ),
    ];
    assert.ok(!found.includes(from), `${quilt.title} still shows ${from}`);
    if (found.includes(added.id)) exchangedIn += 1;
  }
  assert.ok(exchangedIn >= all.length / 2, `only in ${exchangedIn}`);
});

test('no border round a block and no part of the finish keeps the cloth that was exchanged, in every example', () => {
  let frames = 0;
  let parts = 0;
  for (const example of all) {
    for (const { id: from } of example.fabrics) {
      const quilt = structuredClone(example);
      exchange(quilt, { from, to: 'another' });
      const named = (of: QuiltDocument) => ({
        frames: of.blocks.flatMap(({ frame }) => frame?.map(({ fabric }) => fabric) ?? []),
        parts: [of, ...(of.sizes ?? [])].flatMap(({ finish }) =>
          Object.values(finish ?? {}).flatMap((part) =>
            typeof part === 'object' && 'fabric' in part ? [part.fabric] : [],
          ),
        ),
      });
      const [before, after] = [named(example), named(quilt)];
      assert.deepEqual(
        [...after.frames, ...after.parts],
        [...before.frames, ...before.parts].map((fabric) => (fabric === from ? 'another' : fabric)),
      );
      frames += before.frames.filter((fabric) => fabric === from).length;
      parts += before.parts.filter((fabric) => fabric === from).length;
    }
  }
  assert.ok(frames > 0 && parts > 0, `${frames} in frames, ${parts} in finishes`);
});

test('a new cloth is used nowhere, and those of the quilt are', () => {
  const [quilt] = all;
  assert.ok(quilt);
  const added = freeCloth(quilt.fabrics);
  assert.ok(!isUsed({ ...quilt, fabrics: [...quilt.fabrics, added] }, added.id));
  assert.ok(quilt.fabrics.every(({ id }) => isUsed(quilt, id)));
});

test('two cloths that change places lie where the other lay, and twice is not at all, in every example', () => {
  let changed = 0;
  for (const example of all) {
    const [one, other] = [example.fabrics[0]?.id ?? '', example.fabrics[1]?.id ?? ''];
    const quilt = structuredClone(example);
    swapCloths(quilt, { one, other });
    const shownIn = (of: QuiltDocument) => {
      const { strips, placed, entries } = pictureOf(of);
      return [
        ...strips.map(({ fabric }) => fabric),
        ...placed.flatMap(({ entry }) => entries[entry]?.patches.map(({ fabric }) => fabric) ?? []),
      ];
    };
    const before = shownIn(example);
    const swapped = before.map((id) => (id === one ? other : id === other ? one : id));
    // cloths drawn from lists, and turns found by value, may lie otherwise: the count of each is the same
    const count = (all: readonly string[], id: string) => all.filter((cloth) => cloth === id).length;
    const isDrawn = isScrappy(example);
    if (!isDrawn) {
      const after = shownIn(quilt);
      for (const id of [one, other]) assert.equal(count(after, id), count(swapped, id), `${example.title}: ${id}`);
      changed += 1;
    }
    const back = structuredClone(quilt);
    swapCloths(back, { one, other });
    if (!isDrawn) assert.deepEqual(shownIn(back), before, example.title);
  }
  assert.ok(changed >= all.length / 2);
});

test('a print that stands upright is said of its cloth alone, and without direction nothing is said', () => {
  const [example] = all;
  assert.ok(example);
  const quilt = structuredClone(example);
  const cloth = quilt.fabrics[1]?.id ?? '';
  delete quilt.fabrics[1]?.print;
  const before = structuredClone(quilt);
  changePrint(quilt, { cloth, print: 'one-way' });
  assert.deepEqual(
    quilt.fabrics.filter(({ id }) => id !== cloth),
    before.fabrics.filter(({ id }) => id !== cloth),
  );
  assert.equal(quilt.fabrics[1]?.print, 'one-way');
  changePrint(quilt, { cloth, print: 'none' });
  assert.deepEqual(quilt, before);
});
