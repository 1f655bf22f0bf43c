import assert from 'node:assert/strict';
import { test } from 'node:test';
import { priceShown, priceTaken } from './price-text.ts';

test('a price is read with a point or a comma, an empty field takes it away, and all else is refused', () => {
  assert.equal(priceTaken(' 12.5 '), 12.5);
  assert.equal(priceTaken('12,50'), 12.5);
  assert.equal(priceTaken('0'), 0);
  assert.equal(priceTaken(''), null);
  for (const wrong of ['-1', '1.234', 'about 3', '12 EUR', '1000001', '1e3'])
    assert.equal(priceTaken(wrong), undefined, wrong);
});

test('what is shown is read as the same price', () => {
  for (const price of [0, 7, 12.5, 999_999.99]) assert.equal(priceTaken(priceShown(price)), price);
  assert.equal(priceShown(undefined), '');
});
