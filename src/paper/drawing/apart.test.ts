import assert from 'node:assert/strict';
import { test } from 'node:test';
import { at, grown } from '#ground/plane';
import { movedApart } from './apart.ts';

const square = (x: number, y: number, side: number) => [
  at(x, y),
  at(x + side, y),
  at(x + side, y + side),
  at(x, y + side),
];

test('two squares of 2 that grow by a quarter on each side move half an inch apart', () => {
  // by hand: centres 1 and 3 from a middle at 2 move by ±0.25, a quarter of their distance from it
  const places = [square(0, 0, 2), square(2, 0, 2)];
  const [left, right] = movedApart({ outlines: places.map((p) => grown(p, 0.25)), places, middle: at(2, 1) });
  assert.ok(Math.abs(Math.max(...(left ?? []).map((p) => p.x)) - 2) < 0.002, JSON.stringify(left));
  assert.ok(Math.abs(Math.min(...(right ?? []).map((p) => p.x)) - 2) < 0.002);
});

test('pieces that do not overlap stay where they are', () => {
  const places = [square(0, 0, 2), square(2, 0, 2)];
  const moved = movedApart({ outlines: places, places, middle: at(2, 1) });
  assert.ok(moved.every((outline, i) => outline.every((p, k) => Math.abs(p.x - (places[i]?.[k]?.x ?? 0)) < 0.001)));
});

test('a small square inside the arms of an angle is moved out of it', () => {
  const angle = [at(0, 0), at(4, 0), at(4, 1), at(1, 1), at(1, 4), at(0, 4)];
  const inner = square(1, 1, 1);
  const grownOnes = [grown(angle, 0.25), grown(inner, 0.25)];
  const [a, b] = movedApart({ outlines: grownOnes, places: [angle, inner], middle: at(2, 2) });
  // the inner corner of the angle and the square's own corner no longer pass each other
  const corner = (a ?? [])[3];
  const own = (b ?? [])[0];
  assert.ok(corner && own && own.x >= corner.x - 0.002 && own.y >= corner.y - 0.002, JSON.stringify([corner, own]));
});
