import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gauge } from './gauge.ts';
import { drawTiles } from './tiles.ts';

const whole = gauge({ marks: [2.5, 3.5, 4.5, 5.5, 8.5].map((at) => ({ at, text: `${at} in: 1, 2, 3` })), scale: 72 });
const tiles = drawTiles({ whole, fitPt: [480, 600], alt: ({ number }) => `sheet ${number}` });
const numbersIn = (svg: string, pattern: RegExp): readonly number[] =>
  [...svg.matchAll(pattern)].map(([, figure]) => Number(figure));

test('two sheets of a gauge join where no mark and no label stands', () => {
  const [first] = tiles;
  assert.ok(first && tiles.length === 2);
  const [join = 0] = numbersIn(first.drawing.svg, /<path d="M([\d.]+) 0L/g);
  assert.ok(join > 0);
  for (const { from, to } of whole.clear ?? []) assert.ok(join < from || join > to, `${join} in ${from}–${to}`);
  // a label stands left of its mark: its right end at the mark, no wider than drawn
  for (const { x, text, sizePt } of whole.labels)
    assert.ok(Math.abs(join - x) > (text.length * sizePt * 0.56) / 2, `${join} at the label ${text}`);
});

test('the diamonds of a gauge stand below its labels, clear of each other', () => {
  const svg = tiles[0]?.drawing.svg ?? '';
  const tops = numbersIn(svg, /<path d="M[\d.]+ ([\d.]+)L[\d.]+ [\d.]+L[\d.]+ [\d.]+L[\d.]+ [\d.]+Z"/g);
  const lowest = Math.max(...whole.labels.map(({ y, sizePt }) => y + sizePt / 2));
  assert.equal(tops.length, 2);
  assert.ok(
    tops.every((top) => top > lowest),
    `${tops} under ${lowest}`,
  );
  assert.ok(Math.abs((tops[1] ?? 0) - (tops[0] ?? 0)) > 12);
});
