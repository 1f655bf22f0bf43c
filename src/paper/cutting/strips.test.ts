import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planOf, specimenDocument } from '#paper/specimen';
import { cutMark, stripKindsOf, yieldOf } from './strips.ts';

const plan = planOf(specimenDocument);

test('strips by kind give exactly the pieces of the cloth', () => {
  for (const fabric of plan.fabrics) {
    const totals = new Map<number, number>();
    for (const { strip, count } of stripKindsOf(fabric.laid.layout)) {
      for (const [piece, number] of yieldOf(strip)) totals.set(piece, (totals.get(piece) ?? 0) + number * count);
    }
    const asked = new Map(fabric.pieces.map((piece, index) => [index, piece.count]));
    assert.deepEqual(new Map([...totals].toSorted(([a], [b]) => a - b)), asked, fabric.id);
  }
});

test('a size is marked by its cloth and its place in the cloth’s list', () => {
  assert.equal(cutMark('C', 2), 'C3');
});
