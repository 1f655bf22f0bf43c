import assert from 'node:assert/strict';
import { test } from 'node:test';
import { beginEditing, edited, type JsonObject, undone } from '#workroom/editing';
import { pointName } from './point-name.ts';

test('a point is named after what was done last', () => {
  const begun = beginEditing<JsonObject>({ title: 'Model' });
  assert.equal(pointName(begun), 'As it began');
  const one = edited(begun, { what: 'Name the quilt', change: (draft) => void Object.assign(draft, { title: 'One' }) });
  assert.equal(pointName(one), 'After “Name the quilt”');
  assert.equal(pointName(undone(one)), 'As it began');
});
