import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drawLabels, fitsInside } from './label.ts';
import { rectOutline } from './placed.ts';

const bounds = { x: 0, y: 0, width: 100, height: 100 };
const label = (width: number, height: number, y = 40) => ({
  text: 'A',
  outline: rectOutline({ x: 10, y, width, height }),
  fill: '#000000',
});
const textPlaces = (parts: readonly string[]) =>
  [...parts.join('').matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"/g)].map(([, x, y]) => [Number(x), Number(y)] as const);

test('a label stands in the middle of a patch with room for it', () => {
  const parts = drawLabels({ labels: [label(30, 20)], bounds, tooSmall: 'leader' });
  assert.equal(textPlaces(parts)[0]?.[0], 25);
  assert.ok(!parts.join('').includes('<path'));
});

test('a patch too small for its label has it outside on a leader', () => {
  const narrow = label(3, 60);
  assert.equal(fitsInside(narrow), false);
  const parts = drawLabels({ labels: [narrow], bounds, tooSmall: 'leader' });
  assert.ok((textPlaces(parts)[0]?.[0] ?? 0) < 0);
  assert.ok(parts.join('').includes('<path'));
  assert.deepEqual(drawLabels({ labels: [narrow], bounds, tooSmall: 'leave-out' }), []);
});

test('labels on leaders keep a clear distance from each other', () => {
  const crowd = [40, 42, 44, 46].map((y) => label(3, 1.5, y));
  const heights = textPlaces(drawLabels({ labels: crowd, bounds, tooSmall: 'leader' })).map(([, y]) => y);
  assert.equal(heights.length, 4);
  for (let i = 1; i < heights.length; i++) assert.ok((heights[i] ?? 0) - (heights[i - 1] ?? 0) >= 9 - 1e-9);
});

test('a label in a bent patch lies inside it, not in its bend', () => {
  // an L of arms ten wide: its centre of area lies off both arms
  const bent = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 90 },
    { x: 100, y: 90 },
    { x: 100, y: 100 },
    { x: 0, y: 100 },
  ];
  const [place] = textPlaces(
    drawLabels({ labels: [{ text: 'A', outline: bent, fill: '#000' }], bounds, tooSmall: 'leader' }),
  );
  const [x, y] = place ?? [50, 50];
  assert.ok(x > 0 && y < 100 && (x < 10 || y > 90), `at ${x}, ${y}`);
});

test('where the margins cannot take every label, each word stands there once; where even that is too much, none does', () => {
  // by hand: letters 4.62 pt high whose middles stand 9 pt apart; 100 pt hold 11
  const crowd = (count: number, words: number) =>
    Array.from({ length: count }, (_, i) => ({
      ...label(3, 1.5, 40 + i),
      text: String.fromCharCode(65 + (i % words)),
    }));
  const led = (count: number, words: number) =>
    textPlaces(drawLabels({ labels: crowd(count, words), bounds, tooSmall: 'leader' })).length;
  assert.equal(led(11, 11), 11);
  assert.equal(led(12, 4), 4);
  assert.equal(led(26, 26), 0);
});

test('a label on a leader reaches neither above nor below the drawing', () => {
  for (const from of [0, 0.5, 40, 98.5, 99]) {
    const crowd = Array.from({ length: 4 }, (_, i) => label(3, 1, Math.min(99, from + i / 8)));
    const svg = drawLabels({ labels: crowd, bounds, tooSmall: 'leader' }).join('');
    const letters = [...svg.matchAll(/<text x="[\d.-]+" y="([\d.]+)"[^>]*font-size="7"/g)].map(([, y]) => Number(y));
    assert.equal(letters.length, 4);
    // by hand: capitals 0.66 of 7 pt high above their base line
    assert.ok(
      letters.every((base) => base <= 100 && base - 4.62 >= -1e-3),
      letters.join(', '),
    );
  }
});
