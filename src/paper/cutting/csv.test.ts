import assert from 'node:assert/strict';
import { test } from 'node:test';
import { documentOf, planOf, specimenDocument } from '#paper/specimen';
import { cuttingCsv } from './csv.ts';

const lines = (text: string) => text.trimEnd().split('\r\n');

test('the cut list has a line for every size of every cloth', () => {
  const plan = planOf(specimenDocument);
  const [header, ...rows] = lines(cuttingCsv(plan));
  assert.equal(header, 'cloth letter,cloth,mark,across (in),along (in),shape,count,gives,used for');
  assert.equal(rows.length, plan.fabrics.flatMap(({ pieces }) => pieces).length);
});

test('squares are counted, and the triangles that they give', () => {
  const rows = lines(cuttingCsv(planOf(specimenDocument)));
  // by hand: two flies of four brick triangles, so 4 squares of 1 + 7/8 in (finished leg 1, seam 1/4, in common use) give 8
  assert.ok(
    rows.includes('A,Brick,A1,1.875,1.875,"square, cut once corner to corner",4,8,Shoo fly B'),
    rows.join('\n'),
  );
});

test('a cell that a spreadsheet would run stays text', () => {
  for (const [name, cell] of [
    ['=HYPERLINK(1)', "'=HYPERLINK(1)"],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@SUM(1)', "'@SUM(1)"],
    ['Oat = plain', 'Oat = plain'],
    ['Oat, "washed"', '"Oat, ""washed"""'],
  ] as const) {
    const fabrics = specimenDocument.fabrics.map((fabric) => (fabric.id === 'oat' ? { ...fabric, name } : fabric));
    const oat = lines(cuttingCsv(planOf(documentOf({ fabrics })))).filter((line) => line.startsWith('B,'));
    assert.ok(oat.length > 0 && oat.every((line) => line.startsWith(`B,${cell},`)), oat.join('\n'));
  }
});
