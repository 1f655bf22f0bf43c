import assert from 'node:assert/strict';
import { test } from 'node:test';
import { at } from '#ground/plane';
import { radiusFor, riseFor, riseStepped, riseThrough } from './curve-rise.ts';

// by hand: over a way of 4 a rise of 1 is a circle of radius 2½; to the left hand of the way to the right is up
const ends = { from: at(0, 0), to: at(4, 0) };
const quarter = 2 * Math.tan(Math.PI / 8);

test('a curve goes through the place that the hand is at, to either side, and no further than half round', () => {
  const through = (x: number, y: number) => riseThrough(ends, at(x, y), { parts: 1, reach: 0.1 });
  const high = Math.sqrt(2.5 ** 2 - 1) - 1.5;
  assert.equal(through(1, -high), 1);
  assert.equal(through(3, high), -1);
  assert.equal(through(2, -9), 2);
  assert.equal(through(2, 0), 0);
  // beside the ends, where no circle would do, by how far it is off the way
  assert.equal(through(-1, -1.25), 1.25);
});

test('near a quarter round, and near straight, it is drawn to that', () => {
  const near = (y: number) => riseThrough(ends, at(2, y), { parts: 1, reach: 0.2 });
  assert.ok(Math.abs(near(-0.88) - quarter) < 1e-12);
  assert.ok(Math.abs(near(0.88) + quarter) < 1e-12);
  assert.equal(near(-0.09), 0);
});

test('an arrow takes it on by an eighth of a part, and stops at what is marked on the way', () => {
  const stepped = (rise: number, arrow: 'ArrowUp' | 'ArrowDown' | 'ArrowLeft', parts = 1) =>
    riseStepped(ends, rise, { arrow, parts });
  assert.equal(stepped(0, 'ArrowUp'), 0.125);
  assert.equal(stepped(0, 'ArrowDown', 2), -0.0625);
  assert.ok(Math.abs(stepped(0.75, 'ArrowUp') - quarter) < 1e-12);
  assert.equal(stepped(quarter, 'ArrowUp'), 0.875);
  assert.equal(stepped(2, 'ArrowUp'), 2);
  assert.equal(stepped(0.5, 'ArrowLeft'), 0.5);
});

test('its radius and its rise are told from each other, where there is one', () => {
  assert.equal(radiusFor(ends, 1), 2.5);
  assert.equal(radiusFor(ends, -1), 2.5);
  assert.equal(radiusFor(ends, 0), null);
  assert.equal(riseFor(ends, 2.5), 1);
  assert.equal(riseFor(ends, 2), 2);
  assert.equal(riseFor(ends, 1.9), null);
});
