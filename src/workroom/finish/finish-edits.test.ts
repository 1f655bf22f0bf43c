import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { type QuiltDocument, readQuilt } from '#craft/design';
import { beginEditing, edited, undone } from '#workroom/editing';
import {
  addPart,
  changePart,
  cutBinding,
  type FinishKey,
  lackingParts,
  nameCurrency,
  priceBatting,
  priceCloth,
  runBacking,
  takeOutPart,
  usualParts,
} from './finish-edits.ts';
import { waysFrom } from './finish-ways.ts';

const text = readFileSync('examples/harvest-home-throw.quilt.json', 'utf8');
const read = () => JSON.parse(text) as QuiltDocument;
const bare = () => {
  const { finish: _, ...rest } = read();
  return rest as QuiltDocument;
};
const parts: readonly FinishKey[] = ['backing', 'batting', 'binding', 'sleeve', 'label', 'bed'];

test('a quilt without a finish gets each part with a cloth of its own, and can be planned', () => {
  const draft = bare();
  assert.deepEqual(lackingParts(draft), usualParts);
  for (const part of parts) addPart(draft, part);
  assert.deepEqual(lackingParts(draft), []);
  assert.ok(readQuilt(draft).ok);
  // the outermost border is of slate, the first cloth is ember
  assert.equal(
    draft.finish?.binding?.fabric,
    draft.top.borders?.flatMap((one) => ('fabric' in one ? one.fabric : []))[1],
  );
  assert.equal(draft.finish?.backing?.fabric, draft.fabrics[0]?.id);
});

test('a part that is there stays as it is, and one on the back takes the cloth of the backing', () => {
  const draft = read();
  const own = structuredClone(draft.finish?.backing);
  addPart(draft, 'backing');
  assert.deepEqual(draft.finish?.backing, own);
  addPart(draft, 'sleeve');
  addPart(draft, 'label');
  assert.equal(draft.finish?.sleeve?.fabric, own?.fabric);
  assert.equal(draft.finish?.label?.fabric, own?.fabric);
});

test('when the last part goes nothing is left of the finish', () => {
  const draft = bare();
  addPart(draft, 'batting');
  takeOutPart(draft, 'batting');
  assert.deepEqual(draft, bare());
  takeOutPart(draft, 'batting');
  changePart(draft, 'backing', { overage: '3' });
  runBacking(draft, 'level');
  cutBinding(draft, 'bias');
  assert.deepEqual(draft, bare());
});

test('what is as usual is not written', () => {
  const draft = bare();
  addPart(draft, 'backing');
  addPart(draft, 'binding');
  const begun = structuredClone(draft.finish);
  runBacking(draft, 'level');
  cutBinding(draft, 'bias');
  assert.equal(draft.finish?.backing?.run, 'level');
  assert.equal(draft.finish?.binding?.grain, 'bias');
  runBacking(draft, null);
  cutBinding(draft, 'straight');
  assert.deepEqual(draft.finish, begun);
});

test('a price and a currency are given and taken away', () => {
  const draft = bare();
  priceCloth(draft, { cloth: 'oat', price: 12.5 });
  nameCurrency(draft, 'EUR');
  priceBatting(draft, 3);
  addPart(draft, 'batting');
  priceBatting(draft, 30);
  assert.deepEqual(draft.finish, { batting: { price: 30 } });
  assert.ok(readQuilt(draft).ok);
  assert.equal(draft.fabrics.find(({ id }) => id === 'oat')?.price, 12.5);
  assert.equal(draft.currency, 'EUR');
  priceBatting(draft, null);
  assert.deepEqual(draft.finish, { batting: {} });
  takeOutPart(draft, 'batting');
  priceCloth(draft, { cloth: 'oat', price: null });
  priceCloth(draft, { cloth: 'no such cloth', price: 3 });
  nameCurrency(draft, '');
  assert.deepEqual(draft, bare());
});

test('each is one step, taken back byte for byte', () => {
  const edits: readonly ((draft: QuiltDocument) => void)[] = [
    (draft) => addPart(draft, 'bed'),
    (draft) => takeOutPart(draft, 'binding'),
    (draft) => runBacking(draft, 'upright'),
    (draft) => changePart(draft, 'batting', { spacing: '6' }),
  ];
  for (const change of edits) {
    const begun = beginEditing(read());
    const after = edited(begun, { what: 'Finish', change });
    assert.equal(after.steps.length, 1);
    assert.notEqual(JSON.stringify(after.document), JSON.stringify(begun.document));
    assert.equal(JSON.stringify(undone(after).document), JSON.stringify(begun.document));
  }
});

test('the ways that lie open leave the document as it is', () => {
  const document = read();
  const before = JSON.stringify(document);
  const keys = waysFrom(document).map(({ key }) => key);
  assert.equal(JSON.stringify(document), before);
  assert.deepEqual(keys, [
    'without backing',
    'without binding',
    'with sleeve',
    'with label',
    'least',
    'upright',
    'level',
    'straight',
    'bias',
    'without borders',
    'without finish',
  ]);
  assert.deepEqual(
    waysFrom(bare()).map(({ key }) => key),
    ['with backing', 'with binding', 'with sleeve', 'with label', 'with all', 'without borders', 'without finish'],
  );
});
