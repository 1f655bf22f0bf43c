import assert from 'node:assert/strict';
import { test } from 'node:test';
import { at } from '#ground/plane';
import { faultInIds, faultInXml } from '#paper/specimen';
import { drawTemplateSheets } from './template-sheets.ts';

const square = [at(0, 0), at(20, 0), at(20, 20), at(0, 20)];
const triangle = [at(0, 0), at(20, 0), at(0, 20)];
const sheetsOf = (points: typeof square) =>
  drawTemplateSheets({
    template: { points, seamLine: points.map(({ x, y }) => at(x * 0.9 + 0.5, y * 0.9 + 0.5)) },
    label: 'A',
    scale: 72,
    fitPt: [480, 610],
    alt: ({ number }) => `Sheet ${number}`,
  });

test('a square of 20 in goes over 4 × 3 sheets, each within the page', () => {
  // by hand: 1448 pt on sheets of 480 that share 36: ⌈1412/444⌉ = 4 across; on 610 high: ⌈1412/574⌉ = 3 down
  const sheets = sheetsOf(square);
  assert.equal(sheets.length, 12);
  assert.deepEqual(sheets.at(-1)?.sheet, { number: 12, row: 3, column: 4 });
  for (const { drawing } of sheets) {
    assert.equal(faultInXml(drawing.svg), null);
    assert.equal(faultInIds(drawing.svg), null);
    assert.ok(drawing.widthPt <= 480.01 && drawing.heightPt <= 610.01);
  }
});

test('sheets on which nothing of the template lies are left out', () => {
  // by hand: below the diagonal of the triangle nothing is left on the last sheets of the lower rows
  const sheets = sheetsOf(triangle);
  assert.ok(sheets.length < 12);
  assert.ok(!sheets.some(({ sheet }) => sheet.row === 3 && sheet.column === 4));
});

test('neighbours show the same lines and diamonds in one frame, so that they lie on each other', () => {
  const [first, second] = sheetsOf(square);
  const marksOf = (svg: string | undefined): readonly string[] =>
    [...(svg ?? '').matchAll(/ d="([^"]*)" stroke="#a13d2b"/g)].map(([, path]) => path as string);
  assert.deepEqual(marksOf(first?.drawing.svg), marksOf(second?.drawing.svg));
  const shiftOf = (svg: string | undefined): number => Number(svg?.match(/translate\((-?[\d.]+) /)?.[1]);
  // by hand: the whole is 1440 + 8 pt, a step (1448 − 36) / 4
  assert.equal(shiftOf(first?.drawing.svg) - shiftOf(second?.drawing.svg), 353);
});
