import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planned, quilt } from '#documents';
import { pressText } from './naming.ts';
import { blockNestingLines, shareText, topNestingLines } from './pressing.ts';

test('how many places nest is said in whole sentences', () => {
  assert.deepEqual(
    [
      [0, 0],
      [1, 1],
      [1, 0],
      [2, 2],
      [5, 5],
      [5, 3],
      [5, 0],
    ].map(([meetings = 0, nested = 0]) => shareText({ meetings, nested })),
    [
      'No seams meet across another.',
      'At one place seams meet across another: they nest there.',
      'At one place seams meet across another: they do not nest there.',
      'At 2 places seams meet across another: they nest at both of them.',
      'At 5 places seams meet across another: they nest at all of them.',
      'At 5 places seams meet across another: they nest at 3 of them.',
      'At 5 places seams meet across another: they nest at none of them.',
    ],
  );
});

const gridOf = (id: string, side: number) =>
  planned(
    quilt({
      blocks: [{ id, from: id, size: '12', colourings: { default: { accent: 'medium' } } }],
      top: { rows: Array.from({ length: side }, () => Array.from({ length: side }, () => ({ block: id }))) },
    }),
  );

test('nine patches side by side are turned by turns, all pressed alike, and that is said', () => {
  const plan = gridOf('nine-patch', 2);
  const [block] = plan.blocks;
  assert.ok(block);
  assert.deepEqual(blockNestingLines(block), [
    'At 4 places seams meet across another: they nest at all of them.',
    'In the top 2 of the 4 are turned, so that seams nest with those of the neighbours. Turned, a block looks the same: put a pin in the edge of each that is at the top of its board.',
  ]);
  // by hand: two seams over each of the two edges of both rows, four over the long seam and the corner of four blocks
  assert.match(
    topNestingLines(plan).join(' '),
    /^Between blocks, rows and borders: at 9 places seams meet across another: they nest at all of them\. In the whole quilt 25 of 25 nest, and no other choice of sides and turns nests more\. Every other block is turned (half round|a quarter (counter)?clockwise): it looks the same so, and its seams nest\.$/,
  );
});

test('blocks that look otherwise when turned take two ways by turns, and are told apart', () => {
  const plan = gridOf('jacobs-ladder', 2);
  const [block] = plan.blocks;
  assert.ok(block);
  assert.deepEqual(blockNestingLines(block).slice(1), [
    '2 of the 4 are pressed the other way at some steps, so that seams nest with those of the neighbours: they have a ring in the picture of the top. Make them apart.',
  ]);
  assert.match(topNestingLines(plan).join(' '), /A ring in a block marks those that are pressed the other way\.$/);
});

test('of one that cannot nest the steps and the reason are named', () => {
  const [block] = gridOf('jacobs-ladder', 1).blocks;
  assert.ok(block);
  assert.match(
    blockNestingLines(block)[0] ?? '',
    /^At 11 places .* nest at 9 of them\. Not where copies of step \d+ under step \d+( and copies of step \d+ under step \d+)? meet: it is one seam, which lies the same way in both\.$/,
  );
});

test('four-patches side by side are spun, all alike, and the words say which way round from either side', () => {
  const [block] = gridOf('four-patch', 3).blocks;
  assert.ok(block);
  assert.equal(block.pressing.otherWay, 0);
  const last = block.steps.at(-1);
  assert.ok(last);
  assert.match(
    pressText(last),
    /^Spin the seam: .*: (clockwise as seen on the board, counterclockwise|counterclockwise as seen on the board, clockwise) from the back\.$/,
  );
});
