import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gauge } from './gauge.ts';
import { textWidthPt } from './ink.ts';
import { drawTiles } from './tiles.ts';

const whole = gauge({ marks: [2.5, 3.5, 4.5, 5.5, 8.5].map((at) => ({ at, text: `${at} in: 1, 2, 3` })), scale: 72 });
const tiles = drawTiles({ whole, fitPt: [480, 600], alt: ({ number }) => `sheet ${number}` });
/** Upright lines, from the top down. */
const uprights = (
  parts: readonly string[],
): readonly { readonly x: number; readonly from: number; readonly to: number }[] =>
  parts.flatMap((part) =>
    [...part.matchAll(/d="M([\d.]+) ([\d.]+)V([\d.]+)"/g)].map(([, x, from, to]) => ({
      x: Number(x),
      from: Number(from),
      to: Number(to),
    })),
  );
const numbersIn = (svg: string, pattern: RegExp): readonly number[] =>
  [...svg.matchAll(pattern)].map(([, figure]) => Number(figure));

test('of a gauge on several sheets each mark lies on one of them with all of its label', () => {
  const [first] = tiles;
  assert.ok(first && tiles.length === 2);
  const [join = 0] = numbersIn(first.drawing.svg, /<path d="M([\d.]+) 0L/g);
  assert.ok(join > 0);
  assert.equal(uprights(whole.parts).length, 6);
  // half of what the sheets share lies on either side of the join; a label stands left of its mark
  const [endOfFirst, startOfNext] = [join + whole.overlapPt / 2, join - whole.overlapPt / 2];
  for (const { x, text, sizePt } of whole.labels) {
    const half = textWidthPt(text, sizePt) / 2;
    assert.ok(x + half + 3 < endOfFirst || x - half > startOfNext, `${text} is parted at ${join}`);
  }
});

test('a mark just past the room of the first sheet has its label beside it on the next', () => {
  // 6.604 in are 475 pt, and a little margin: past the 468 pt of a Letter page's column
  const long = gauge({
    marks: [5.47, 5.82, 6.604, 8.985, 12.5].map((at) => ({ at, text: `about ${at} in: 2, 3` })),
    scale: 72,
  });
  const widest = Math.max(...long.labels.map(({ text, sizePt }) => textWidthPt(text, sizePt)));
  assert.ok(long.overlapPt > widest + 3);
  assert.ok(drawTiles({ whole: long, fitPt: [468, 600], alt: () => 'a sheet' }).length > 1);
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

test('no mark of a gauge runs through a label', () => {
  // the check sizes of a basket block: close marks under long lists of steps
  const sizes = {
    '1½ in: 1 to 6, 9, 12': 1.5,
    '2½ in: 2, 5': 2.5,
    '3½ in: 3, 6, 7, 8': 3.5,
    '4½ in: 4, 8, 10, 11': 4.5,
    'about 4⅞ in: 9, 12': 4.875,
    '5½ in: 11, 13, 14': 5.5,
  };
  const marks = Object.entries(sizes).map(([text, at]) => ({ text, at }));
  const { parts, labels } = gauge({ marks, scale: 72 });
  const lines = uprights(parts);
  assert.equal(lines.length, marks.length + 1);
  for (const { text, x, y, sizePt } of labels) {
    const half = textWidthPt(text, sizePt) / 2;
    for (const line of lines)
      assert.ok(
        Math.abs(line.x - x) > half || y + sizePt / 2 < line.from || y - sizePt / 2 > line.to,
        `${line.x} through ${text}`,
      );
  }
});
