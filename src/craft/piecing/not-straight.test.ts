import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { DraftedBlock } from '#craft/drafting';
import { length } from '#craft/measure';
import { fromDecimal } from '#ground/exact';
import { at, distance, type Point, type Polygon, perimeter } from '#ground/plane';
import { type PiecedBlock, pieceBlock } from './index.ts';

const drawn = (size: number, outlines: readonly (readonly (readonly [number, number])[])[]): DraftedBlock => ({
  id: 'b',
  title: 'B',
  path: '/blocks/0',
  exactSize: [fromDecimal(size), fromDecimal(size)],
  size: [length(size), length(size)],
  patches: outlines.map((corners) => ({ tone: 't', path: '', points: corners.map(([x, y]) => at(x, y)) })),
  added: null,
});

const pieced = (block: DraftedBlock): PiecedBlock =>
  pieceBlock({ block, fabrics: block.patches.map(() => 'a'), lightness: () => 50, seam: length(0.25) });

const square = (x: number, y: number, w: number, h: number) =>
  [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ] as const;

/** Every inner edge is sewn once: the seams are half of what the patches have in rim beyond the block's own. */
const seamLaw = (block: DraftedBlock, result: PiecedBlock): void => {
  const rims = block.patches.reduce((all, patch) => all + perimeter(patch.points), 0);
  const seams = result.steps.reduce((all, step) => all + step.seam * step.perBlock, 0);
  assert.ok(Math.abs(seams - (rims - 4 * block.size[0]) / 2) < 1e-6, `${seams}`);
};

const ring = drawn(3, [
  square(0, 0, 2, 1),
  square(2, 0, 1, 2),
  square(1, 2, 2, 1),
  square(0, 1, 1, 2),
  square(1, 1, 1, 1),
]);

test('a ring of four round a square begins with a seam sewn part-way and ends by closing it', () => {
  const result = pieced(ring);
  assert.equal(result.joining, 'partial');
  assert.deepEqual(
    result.steps.map((step) => [step.kind, step.side, step.seam]),
    // by hand: the first rectangle lies above the centre; its seam of 2 is sewn for 1 and closed over the left arm
    [
      ['partial-begin', 'top', 1],
      ['straight', 'right', 2],
      ['straight', 'bottom', 2],
      ['straight', 'left', 2],
      ['partial-close', 'top', 1],
    ],
  );
  assert.deepEqual(result.steps.at(-1)?.unfinished, [3.5, 3.5]);
  seamLaw(ring, result);
});

test('a ring whose arms are units of their own makes the units first', () => {
  const halves = drawn(3, [
    square(0, 0, 0.5, 1),
    square(0.5, 0, 1.5, 1),
    square(2, 0, 1, 2),
    square(1, 2, 2, 1),
    square(0, 1, 1, 2),
    square(1, 1, 1, 1),
  ]);
  const result = pieced(halves);
  assert.deepEqual(
    result.steps.map((step) => step.kind),
    ['straight', 'partial-begin', 'straight', 'straight', 'straight', 'partial-close'],
  );
  seamLaw(halves, result);
});

test('a window with mitred sash and sill is set in round one inside corner, no more', () => {
  const window = drawn(4, [
    square(1, 0, 3, 3),
    [
      [0, 0],
      [1, 0],
      [1, 3],
      [0, 4],
    ],
    [
      [0, 4],
      [1, 3],
      [4, 3],
      [4, 4],
    ],
  ]);
  const result = pieced(window);
  assert.equal(result.joining, 'set-in');
  assert.equal(
    result.steps.reduce((all, step) => all + step.corners, 0),
    1,
  ); // two parts meet a third in one corner, by hand
  assert.deepEqual(result.steps.at(-1)?.unfinished, [4.5, 4.5]);
  // the first seam ends in the corner that is set in later (common practice, no source: stop where the seam lines cross)
  assert.equal(result.steps[0]?.stopsAt.length, 1);
  seamLaw(window, result);
});

test('an eight-pointed star takes eight inside corners: one for each square and triangle round it', () => {
  // eight diamonds of side 1 from the middle; corner squares of side 1; block side 2 + √2 (derived)
  const r = Math.SQRT1_2;
  const middle = 1 + r;
  const spoke = (k: number, long: number): readonly [number, number] => [
    middle + long * Math.cos((k * Math.PI) / 4),
    middle + long * Math.sin((k * Math.PI) / 4),
  ];
  const tip = (k: number): readonly [number, number] => {
    const [a, b] = [spoke(k, 1), spoke(k + 1, 1)];
    return [a[0] + b[0] - middle, a[1] + b[1] - middle];
  };
  const diamonds = [0, 1, 2, 3, 4, 5, 6, 7].map((k) => [
    [middle, middle] as const,
    spoke(k, 1),
    tip(k),
    spoke(k + 1, 1),
  ]);
  const side = 2 + Math.SQRT2;
  const corners = [
    [[0, 0], [1, 0], spoke(5, 1), [0, 1]],
    [[side - 1, 0], [side, 0], [side, 1], spoke(7, 1)],
    [spoke(1, 1), [side, side - 1], [side, side], [side - 1, side]],
    [[0, side - 1], spoke(3, 1), [1, side], [0, side]],
  ] as const;
  const edges = [
    [[1, 0], [side - 1, 0], spoke(6, 1)],
    [[side, 1], [side, side - 1], spoke(0, 1)],
    [[side - 1, side], [1, side], spoke(2, 1)],
    [[0, side - 1], [0, 1], spoke(4, 1)],
  ] as const;
  const star = drawn(side, [...diamonds, ...corners, ...edges]);
  const result = pieced(star);
  assert.equal(result.joining, 'set-in');
  assert.equal(
    result.steps.reduce((all, step) => all + step.corners * step.perBlock, 0),
    8,
  );
  assert.equal(
    result.steps.reduce((all, step) => all + step.perBlock, 0),
    15,
  );
  seamLaw(star, result);
});

test('a seam is as long as its line from end to end', () => {
  for (const step of pieced(ring).steps) {
    const line: Polygon = step.line;
    const long = line.slice(1).reduce((all, p, i) => all + distance(line[i] as Point, p), 0);
    assert.ok(Math.abs(long - step.seam) < 1e-9);
  }
});
