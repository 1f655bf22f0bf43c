import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { type QuiltDocument, readQuilt } from '#craft/design';
import { beginEditing, type Editing, edited, type JsonObject, undone } from '#workroom/editing';
import { becomeDocument, documentAfter, documentInSize, named, versionIn, versionText } from './versions.ts';

const read = (name: string) => JSON.parse(readFileSync(`examples/${name}.quilt.json`, 'utf8')) as JsonObject;
const change = (editing: Editing<JsonObject>, what: string, to: (draft: QuiltDocument) => void): Editing<JsonObject> =>
  edited(editing, { what, change: (draft) => to(draft as unknown as QuiltDocument) });

test('an address leads back to the version that it was made of', () => {
  for (const version of [
    { kind: 'now' },
    { kind: 'step', done: 0 },
    { kind: 'step', done: 412 },
    { kind: 'point', id: 'a1-b2' },
    { kind: 'size', id: 'wall hanging' },
    { kind: 'quilt', id: 'demo-harvest-home-throw' },
  ] as const)
    assert.deepEqual(versionIn(versionText(version)), version);
  for (const text of ['', 'then', 'step-', 'step--1', 'step-x', 'point-', 'other-3'])
    assert.equal(versionIn(text), null, text);
});

test('a step back is what undo gives, and one ahead what redo gives', () => {
  const begun = beginEditing(read('harvest-home-throw'));
  const one = change(begun, 'One', (draft) => void Object.assign(draft, { title: 'One' }));
  const two = change(one, 'Two', (draft) => void draft.top.borders?.pop());
  const back = undone(two);
  for (const editing of [two, back, undone(back)]) {
    assert.equal(JSON.stringify(documentAfter(editing, 0)), JSON.stringify(begun.document));
    assert.equal(JSON.stringify(documentAfter(editing, 1)), JSON.stringify(one.document));
    assert.equal(JSON.stringify(documentAfter(editing, 2)), JSON.stringify(two.document));
    assert.equal(documentAfter(editing, 3), null);
  }
});

test('going back to another version is one step, byte for byte both ways', () => {
  const names = ['harvest-home-throw', 'lantern-lane', 'twelve-fields', 'heron-hanging', 'bramble-lane'];
  for (const from of names)
    for (const to of names) {
      const before = beginEditing(read(from));
      const after = change(before, 'Go back', (draft) => becomeDocument(draft, read(to)));
      assert.equal(JSON.stringify(after.document), JSON.stringify(read(to)), `${from} to ${to}`);
      assert.equal(after.steps.length, from === to ? 0 : 1);
      assert.equal(JSON.stringify(undone(after).document), JSON.stringify(read(from)));
    }
});

test('keys that are the same in another order come back in that order', () => {
  const { title, unit, ...rest } = read('harvest-home-throw');
  const turned = { ...rest, unit: unit ?? null, title: title ?? null };
  const begun = beginEditing(read('harvest-home-throw'));
  const after = change(begun, 'Go back', (draft) => becomeDocument(draft, turned));
  assert.equal(JSON.stringify(after.document), JSON.stringify(turned));
  assert.equal(JSON.stringify(undone(after).document), JSON.stringify(begun.document));
});

test('another size stands as a document of its own, with its own finish where it has one', () => {
  const document = read('heron-hanging') as unknown as QuiltDocument;
  const finish = { binding: { fabric: document.fabrics[0]?.id ?? '' } };
  const sizes = [
    { id: 'runner', top: { ...document.top } },
    { id: 'wall', top: { ...document.top }, finish },
  ] as NonNullable<QuiltDocument['sizes']>;
  const sized = { ...document, sizes };
  assert.equal(documentInSize(sized, 'other'), null);
  assert.deepEqual(documentInSize(sized, 'wall')?.finish, finish);
  assert.deepEqual(documentInSize(sized, 'runner')?.finish, document.finish);
  assert.ok(readQuilt(documentInSize(sized, 'wall')).ok);
});

test('a version that becomes a quilt of its own is named after both, in as many letters as a title may have', () => {
  const document = read('harvest-home-throw');
  const own = named(document, { quilt: 'Harvest Home', version: 'Before the border' });
  assert.deepEqual(own, { ...document, title: 'Harvest Home, Before the border' });
  const long = named(document, { quilt: 'x'.repeat(300), version: 'y' });
  assert.ok(readQuilt(long).ok);
  assert.equal(named(document, { quilt: undefined, version: 'y' }).title, 'A quilt, y');
});
