// Log cabins by hand: lengths of the logs, their cut lengths and the finished block.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BlockPlan } from '#craft';
import { only, planned, quilt, setOf } from '../documents/documents.ts';

interface Recipe {
  readonly centre: number;
  readonly rounds: readonly (number | readonly number[])[];
  readonly order?: readonly string[];
}

const cabin = ({ centre, rounds, order }: Recipe): BlockPlan => {
  const logs = order ? new Set(order).size : 4;
  const block = {
    id: 'cabin',
    recipe: {
      kind: 'log-cabin',
      centre,
      centreTone: 'medium',
      ...(order ? { order } : {}),
      rounds: rounds.map((width) => ({ width, tones: ['light', 'light', 'dark', 'dark'].slice(0, logs) })),
    },
  };
  return only(planned(quilt({ blocks: [block], top: setOf('cabin') })).blocks);
};

/** Finished [across, along] of each log in sewing order: its width and its length. */
const logsOf = (block: BlockPlan): readonly (readonly [number, number])[] =>
  block.steps.map((step) => {
    const piece = block.pieces.find(({ label }) => label === step.join[1]);
    assert.ok(piece, `step ${step.number} adds no log`);
    const [a, b] = piece.cut.finished;
    const [width, long] = step.side === 'top' || step.side === 'bottom' ? [b, a] : [a, b];
    return long === step.seam ? [width, long] : [long, width];
  });

const lengthsOf = (block: BlockPlan): readonly number[] => logsOf(block).map(([, long]) => long);

test('three rounds of 1 in round a 1 in centre: logs of 1, 2, 2, 3, 3 … 7 in, a block of 7 in', () => {
  // derived: each log is as long as the unit that it is sewn to
  const block = cabin({ centre: 1, rounds: [1, 1, 1] });
  assert.deepEqual(lengthsOf(block), [1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7]);
  assert.deepEqual(block.finished, [7, 7]);
});

test('three rounds of 1 in round a 2 in centre are cut from 1 1/2 in strips, 66 in of them a block', () => {
  // derived: cut length = finished length + 1/2
  const block = cabin({ centre: 2, rounds: [1, 1, 1] });
  const cuts = block.steps.map((step) => block.pieces.find(({ label }) => label === step.join[1])?.cut.size ?? [0, 0]);
  assert.deepEqual(
    cuts.map(([a, b]) => Math.min(a, b)),
    Array(12).fill(1.5),
  );
  const lengths = cuts.map(([a, b]) => Math.max(a, b));
  assert.deepEqual(lengths, [2.5, 3.5, 3.5, 4.5, 4.5, 5.5, 5.5, 6.5, 6.5, 7.5, 7.5, 8.5]);
  assert.equal(
    lengths.reduce((a, b) => a + b),
    66,
  );
});

test('courthouse steps of three rounds: logs of 1, 1, 3, 3, 3, 3, 5, 5, 5, 5, 7, 7 in', () => {
  // derived: opposite sides first, so two logs of a pair are alike and the next pair spans them
  const block = cabin({ centre: 1, rounds: [1, 1, 1], order: ['top', 'bottom', 'left', 'right'] });
  assert.deepEqual(lengthsOf(block), [1, 1, 3, 3, 3, 3, 5, 5, 5, 5, 7, 7]);
  assert.deepEqual(block.finished, [7, 7]);
});

test('thick and thin, 1/2 in on two sides and 1 in on the others: every log and a block of 5 1/2 in', () => {
  // derived: width and length of each log in turn
  const widths = [0.5, 0.5, 1, 1];
  const block = cabin({ centre: 1, rounds: [widths, widths, widths] });
  assert.deepEqual(logsOf(block), [
    [0.5, 1],
    [0.5, 1.5],
    [1, 1.5],
    [1, 2.5],
    [0.5, 2.5],
    [0.5, 3],
    [1, 3],
    [1, 4],
    [0.5, 4],
    [0.5, 4.5],
    [1, 4.5],
    [1, 5.5],
  ]);
  assert.deepEqual(block.finished, [5.5, 5.5]);
});

test('a quarter log cabin, logs on two sides of a 2 in centre: 2, 3, 3, 4, 4, 5 in and a block of 5 in', () => {
  // derived: the centre stays in its corner
  const block = cabin({ centre: 2, rounds: [1, 1, 1], order: ['right', 'bottom'] });
  assert.deepEqual(lengthsOf(block), [2, 3, 3, 4, 4, 5]);
  assert.deepEqual(block.finished, [5, 5]);
});

test('a log cabin is sewn from its centre, log by log, and pressed away from it', () => {
  // common practice, no source: press outward
  const block = cabin({ centre: 1, rounds: [1, 1] });
  assert.equal(block.steps[0]?.join[0], 'A');
  assert.equal(block.pieces[0]?.tone, 'medium');
  block.steps.slice(1).forEach((step, i) => {
    assert.equal(step.join[0], `#${i + 1}`);
  });
  for (const step of block.steps) assert.equal(step.pressTo, 1);
});

test('log by log to the left, above, right and below, a unit is turned a quarter anticlockwise for the next log', () => {
  // by hand: the new log lies to the right hand; left, top, right, bottom goes round clockwise, so the unit comes
  // round the other way: from its left edge at the needle to its upper edge is a quarter turn anticlockwise (270)
  const block = cabin({ centre: 1, rounds: [1, 1], order: ['left', 'top', 'right', 'bottom'] });
  assert.deepEqual(
    block.steps.slice(1).map((step) => step.machineTurn),
    Array(7).fill(270),
  );
});

test('check sizes grow with each log and end at the unfinished block', () => {
  // by hand: centre 1, first log left: 2 × 1 finished, 2 1/2 × 1 1/2 to measure; then above: 2 × 2; and so on
  const block = cabin({ centre: 1, rounds: [1], order: ['left', 'top', 'right', 'bottom'] });
  assert.deepEqual(
    block.steps.map((step) => step.unfinished),
    [
      [2.5, 1.5],
      [2.5, 2.5],
      [3.5, 2.5],
      [3.5, 3.5],
    ],
  );
});
