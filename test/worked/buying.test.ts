// Cloth in sheets, and what it costs: counted by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { cloths, plainBlock, planned, quilt, setOf } from '../documents/documents.ts';

const squares = (bought: unknown, more: object = {}) =>
  quilt({
    fabrics: [{ id: 'dark', colour: '#333', bought, ...more }],
    blocks: [plainBlock('b', 4, 4)],
    top: setOf('b', { across: 5, down: 5 }),
  });

const sheetsOf = (bought: unknown) => {
  const [cloth] = planned(squares(bought)).fabrics;
  assert.ok(cloth && 'sheets' in cloth.laid);
  assert.equal(cloth.buy.unit, 'sheets');
  return [cloth.buy.amount, cloth.laid.sheets.length, cloth.laid.sheets[0]?.width, cloth.laid.sheets[0]?.length];
};

test('25 squares of 4 1/2 in take three fat quarters, or seven fat eighths, or seven 10 in squares', () => {
  // by hand: 3 × 4 of 4 1/2 in 17 1/2 × 20 1/2; 1 × 4 in 8 1/2 × 20 1/2; 2 × 2 in 10 × 10
  assert.deepEqual(sheetsOf('fat-quarter'), [3, 3, 17.5, 20.5]);
  assert.deepEqual(sheetsOf('fat-eighth'), [7, 7, 8.5, 20.5]);
  assert.deepEqual(sheetsOf({ sheet: ['10', '10'] }), [7, 7, 10, 10]);
});

test('a fat quarter in centimetres is the same size, exactly', () => {
  // 17 1/2 · 2.54 = 44.45, 20 1/2 · 2.54 = 52.07
  const [cloth] = planned({ ...squares('fat-quarter'), unit: 'cm' }).fabrics;
  assert.ok(cloth && 'sheets' in cloth.laid);
  assert.deepEqual([cloth.laid.sheets[0]?.width, cloth.laid.sheets[0]?.length], [44.45, 52.07]);
});

test('a piece larger than its sheet is refused with both sizes', () => {
  const outcome = planQuilt(squares({ sheet: ['4', '10'] }));
  assert.ok(!outcome.ok);
  assert.deepEqual(outcome.problems[0], {
    code: 'cutting/larger-than-sheet',
    path: '/blocks/0',
    fabric: 'dark',
    needs: [4.5, 4.5],
    sheet: [4, 10],
    unit: 'in',
  });
});

test('a cloth costs its price times what is bought, and the quilt what its cloths cost', () => {
  // by hand: 3 sheets at 2.75
  const one = planned({ ...squares('fat-quarter', { price: 2.75 }), currency: 'crowns' });
  assert.equal(one.fabrics[0]?.cost, 8.25);
  assert.deepEqual(one.cost, { total: 8.25, currency: 'crowns', unpriced: [] });
});

test('a missing price is told, never guessed', () => {
  const [light, , dark] = cloths(40);
  const document = quilt({
    fabrics: [{ ...light, price: 12 }, dark as object],
    blocks: [plainBlock('a', 4, 4, 'light'), plainBlock('b', 4, 4)],
    top: { rows: [[{ block: 'a' }, { block: 'b' }]] },
  });
  // by hand: one square of 4 1/2 and twice 1 in of squaring are 6 1/2 in, 1/4 yd at 12
  assert.deepEqual(planned(document).cost, { total: 3, currency: '', unpriced: ['dark'] });
  const bare = { ...document, fabrics: [light as object, dark as object] };
  assert.deepEqual(planned(bare).cost, { total: null, currency: '', unpriced: ['light', 'dark'] });
});
