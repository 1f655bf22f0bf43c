import assert from 'node:assert/strict';
import { test } from 'node:test';
import { makersNames } from './makers-names.ts';

const document = {
  blocks: [
    { id: 'block', title: 'First block' },
    { id: 'a', title: 'Star' },
    { id: 'b', title: 'Star' },
    { id: 'bare' },
    { id: 'fault', title: 7 },
    { id: 'leaf', from: 'maple-leaf' },
    { id: 'own', title: 'My leaf', from: 'maple-leaf' },
    { id: 'pair 1', from: 'shoo-fly' },
    { id: 'pair 2', from: 'shoo-fly' },
    { id: 'none', from: 'no-such-block' },
  ],
  fabrics: [{ id: 'dark', name: 'Slate' }, null],
};

test('blocks and cloths are told by the names that the maker gave', () => {
  const named = makersNames(document);
  assert.deepEqual(named({ code: 'x', path: '/blocks/0', block: 'block', fabric: 'dark', fabrics: ['dark', 'oat'] }), {
    code: 'x',
    path: '/blocks/0',
    block: 'First block',
    fabric: 'Slate',
    fabrics: ['Slate', 'oat'],
  });
  assert.deepEqual(named({ block: null, other: 'block' }), { block: null, other: 'First block' });
});

test('a block of the collection goes by its name there, where the maker gave none', () => {
  const named = makersNames(document);
  assert.deepEqual(named({ block: 'leaf', other: 'own' }), { block: 'Maple Leaf', other: 'My leaf' });
});

test('what has no name, or one that another has too, keeps its id', () => {
  const named = makersNames(document);
  for (const id of ['a', 'b', 'bare', 'fault', 'pair 1', 'pair 2', 'none', 'unknown'])
    assert.deepEqual(named({ block: id }), { block: id });
  for (const faulty of [null, [], 'text', { blocks: 4, fabrics: null }])
    assert.deepEqual(makersNames(faulty)({ block: 'block' }), { block: 'block' });
});
