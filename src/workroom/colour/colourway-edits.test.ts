import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type QuiltDocument, readQuilt } from '#craft/design';
import { example } from '#documents';
import {
  addColourway,
  asInQuilt,
  changeLook,
  freeColourway,
  mostColourways,
  removeCloth,
  removeColourway,
  removePhoto,
} from './colourway-edits.ts';
import { seenCloths } from './seen-cloths.ts';

const bramble = () => example('bramble-lane');
const image = 'data:image/png;base64,iVBORw0KGgo=';
const isSound = (quilt: QuiltDocument): void => {
  const read = readQuilt(quilt);
  assert.ok(read.ok, read.ok ? '' : JSON.stringify(read.problems));
};
const colourOf = (quilt: QuiltDocument, way: string | null, cloth: string) =>
  seenCloths(quilt, way).find(({ id }) => id === cloth)?.colour;

test('a colourway begins with the quilt’s cloths, a copy with those of its source, and neither moves the other', () => {
  const quilt = bramble();
  const made = freeColourway(quilt, null);
  assert.ok(made);
  addColourway(quilt, made);
  assert.equal(colourOf(quilt, made.id, 'moss'), colourOf(quilt, null, 'moss'));
  const copy = freeColourway(quilt, 'frost');
  assert.ok(copy && copy.id !== made.id);
  addColourway(quilt, copy);
  assert.equal(colourOf(quilt, copy.id, 'moss'), '#7f9a93');
  changeLook(quilt, { cloth: 'moss', colourway: copy.id, look: { colour: '#112233' } });
  assert.equal(colourOf(quilt, copy.id, 'moss'), '#112233');
  assert.equal(colourOf(quilt, 'frost', 'moss'), '#7f9a93');
  assert.equal(colourOf(quilt, null, 'moss'), '#5d6f3a');
  isSound(quilt);
});

test('there are as many colourways as a document may have, and no more', () => {
  const quilt = bramble();
  for (let n = 0; n < 50; n++) {
    const made = freeColourway(quilt, null);
    if (made === null) break;
    addColourway(quilt, made);
  }
  assert.equal(quilt.colourways?.length, mostColourways);
  assert.equal(freeColourway(quilt, 'frost'), null);
  isSound(quilt);
});

test('with the last colourway the list goes, as if there had been none', () => {
  const quilt = bramble();
  for (const { id } of quilt.colourways ?? []) removeColourway(quilt, id);
  assert.ok(!('colourways' in quilt));
  isSound(quilt);
});

test('a cloth as in the quilt itself is named no more by the colourway', () => {
  const quilt = bramble();
  assert.ok(seenCloths(quilt, 'frost').find(({ id }) => id === 'moss')?.isOwn);
  asInQuilt(quilt, { cloth: 'moss', colourway: 'frost' });
  assert.equal(colourOf(quilt, 'frost', 'moss'), '#5d6f3a');
  assert.ok(!seenCloths(quilt, 'frost').find(({ id }) => id === 'moss')?.isOwn);
});

test('a photograph is shown in colourways of the same colour, and can be taken away in one of them', () => {
  const quilt = bramble();
  changeLook(quilt, { cloth: 'cream', colourway: null, look: { colour: '#eeddcc', photo: { image, width: '9' } } });
  const photoIn = (way: string | null) => seenCloths(quilt, way).find(({ id }) => id === 'cream')?.photo?.image;
  // Ember does not name cream; Frost gives it a colour
  assert.deepEqual([photoIn(null), photoIn('ember'), photoIn('frost')], [image, image, undefined]);
  removePhoto(quilt, { cloth: 'cream', colourway: 'ember' });
  assert.deepEqual([photoIn(null), photoIn('ember')], [image, undefined]);
  assert.equal(colourOf(quilt, 'ember', 'cream'), '#eeddcc');
  removePhoto(quilt, { cloth: 'cream', colourway: null });
  assert.equal(photoIn(null), undefined);
  assert.equal(colourOf(quilt, null, 'cream'), '#eeddcc');
  isSound(quilt);
});

test('a cloth that goes leaves no colourway that names it', () => {
  const quilt = bramble();
  quilt.fabrics.push({ id: 'spare', colour: '#123456' });
  changeLook(quilt, { cloth: 'spare', colourway: 'frost', look: { colour: '#654321' } });
  removeCloth(quilt, 'spare');
  assert.deepEqual(quilt, bramble());
});

test('a name that is emptied is none, and leaves nothing behind', () => {
  const quilt = bramble();
  changeLook(quilt, { cloth: 'cream', colourway: 'ember', look: { name: 'Milk' } });
  assert.deepEqual(quilt.colourways?.[1]?.fabrics.cream, { name: 'Milk' });
  changeLook(quilt, { cloth: 'cream', colourway: 'ember', look: { name: '' } });
  assert.deepEqual(quilt, bramble());
  changeLook(quilt, { cloth: 'cream', colourway: null, look: { name: '' } });
  assert.ok(!('name' in (quilt.fabrics[0] ?? {})));
  assert.equal(seenCloths(quilt, null)[0]?.name, 'cream');
  isSound(quilt);
});
