import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor } from '#paper/cloth';
import { documentOf, faultInIds, faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { drawBorders } from './borders.ts';
import { rowStepsOf, sameRowBefore } from './row-steps.ts';
import { drawRows, rowPressOf } from './rows.ts';

const four = planOf(
  documentOf({
    top: {
      set: 'straight',
      rows: Array.from({ length: 4 }, () => [{ block: 'fly' }, { block: 'cabin' }, { block: 'fly' }]),
    },
  }),
);

test('a row that is made like an earlier one still has all its seams', () => {
  for (let row = 0; row < 4; row++) {
    // three blocks, two seams
    assert.equal(rowStepsOf(four, row).length, 2, `row ${row + 1}`);
  }
  // rows nest by turns: the third is the first again, the fourth the second
  assert.deepEqual(
    [0, 1, 2, 3].map((row) => sameRowBefore(four, row)),
    [null, null, 0, 1],
  );
});

test('rows of blocks are pressed by turns to the right and to the left', () => {
  assert.deepEqual(
    [0, 1, 2, 3].map((row) => rowPressOf(four, row)),
    ['right', 'left', 'right', 'left'],
  );
  // toward the sashes: no one way
  assert.equal(rowPressOf(planOf(specimenDocument), 0), null);
});

test('rows and borders are drawn well-formed, each numbered', () => {
  const plan = planOf(specimenDocument);
  const signs = clothSignsFor(plan);
  const rows = drawRows({ plan, signs, fitPt: [480, 340], alt: 'Rows' }).svg;
  const borders = drawBorders({ plan, signs, unit: 'in', fitPt: [300, 250], alt: 'Borders' }).svg;
  for (const svg of [rows, borders]) {
    assert.equal(faultInXml(svg), null);
    assert.equal(faultInIds(svg), null);
  }
  const numbers = (svg: string) => [...svg.matchAll(/>(\d+)<\/text>/g)].map(([, number]) => number);
  assert.deepEqual(numbers(rows), ['1', '2', '3']);
  assert.deepEqual(numbers(borders), ['1', '2', '3', '4']);
});
