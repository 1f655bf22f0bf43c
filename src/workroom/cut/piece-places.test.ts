import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { example, pictureOf } from '#documents';
import { lookAt } from '#workroom/asking';
import { clothAt, piecesAt, placesOf } from './piece-places.ts';

const examples = [
  'harvest-home-throw',
  'twelve-fields',
  'bramble-lane',
  'lantern-lane',
  'skerry-walk',
  'crumb-tin',
  'biscuit-box',
];

const seen = (name: string) => {
  const document = example(name);
  const planned = planQuilt(document, { budget: { steps: 0 } });
  assert.ok(planned.ok);
  return { plan: planned.value, picture: pictureOf(document) };
};

test('the pieces of all cloths together go to every patch of the top once, and each patch leads back to its piece', () => {
  for (const name of examples) {
    const { plan, picture } = seen(name);
    const strips = new Set<number>();
    const patches = new Set<string>();
    for (const { id } of plan.fabrics) {
      const { shown } = lookAt(plan, 'cutting', { cloth: id, hand: 'right' });
      assert.ok(shown);
      shown.pieces.forEach((piece, index) => {
        const places = placesOf({ cloth: id, uses: piece.uses, picture });
        for (const strip of places.strips) {
          strips.add(strip);
          assert.equal(clothAt(picture, { strip }), id);
          assert.ok(
            piecesAt({ pieces: shown.pieces, picture, spot: { strip } }).includes(index),
            `${name} ${piece.mark}`,
          );
        }
        for (const spot of places.patches) {
          patches.add(`${spot.placed} ${spot.patch}`);
          assert.equal(clothAt(picture, spot), id);
          assert.ok(piecesAt({ pieces: shown.pieces, picture, spot }).includes(index), `${name} ${piece.mark}`);
        }
      });
    }
    assert.equal(strips.size, picture.strips.length, name);
    const all = picture.placed.reduce((sum, { entry }) => sum + (picture.entries[entry]?.patches.length ?? 0), 0);
    assert.equal(patches.size, all, name);
  }
});

test('a log of the throw is lit in its 36 places', () => {
  const { plan, picture } = seen('harvest-home-throw');
  const { shown } = lookAt(plan, 'cutting', { cloth: 'ember', hand: 'right' });
  // README: A1 is the centre of the log cabin, 36 of it
  const places = placesOf({ cloth: 'ember', uses: shown?.pieces[0]?.uses ?? [], picture });
  assert.equal(places.patches.length, 36);
  assert.deepEqual(places.entries, [{ entry: 0, patches: [0] }]);
});
