import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseLength } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { lengthShown, lengthTaken } from './length-text.ts';

const asStored = { unit: 'in', liked: 'in' } as const;
const inCm = { unit: 'in', liked: 'cm' } as const;
const inInches = { unit: 'cm', liked: 'in' } as const;

test('in its own unit a length is shown as it was written, with true fractions where they can be typed', () => {
  assert.equal(lengthShown('2 1/2', asStored), '2½');
  assert.equal(lengthShown('2 5/16', asStored), '2 5/16');
  assert.equal(lengthShown('6 cm', asStored), '6 cm');
  assert.equal(lengthTaken(' 2½ ', asStored), '2½');
});

test('in the other unit it is converted to be looked at', () => {
  // 1 in = 2.54 cm
  assert.equal(lengthShown('2 1/2', inCm), '6.35');
  assert.equal(lengthShown('1/8', inCm), '0.32');
  assert.equal(lengthShown('6.35', inInches), '2½');
  // 2 5/16 in are 5.87375 cm
  assert.equal(lengthShown('5.87375', inInches), '2 5/16');
  assert.equal(lengthShown('2 in', inCm), '2 in');
});

test('what is typed in the other unit is stored with it, and means what it says', () => {
  assert.equal(lengthTaken('6.5', inCm), '6.5 cm');
  assert.equal(lengthTaken('1/2 yd', inCm), '1/2 yd');
  assert.equal(lengthTaken('2½', inInches), '2½ in');
  const read = parseLength(lengthTaken('12.7', inCm), { unit: 'in', sign: 'positive' });
  assert.ok(read.ok && toNumber(read.value) === 5);
  assert.equal(lengthTaken('', inCm), '');
});
