import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { LaidSheets } from '#craft/cutting';
import { type ClothDirections, directionsFor } from '#craft/directions';
import { length } from '#craft/measure';
import { type ClothSign, clothSignsFor, signOf } from '#paper/cloth';
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
    hand: 'right',
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

/** All drawings of the sheets, of a cloth without direction. */
const textOf = (directions: ClothDirections, sign: ClothSign): string =>
  drawSheets({
    directions,
    sign,
    unit: 'in',
    print: null,
    hand: 'right',
    fitPt: [480, 560],
    caption: () => ({ noun: 'Sheet', size: '' }),
    alt: () => '',
  })
    .map(({ svg }) => svg)
    .join('');

test('over the first strip of each filling stand its cuts in their order, as on cloth by the length', () => {
  const fabrics = specimenDocument.fabrics.map((fabric) =>
    fabric.id === 'oat' ? { id: 'oat', colour: fabric.colour, bought: 'fat-quarter' } : fabric,
  );
  const own = planOf(documentOf({ fabrics }));
  const { directions } = own.fabrics.find(({ id }) => id === 'oat') ?? {};
  if (directions === undefined) throw new Error('the specimen has oat');
  const text = textOf(directions, signOf(clothSignsFor(own), 'oat'));
  const patterns = directions.parts.flatMap(({ heights }) => heights.flatMap((one) => one.patterns));
  assert.ok(patterns.some(({ cuts }) => cuts.length > 1));
  for (const { number, cuts } of patterns) {
    const shown = text.match(new RegExp(`>${number}\\.1(?:–${number}\\.\\d+)?<`, 'g')) ?? [];
    assert.equal(shown.length, cuts.length > 1 ? 1 : 0, `strip ${number}`);
  }
});

/** A sheet of two strips filled alike: a square of 3 in, then a piece 2 in wide. */
const twoAlike = (): LaidSheets => {
  const part = (x: number, width: number, of: number) => ({
    at: length(x),
    width: length(width),
    pieces: [{ at: length(0), cut: [length(width), length(3)], turned: false, of }] as const,
  });
  const strips = [0, 3].map((y) => ({ at: length(y), height: length(3), parts: [part(0, 3, 0), part(3, 2, 1)] }));
  const layout = { width: length(20), length: length(18), strips };
  return {
    sheets: [{ ...layout, kind: 0 }],
    layout,
    cost: 1,
    bound: 1,
    kept: 'sheets',
    costBound: 1,
    boundKind: 'area',
    left: [],
    holds: 'yes',
  };
};

test('strips of a sheet that are filled alike have the numbers of their cuts once', () => {
  const directions = directionsFor({ laid: twoAlike(), allowances: null, unit: 'in' });
  const text = textOf(directions, signOf(signs, 'oat'));
  const shown = [...text.matchAll(/>(\d+\.\d+)</g)].map(([, number]) => number);
  // by hand: one filling, twice in the sheet; the square is cut off first, then the narrow piece
  assert.equal(text.match(/>1</g)?.length, 2);
  assert.deepEqual(shown, ['1.1', '1.2']);
});
