import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { checkLayout } from './check-layout.ts';
import type { Demand, LaidPiece, Layout, StripPart } from './cloth.ts';

const width = length(10);
const demands: readonly Demand[] = [
  { across: length(4), along: length(3), count: 2, mayTurn: false },
  { across: length(1), along: length(2), count: 2, mayTurn: true },
];

const piece = (of: number, at: number, cut: readonly [number, number], turned = false): LaidPiece => ({
  at: length(at),
  cut: [length(cut[0]), length(cut[1])],
  turned,
  of,
});

const part = (at: number, wide: number, pieces: readonly LaidPiece[]): StripPart => ({
  at: length(at),
  width: length(wide),
  pieces,
});

const good: Layout = {
  width,
  length: length(3),
  strips: [
    {
      at: length(0),
      height: length(3),
      parts: [
        part(0, 4, [piece(0, 0, [4, 3])]),
        part(4, 4, [piece(0, 0, [4, 3])]),
        part(8, 2, [piece(1, 0, [2, 1], true), piece(1, 1, [1, 2])]),
      ],
    },
  ],
};

const codesOf = (layout: Layout): readonly string[] => [
  ...new Set(checkLayout({ layout, width, demands }).map((f) => f.code)),
];

const withParts = (change: (parts: readonly StripPart[]) => readonly StripPart[]): Layout => ({
  ...good,
  strips: good.strips.map((s) => ({ ...s, parts: change(s.parts) })),
});

test('a sound layout has no fault', () => {
  assert.deepEqual(codesOf(good), []);
});

test('a missing piece is counted', () => {
  assert.deepEqual(codesOf(withParts((parts) => parts.slice(0, 2))), ['wrong-count']);
});

test('parts that overlap are seen twice: in the nesting and from coordinates', () => {
  const moved = withParts((parts) => parts.map((p, i) => (i === 1 ? { ...p, at: length(3) } : p)));
  assert.deepEqual(codesOf(moved), ['parts-meet', 'overlap']);
});

test('a part that runs over the cloth is seen', () => {
  const moved = withParts((parts) => parts.map((p, i) => (i === 2 ? { ...p, at: length(9) } : p)));
  assert.deepEqual(codesOf(moved), ['outside-strip', 'outside-cloth']);
});

test('pieces on top of each other in a part are seen from coordinates', () => {
  const moved = withParts((parts) =>
    parts.map((p, i) => (i === 2 ? part(8, 2, [piece(1, 0, [2, 1], true), piece(1, 0, [1, 2])]) : p)),
  );
  assert.deepEqual(codesOf(moved), ['overlap']);
});

test('a piece of another size, or turned where it may not, is seen', () => {
  const cut = withParts((parts) => parts.map((p, i) => (i === 0 ? part(0, 4, [piece(0, 0, [4, 2.5])]) : p)));
  assert.deepEqual(codesOf(cut), ['wrong-size']);
  const turned = withParts((parts) => parts.map((p, i) => (i === 0 ? part(0, 4, [piece(0, 0, [3, 4], true)]) : p)));
  assert.ok(codesOf(turned).includes('may-not-turn'));
});

test('a strip whose height, or a layout whose length, is not what its pieces make is seen', () => {
  assert.deepEqual(codesOf({ ...good, length: length(4) }), ['wrong-length']);
  assert.deepEqual(
    codesOf({ ...good, length: length(4), strips: good.strips.map((s) => ({ ...s, height: length(4) })) }),
    ['strip-height'],
  );
  assert.deepEqual(codesOf({ ...good, width: length(11) }), ['wrong-width']);
});
