import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { inSteps, length, mixedFrom, toNearestMark, upToMark } from '#craft/measure';
import { rational } from '#ground/exact';

const eighth = rational(1, 8);

test('a length off the marks goes up to the next, one on a mark stays', () => {
  // derived by hand: the half-square of leg 3 needs 3 + (2 + √2)/4 = 3.8536
  assert.deepEqual(upToMark(length(3 + (2 + Math.SQRT2) / 4), eighth), { size: 3.875, way: 'up' });
  assert.deepEqual(upToMark(length(3.875), eighth), { size: 3.875, way: 'on' });
  assert.deepEqual(upToMark(length(3.87501), eighth), { size: 4, way: 'up' });
});

test('floating point never moves a length by a mark', () => {
  // 0.1 + 0.2 and 0.7·3 miss their decimals by a few parts in 10^17
  assert.deepEqual(upToMark(length(0.1 + 0.2), rational(1, 10)), { size: 0.3, way: 'on' });
  assert.deepEqual(upToMark(length(0.7 * 3), rational(1, 10)), { size: 2.1, way: 'on' });
  assert.deepEqual(upToMark(length(2 + 9e-10), eighth), { size: 2, way: 'on' });
  assert.deepEqual(upToMark(length(2 + 2e-9), eighth), { size: 2.125, way: 'up' });
});

test('to the nearest mark says which way, and exactly between goes up', () => {
  // derived by hand
  assert.deepEqual(toNearestMark(length(2.05), eighth), { size: 2, way: 'down' });
  assert.deepEqual(toNearestMark(length(2.0625), eighth), { size: 2.125, way: 'up' });
  assert.deepEqual(toNearestMark(length(2.1), eighth), { size: 2.125, way: 'up' });
  assert.deepEqual(toNearestMark(length(2.25), eighth), { size: 2.25, way: 'on' });
  assert.deepEqual(toNearestMark(length(0.05), rational(1, 10)), { size: 0.1, way: 'up' });
});

test('the shop cuts whole steps that reach the amount', () => {
  // derived by hand: 27 in are 3/4 yd, 27.1 in are 7/8 yd in eighths
  assert.equal(inSteps(27 / 36, eighth), 0.75);
  assert.equal(inSteps(27.1 / 36, eighth), 0.875);
  assert.equal(inSteps(0, eighth), 0);
  assert.equal(inSteps(1.23, rational(1, 10)), 1.3);
});

test('marks bracket the value: the nearest is at most half a mark away, the next up less than one', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 10_000, noNaN: true }),
      fc.constantFrom(rational(1, 8), rational(1, 16), rational(1, 10), rational(1, 3), rational(1)),
      (value, ruler) => {
        const step = ruler.valueOf();
        const up = upToMark(length(value), ruler).size;
        const near = toNearestMark(length(value), ruler).size;
        assert.ok(up - value >= -1e-9 && up - value < step + 1e-9);
        assert.ok(Math.abs(near - value) <= step / 2 + 2e-9);
        assert.equal(upToMark(up, ruler).way, 'on');
      },
    ),
    { seed: 46, numRuns: 500 },
  );
});

test('a computed length shows as the fraction it is near to, else as none', () => {
  // derived by hand
  const whole = (value: number, finest?: number) => {
    const m = mixedFrom(value, finest);
    return m && `${m.negative ? '-' : ''}${m.whole} ${m.numerator}/${m.denominator}`;
  };
  assert.equal(whole(2.5), '2 1/2');
  assert.equal(whole(3.875), '3 7/8');
  assert.equal(whole(4.3125), '4 5/16');
  assert.equal(whole(1 / 3), '0 1/3');
  assert.equal(whole(-2.5), '-2 1/2');
  assert.equal(whole(-1e-9), '0 0/1');
  assert.equal(whole(2.9999999), '3 0/1');
  assert.equal(whole(3 + 63 / 64), '3 63/64');
  assert.equal(whole(3 + 63 / 64, 32), null);
  assert.equal(whole(Math.SQRT2), null);
});
