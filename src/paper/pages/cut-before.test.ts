import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type FabricPlan, planQuilt } from '#craft';
import { directionTexts } from '#paper/words';
import { cutBefore, ownDirections, workInAll } from './cut-before.ts';

/** So many squares cut 5 in, of cloth 40 in wide. */
const clothOf = (count: number, cloth: object, cutting: object = {}): FabricPlan => {
  const document = {
    format: 'seamstead-quilt',
    version: 1,
    unit: 'in',
    cutting,
    fabrics: [{ id: 'dark', colour: '#4a3023', usableWidth: 40, ...cloth }],
    blocks: [
      {
        id: 'square',
        size: 4.5,
        patches: {
          grid: [1, 1],
          list: [
            {
              points: [
                [0, 0],
                [1, 0],
                [1, 1],
                [0, 1],
              ],
              tone: 'dark',
            },
          ],
        },
      },
    ],
    top: { rows: [Array.from({ length: count }, () => ({ block: 'square' }))] },
  };
  const outcome = planQuilt(document, { budget: { steps: 0 } });
  assert.ok(outcome.ok);
  return outcome.value.fabrics[0] as FabricPlan;
};

const numbersIn = ({ parts }: FabricPlan['directions']): readonly number[] =>
  parts.flatMap(({ heights }) => heights.flatMap(({ patterns }) => patterns.map(({ number }) => number)));

test('a cloth cut as usual has nothing cut before', () => {
  const cloth = clothOf(16, {});
  assert.deepEqual(cutBefore(cloth), []);
  assert.equal(ownDirections(cloth), cloth.directions);
});

test('ends come first, then strips on the fold, and all strips are numbered through', () => {
  // by hand: an end of 10 × 10 takes the three squares of the fourth strip, two above one; the three full strips are one kind
  const cloth = clothOf(27, { ends: [{ size: [10, 10] }] }, { fold: true });
  const before = cutBefore(cloth);
  assert.deepEqual(
    before.map(({ of }) => of),
    ['ends', 'fold'],
  );
  assert.deepEqual(
    [...before.map(({ directions }) => numbersIn(directions)), numbersIn(ownDirections(cloth))],
    [[1, 2], [3], []],
  );
});

test('what is cut of ends and on the fold is told as such', () => {
  const cloth = clothOf(27, { ends: [{ size: [10, 10] }] }, { fold: true });
  const figures = {
    length: (value: number) => `${value} in`,
    size: ([a, b]: readonly [number, number]) => `${a} × ${b} in`,
    amount: (amount: number) => `${amount} yd`,
    mark: () => 'A1',
    pieces: cloth.pieces,
    hand: 'right',
    sheet: () => ({ noun: 'end at hand', kind: 'scrap, 10 × 10 in' }) as const,
  } as const;
  const [ends, fold] = cutBefore(cloth).map(
    ({ of, directions }) =>
      directionTexts(directions.parts, of === 'fold' ? { ...figures, of: 'folded' } : figures)[0]?.lead,
  );
  assert.equal(ends, 'End at hand 1 (scrap, 10 × 10 in): cut 2 strips 5 in across it.');
  assert.equal(
    fold,
    'Fold the cloth selvage to selvage. Cut 3 strips 5 in across it, and cut on through both layers from the selvages: each cut gives two.',
  );
});

test('ends at hand and the fold count in the work of a cloth', () => {
  // by hand: of the end two strips and three squares, the first strip ending with it: 2 + 1 + 1; three strips on the fold, four squares in each: 3 + 12
  const cloth = clothOf(27, { ends: [{ size: [10, 10] }] }, { fold: true });
  assert.deepEqual(cloth.directions.effort.strokes, 0);
  assert.deepEqual(workInAll(cloth), { heights: 1, settings: 1, patterns: 3, strokes: 19 });
});

test('what is left of ends at hand is named after what is left of the cloth', () => {
  // by hand: nine squares cut 5 in: eight in a strip of 40 in, and one on an end of 8 × 20, whose other 15 in are kept; of 1/4 yd, 9 in, 2 in are left
  const cloth = clothOf(9, { ends: [{ size: [8, 20] }] });
  const [ends] = cutBefore(cloth);
  assert.deepEqual(
    cloth.directions.remnants.map(({ name, size }) => [name, ...size]),
    [['R1', 40, 2]],
  );
  assert.deepEqual(
    ends?.directions.remnants.map(({ name, from, size }) => [name, from, ...size]),
    [
      ['R2', 'sheet-end', 8, 15],
      ['R3', 'end', 3, 5],
    ],
  );
  assert.equal(ends?.directions.parts[0]?.end?.remnant, 'R2');
});
