import assert from 'node:assert/strict';
import { test } from 'node:test';
import { beginEditing, edited, type JsonObject, undone } from '#workroom/editing';
import { usualVersions, type VersionsAround, versionGroups, versionWords } from './version-words.ts';

const begun = beginEditing<JsonObject>({ title: 'Model' });
const after = (count: number) => {
  let editing = begun;
  for (let n = 1; n <= count; n++)
    editing = edited(editing, { what: `Name ${n}`, change: (draft) => void Object.assign(draft, { title: `${n}` }) });
  return editing;
};
const around = (of: Partial<VersionsAround> = {}): VersionsAround => ({
  editing: begun,
  sizes: [],
  points: [],
  quilts: [],
  ...of,
});

test('what there is to choose from stands in groups, and groups without anything are left out', () => {
  assert.deepEqual(
    versionGroups(around()).map(({ name }) => name),
    ['This quilt'],
  );
  const groups = versionGroups(
    around({
      editing: after(2),
      sizes: [{ id: 'wall', title: '', top: { rows: [[{ plain: 'oat' }]] } }],
      points: [{ id: 'p', name: 'Before the border', madeMs: 1 }],
      quilts: [{ id: 'q', title: '', changedMs: 1, revision: 1 }],
    }),
  );
  assert.deepEqual(
    groups.map(({ versions }) => versions.map(({ words }) => words)),
    [['Now'], ['Before the border'], ['Before “Name 2”', 'As it began'], ['wall'], ['The quilt without a name']],
  );
});

test('of many steps the last are offered one by one, and the beginning', () => {
  const steps = versionGroups(around({ editing: after(40) })).find(({ name }) => name === 'Steps back');
  const words = steps?.versions.map((one) => one.words) ?? [];
  assert.equal(words.length, 21);
  assert.deepEqual([words[0], words.at(-2), words.at(-1)], ['Before “Name 40”', 'Before “Name 21”', 'As it began']);
});

test('what is undone is offered too', () => {
  const editing = undone(undone(after(3)));
  const words = versionGroups(around({ editing })).flatMap(({ versions }) => versions.map((one) => one.words));
  assert.deepEqual(words, ['Now', 'As it began', 'After “Name 2”', 'After “Name 3”']);
});

test('what is no more is said to be gone', () => {
  assert.equal(versionWords({ kind: 'point', id: 'p' }, around()), 'A restore point that is gone');
  assert.equal(versionWords({ kind: 'quilt', id: 'q' }, around()), 'A quilt that is gone');
  assert.equal(versionWords({ kind: 'step', done: 4 }, around({ editing: after(3) })), 'A step that is gone');
  assert.equal(versionWords({ kind: 'step', done: 3 }, around({ editing: after(3) })), 'After “Name 3”');
});

test('at first the last restore point stands against now; without one how it began, where anything was done', () => {
  const point = { id: 'p', name: 'Before', madeMs: 1 };
  const now = { kind: 'now' } as const;
  assert.deepEqual(usualVersions(around({ points: [point] })), [{ kind: 'point', id: 'p' }, now]);
  assert.deepEqual(usualVersions(around({ editing: after(1) })), [{ kind: 'step', done: 0 }, now]);
  assert.deepEqual(usualVersions(around({ editing: undone(after(1)) })), [now, now]);
});
