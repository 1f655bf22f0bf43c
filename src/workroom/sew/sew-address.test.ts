import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  chainsEntry,
  pressingPlaceIn,
  roundIn,
  sewPlaceIn,
  withinOf,
  withinPressing,
  withinRound,
} from './sew-address.ts';

test('every place in the sewing has an address that leads back to it', () => {
  const usual = { sight: 'both', type: 'usual' } as const;
  for (const place of [
    { entry: null, step: null, ...usual },
    { entry: 'cabin~dark~mirrored', step: null, ...usual },
    { entry: '~top', step: 12, ...usual },
    { entry: 'cabin', step: 3, sight: 'machine', type: 'usual' },
    { entry: 'cabin', step: 3, sight: 'both', type: 'large' },
    { entry: 'cabin', step: 3, sight: 'board', type: 'large' },
  ] as const) {
    assert.deepEqual(sewPlaceIn(withinOf(place)), place);
  }
});

test('what is as usual is not written', () => {
  assert.deepEqual(withinOf({ entry: 'cabin', step: 3, sight: 'both', type: 'usual' }), ['cabin', '3']);
});

test('what is no number of a step is the entry', () => {
  for (const step of ['0', '-1', '1.5', 'x', '1e3', '999999'])
    assert.equal(sewPlaceIn(['cabin', step]).step, null, step);
});

test('every sight of the pressing has an address that leads back to it, and is no step', () => {
  for (const place of [
    { entry: 'cabin', chosen: null, way: 'first' },
    { entry: '~top', chosen: 12, way: 'first' },
    { entry: 'star~dusk', chosen: 3, way: 'other' },
  ] as const) {
    assert.deepEqual(pressingPlaceIn(withinPressing(place)), place);
    assert.equal(sewPlaceIn(withinPressing(place)).step, null);
  }
  assert.equal(pressingPlaceIn(['cabin', '3']), null);
  assert.equal(pressingPlaceIn(['cabin']), null);
});

test('a batch of the chains has its address as a step has, and a round one that is no batch', () => {
  const place = { entry: chainsEntry, step: 7, sight: 'machine', type: 'large' } as const;
  assert.deepEqual(sewPlaceIn(withinOf(place)), place);
  assert.equal(roundIn(withinOf(place)), null);
  assert.equal(roundIn(withinRound(3)), 3);
  assert.equal(sewPlaceIn(withinRound(3)).step, null);
  assert.equal(roundIn(['cabin', 'round-3']), null);
});
