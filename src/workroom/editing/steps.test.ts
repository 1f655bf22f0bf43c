import assert from 'node:assert/strict';
import { test } from 'node:test';
import { patchesBetween } from './between.ts';
import { inverseOf, PatchMisfit, patched } from './patch.ts';
import { beginEditing, canRedo, canUndo, edited, redone, undone } from './steps.ts';

interface Small {
  title?: string;
  unit: string;
  rows: { block: string; turn: number }[];
}
const small: Small = { title: 'A', unit: 'in', rows: [{ block: 'cabin', turn: 0 }] };
const text = (value: unknown): string => JSON.stringify(value);

test('a key that was taken away comes back in its place', () => {
  const begun = beginEditing(small);
  const without = edited(begun, {
    what: 'No title',
    change: (draft) => {
      delete draft.title;
    },
  });
  assert.equal(text(without.document), '{"unit":"in","rows":[{"block":"cabin","turn":0}]}');
  assert.equal(text(undone(without).document), text(small));
  assert.equal(text(redone(undone(without)).document), text(without.document));
});

test('one gesture is one step, and one that ends where it began is none', () => {
  const turned = (turn: number) => ({
    what: 'Turn',
    gesture: 'turn 1',
    change: (draft: Small) => {
      draft.rows[0] = { block: 'cabin', turn };
    },
  });
  const two = edited(edited(beginEditing(small), turned(90)), turned(180));
  assert.equal(two.steps.length, 1);
  assert.deepEqual(two.steps[0]?.patches, [{ kind: 'value', path: ['rows', 0, 'turn'], was: 0, is: 180 }]);
  assert.equal(edited(two, turned(0)).steps.length, 0);
});

test('an edit after an undo lets go of what was undone', () => {
  const titled = (title: string) => ({ what: title, change: (draft: Small) => void Object.assign(draft, { title }) });
  const b = edited(beginEditing(small), titled('B'));
  const c = edited(undone(edited(b, titled('X'))), titled('C'));
  assert.deepEqual(
    c.steps.map(({ what }) => what),
    ['B', 'C'],
  );
  assert.equal(canRedo(c), false);
  assert.equal(canUndo(undone(undone(c))), false);
  assert.equal(undone(undone(undone(c))).document.title, 'A');
});

test('a change that changes nothing is no step', () => {
  const begun = beginEditing(small);
  assert.equal(edited(begun, { what: 'Nothing', change: (draft) => void Object.assign(draft, { unit: 'in' }) }), begun);
});

test('a patch that does not fit is refused', () => {
  const patches = patchesBetween({ a: 1 }, { a: 2 });
  assert.throws(() => patched({ a: 3 }, patches), PatchMisfit);
  assert.throws(() => patched([], patches), PatchMisfit);
});

test('a list that grew in the middle is one run', () => {
  const patches = patchesBetween([1, 2, 3], [1, 9, 2, 3]);
  assert.deepEqual(patches, [{ kind: 'run', path: [], at: 1, was: [], is: [9] }]);
  assert.deepEqual(patched([1, 9, 2, 3], inverseOf(patches)), [1, 2, 3]);
});

test('keys in another order are another text, and come back so', () => {
  const [was, is] = [
    { a: 1, b: 2, c: 3 },
    { c: 3, b: 2, a: 1 },
  ];
  const patches = patchesBetween(was, is);
  assert.equal(text(patched(was, patches)), text(is));
  assert.equal(text(patched(is, inverseOf(patches))), text(was));
});

test('a key named like an object’s own works is a key like others', () => {
  const [was, is] = [JSON.parse('{"a":1}'), JSON.parse('{"a":1,"__proto__":{"b":2}}')];
  const patches = patchesBetween(was, is);
  assert.equal(text(patched(was, patches)), text(is));
  assert.equal(text(patched(is, inverseOf(patches))), text(was));
});
