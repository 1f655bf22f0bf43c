import assert from 'node:assert/strict';
import { test } from 'node:test';
import { at } from '#ground/plane';
import { headingAcross, headingOf, machineTurn } from './machine.ts';

test('logs added clockwise are each met by a quarter turn the other way', () => {
  // by hand: with the left edge at the right hand the unit lies half round; its top then points down, and comes to the
  // right by a quarter turn counterclockwise
  for (const [last, next] of [
    ['left', 'top'],
    ['top', 'right'],
    ['right', 'bottom'],
    ['bottom', 'left'],
  ] as const) {
    assert.equal(machineTurn(headingOf[next], { heading: headingOf[last], turn: 0 }), 270);
  }
});

test('logs added on opposite sides are met by half a turn', () => {
  assert.equal(machineTurn(headingOf.bottom, { heading: headingOf.top, turn: 0 }), 180);
});

test('the second sky of a goose is met by a quarter turn, the first by an eighth', () => {
  // a goose from (0,2) to (4,2) with its point at (2,0): its right side runs down to the right, its left side up to it
  const right = headingAcross([at(2, 0), at(4, 2)], at(3.5, 0.5));
  const left = headingAcross([at(0, 2), at(2, 0)], at(0.5, 0.5));
  assert.deepEqual([right, left], [315, 225]);
  assert.equal(machineTurn(right, 'as on the board'), 45);
  assert.equal(machineTurn(left, { heading: right, turn: 0 }), 90);
});

test('a square is laid as it is taken up, any other piece turned from the board', () => {
  assert.equal(machineTurn(headingOf.left, 'square'), 0);
  assert.equal(machineTurn(headingOf.bottom, 'as on the board'), 270);
});

test('a unit that lies turned on the board brings its own turn along', () => {
  assert.equal(machineTurn(headingOf.right, { heading: headingOf.right, turn: 90 }), 90);
});
