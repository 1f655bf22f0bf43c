import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor, signOf } from '#paper/cloth';
import { documentOf, faultInIds, faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { printWay } from './print-arrow.ts';
import { drawSheets } from './sheets.ts';

const rows = Array.from({ length: 12 }, () => Array.from({ length: 12 }, () => ({ block: 'fly' })));
const plan = planOf(
  documentOf({
    fabrics: specimenDocument.fabrics.map((fabric) =>
      fabric.id === 'brick'
        ? { id: 'brick', colour: fabric.colour, bought: 'fat-eighth', print: 'one-way', printRuns: 'crosswise' }
        : fabric,
    ),
    top: { set: 'straight', rows },
  }),
);
const signs = clothSignsFor(plan);
const brick = plan.fabrics.find(({ id }) => id === 'brick');

test('sheets that are cut alike are drawn once, with their number; every piece of the drawn ones is there', () => {
  if (brick === undefined || !('sheets' in brick.laid)) throw new Error('the specimen cuts brick from sheets');
  const { laid } = brick;
  const drawings = drawSheets({
    directions: brick.directions,
    sign: signOf(signs, 'brick'),
    unit: 'in',
    print: printWay(plan, brick),
    fitPt: [480, 560],
    caption: () => ({ noun: 'Sheet', size: '' }),
    alt: (part, parts) => `${part}/${parts}`,
  });
  const text = drawings.map(({ svg }) => svg).join('');
  for (const { svg, widthPt, heightPt } of drawings) {
    assert.equal(faultInXml(svg), null);
    assert.equal(faultInIds(svg), null);
    assert.ok(widthPt <= 480.01 && heightPt <= 560.01);
  }
  // how many of each kind is told in words: they add up to all sheets
  const counts = [...text.matchAll(/>Sheet \d+(?: × (\d+))?</g)].map(([, count]) => Number(count ?? 1));
  assert.equal(
    counts.reduce((sum, count) => sum + count, 0),
    laid.sheets.length,
  );
  assert.ok(laid.sheets.length > counts.length, 'some sheets are cut alike');
  const kinds = new Map(laid.sheets.map((sheet) => [JSON.stringify(sheet.strips), sheet]));
  const pieces = [...kinds.values()].flatMap(({ strips }) =>
    strips.flatMap(({ parts }) => parts.flatMap((p) => p.pieces)),
  );
  assert.equal(text.match(/<rect [^>]*stroke-width="0.75"/g)?.length, pieces.length);
});

test('a crosswise print has its top to the right, a plain cloth no arrow', () => {
  assert.deepEqual(printWay(plan, { id: 'brick' }), { runs: 'right', heads: 'one' });
  assert.equal(printWay(plan, { id: 'oat' }), null);
});
