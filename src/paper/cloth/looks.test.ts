import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lightnessOf } from '#craft/fabric';
import { planOf, specimenDocument } from '#paper/specimen';
import { greyOf, signsAs } from './looks.ts';
import { clothSignsFor } from './sign.ts';

test('a grey is as light to the eye as its colour', () => {
  // 256 greys lie at most 1.1 apart in L* (by the formula, where L* is 8), so the nearest is within 0.6
  for (const colour of ['#9c3f2c', '#efe6d0', '#4a3426', '#000000', '#ffffff', '#0000ff', '#00ff00', '#010203']) {
    const grey = greyOf(colour);
    assert.match(grey, /^#(..)\1\1$/);
    assert.ok(Math.abs(lightnessOf(grey) - lightnessOf(colour)) < 0.6, `${colour} became ${grey}`);
  }
});

test('a grey stays what it is', () => {
  for (let channel = 0; channel < 256; channel++) {
    const grey = `#${channel.toString(16).padStart(2, '0').repeat(3)}`;
    assert.equal(greyOf(grey), grey);
  }
});

test('a look changes colours alone', () => {
  const signs = clothSignsFor(planOf(specimenDocument));
  assert.equal(signsAs(signs, 'colour'), signs);
  const line = signsAs(signs, 'line');
  assert.deepEqual(
    [...line.values()].map(({ colour }) => colour),
    ['#ffffff', '#ffffff', '#ffffff'],
  );
  assert.deepEqual(
    [...signsAs(signs, 'grey').values()].map(({ letter, hatch }) => ({ letter, hatch })),
    [...signs.values()].map(({ letter, hatch }) => ({ letter, hatch })),
  );
});
