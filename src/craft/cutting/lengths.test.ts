import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import { joinedAnyWay, joinedOnCloth, joinedStrip, joiningRun } from './lengths.ts';

const pieces = (long: number): readonly number[] =>
  joinedStrip({ long: length(long), width: length(40), seam: length(0.25) });

test('a strip longer than the cloth is wide is whole widths and what is missing, two allowances a join', () => {
  assert.deepEqual(pieces(64.5), [40, 25]); // 40 + 25 − 1/2, by hand
  assert.deepEqual(pieces(40), [40]);
});

test('a scrap at the end is shared with the piece before it', () => {
  assert.deepEqual(pieces(40.5), [21, 20]); // 41 in two pieces, the first in whole inches; 21 + 20 − 1/2
  assert.deepEqual(pieces(81), [40, 21, 21]); // 40 + 42 shared; 82 − two joins of 1/2
});

test('of sheets strips are joined along the longer side, where they are not too wide for it', () => {
  const eighth = { width: length(8.5), joining: [length(8.5), length(20.5)] as const };
  const strip = (long: number, short: number, nature: Parameters<typeof joinedAnyWay>[0]['nature']) =>
    joinedAnyWay({ size: [length(long), length(short)], nature, seam: length(0.25) });
  // by hand: 20 1/2 + 20 − 1/2
  assert.deepEqual(strip(40, 2.5, eighth), [
    [2.5, 20.5],
    [2.5, 20],
  ]);
  assert.deepEqual(strip(8, 2.5, eighth), [[8, 2.5]]);
  assert.deepEqual(joiningRun(eighth, length(9)), { long: 8.5, runs: 'across' });
  // a strip of 2 1/2 in as it is sold, written either way
  const written = [
    { width: length(40), joining: [length(40), length(2.5)] as const },
    { width: length(2.5), joining: [length(2.5), length(40)] as const },
  ];
  assert.deepEqual(
    written.map((nature) => joiningRun(nature, length(2.5))),
    [
      { long: 40, runs: 'across' },
      { long: 40, runs: 'along' },
    ],
  );
});

test('a print that stands upright is joined along a sheet that is too short, across one that is too narrow', () => {
  const quarter = {
    width: length(17.5),
    joining: [length(17.5), length(20.5)] as const,
    printRuns: 'lengthwise',
  } as const;
  const strip = (across: number, along: number) =>
    joinedOnCloth({ size: [length(across), length(along)], nature: quarter, seam: length(0.25) });
  // by hand: 20 1/2 + 18 1/2 − 1/2, 17 1/2 + 13 1/2 − 1/2
  assert.deepEqual(strip(2.5, 38.5), [
    [2.5, 20.5],
    [2.5, 18.5],
  ]);
  assert.deepEqual(strip(30.5, 2.5), [
    [17.5, 2.5],
    [13.5, 2.5],
  ]);
  // of cloth by the length it lies along it in one piece
  assert.deepEqual(
    joinedOnCloth({
      size: [length(2.5), length(90)],
      nature: { width: length(40), printRuns: 'lengthwise' },
      seam: length(0.25),
    }),
    [[2.5, 90]],
  );
});
