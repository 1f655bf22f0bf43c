import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { TopStep } from '#craft';
import { planned, quilt } from '#documents';

const setSo = (top: Readonly<Record<string, unknown>>) =>
  quilt({
    blocks: [
      {
        id: 'pair',
        size: '4',
        recipe: { kind: 'units', grid: [1, 1], units: [{ at: [0, 0], unit: 'half-square', tones: ['light', 'dark'] }] },
      },
    ],
    top,
  });

const stepsOf = (top: Readonly<Record<string, unknown>>): readonly TopStep[] => planned(setSo(top)).top.steps;

const pair = { block: 'pair' };
const twoByTwo = [
  [pair, pair],
  [pair, pair],
];

test('slanted rows edge to edge are pressed by turns, so that their seams nest', () => {
  const steps = stepsOf({ set: 'on-point', rows: twoByTwo, between: [[pair]], settingFabric: 'light' });
  const ways = [0, 1, 2].map((row) => [
    ...new Set(steps.filter(({ stage, of }) => stage === 'row' && of === row).map(({ pressTo }) => pressTo)),
  ]);
  // by hand: three rows, toward the upper end, the lower, the upper
  assert.deepEqual(ways, [[1], [0], [1]]);
});

test('a row on point measures the block and two allowances in width, and joins in a frame turned back by an eighth', () => {
  const steps = stepsOf({ set: 'on-point', rows: twoByTwo, between: [[pair]], settingFabric: 'light' });
  for (const { stage, unfinished, angle } of steps.filter((step) => step.stage === 'row')) {
    assert.deepEqual([stage, angle], ['row', 315]);
    // by hand: 4 + 2 · 1/4
    assert.equal(unfinished[1], 4.5);
  }
});

test('corners come last in the middle, pressed outward, and the whole then measures √2 times its blocks', () => {
  const steps = stepsOf({ set: 'on-point', rows: twoByTwo, between: [[pair]], settingFabric: 'light' });
  const corners = steps.slice(-4);
  assert.deepEqual(
    corners.map(({ stage, pressTo, seam }) => [stage, pressTo, seam]),
    Array(4).fill(['corner', 1, 4]),
  );
  // by hand: 2 · 4 · √2 + 1/2
  const [width, height] = corners[3]?.unfinished ?? [0, 0];
  assert.ok(Math.abs(width - 11.8137085) < 1e-6 && Math.abs(height - 11.8137085) < 1e-6, `${width} ${height}`);
});

test('with sashing every seam of a slanted row is pressed toward its sash', () => {
  const sashing = { width: 1, fabric: 'dark', cornerstones: 'light', outer: true };
  const steps = stepsOf({ set: 'on-point', rows: [[pair]], settingFabric: 'light', sashing });
  const { strips } = planned(setSo({ set: 'on-point', rows: [[pair]], settingFabric: 'light', sashing })).top.set;
  for (const { pressTo, things } of steps.filter(({ stage }) => stage === 'row')) {
    const next = [things[0].at(-1), things[1][0]];
    const toward = next[pressTo === 'open' ? 0 : pressTo];
    assert.ok(toward !== undefined && 'strip' in toward);
    assert.equal(strips[toward.strip]?.role, 'sash');
  }
});

test('a seam beside a strip or fill is pressed toward it', () => {
  const steps = stepsOf({ set: 'sections', sections: { across: [pair, { strip: 'light', width: 1 }, pair] } });
  // by hand: block and strip, toward the strip; then the block is added and pressed back
  assert.deepEqual(
    steps.map(({ pressTo }) => pressTo),
    [1, 0],
  );
});

test('before a border is cut its side of the quilt is measured: height for the sides, width for the ends', () => {
  const steps = stepsOf({ rows: twoByTwo, borders: [{ width: 1, fabric: 'dark' }] });
  assert.deepEqual(
    steps.slice(-4).map(({ side, measure }) => [side, measure]),
    [
      ['left', 'height'],
      ['right', 'height'],
      ['top', 'width'],
      ['bottom', 'width'],
    ],
  );
  assert.ok(steps.slice(0, -4).every(({ measure }) => measure === null));
});

test('the top and the bottom of a pieced border are made alike, for each is a run turned with its side', () => {
  const other = { ...pair, mirror: true };
  const steps = stepsOf({ rows: [[other, other, other]], borders: [{ pieced: pair }] });
  const border = steps.filter(({ stage, measure }) => stage === 'border' && measure === null);
  // by hand: sides of one block, ends of five with their corners, both alike: four joins, twice
  assert.deepEqual(
    border.map(({ perBlock }) => perBlock),
    [2, 2, 2, 2],
  );
});
