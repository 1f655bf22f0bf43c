import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { DraftedBlock } from '#craft/drafting';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import { at, type Polygon } from '#ground/plane';
import { darkCornerOf } from './dark-corner.ts';

const block = (outlines: readonly Polygon[]): DraftedBlock => ({
  id: 'b',
  title: 'b',
  path: '/blocks/0',
  exactSize: [rational(4), rational(4)],
  size: [length(4), length(4)],
  patches: outlines.map((points) => ({ tone: 't', points, path: '' })),
  added: null,
});

const rectangle = (x: number, y: number, width: number, height: number): Polygon => [
  at(x, y),
  at(x + width, y),
  at(x + width, y + height),
  at(x, y + height),
];

const halves = block([
  [at(0, 0), at(4, 0), at(0, 4)],
  [at(4, 0), at(4, 4), at(0, 4)],
]);

const corner = (of: DraftedBlock, values: readonly number[]) => darkCornerOf(of, (patch) => values[patch] as number);

test('a block halved along its diagonal has its dark corner where the darker triangle lies', () => {
  // by hand
  assert.equal(corner(halves, [90, 30]), 'lower-right');
  assert.equal(corner(halves, [30, 90]), 'upper-left');
});

test('two halves need a difference of more than about one and a half L* to tell the dark corner', () => {
  // by hand: centres of area lie a third of half the block off the middle: 1/3 · 1/99 = 0.0034 and 1/3 · 2/98 = 0.0068
  assert.equal(corner(halves, [50, 51]), null);
  assert.equal(corner(halves, [50, 52]), 'upper-left');
});

test('two halves of one value have no dark corner', () => {
  assert.equal(corner(halves, [50, 50]), null);
});

test('a block that is dark along one side has no dark corner', () => {
  assert.equal(corner(block([rectangle(0, 0, 2, 4), rectangle(2, 0, 2, 4)]), [90, 20]), null);
});

test('a block that is dark in its middle alone has no dark corner', () => {
  const frame = [rectangle(0, 0, 4, 1), rectangle(0, 3, 4, 1), rectangle(0, 1, 1, 2), rectangle(3, 1, 1, 2)];
  assert.equal(corner(block([rectangle(1, 1, 2, 2), ...frame]), [10, 90, 90, 90, 90]), null);
});

test('a block without patches has no dark corner', () => {
  assert.equal(corner(block([]), []), null);
});
