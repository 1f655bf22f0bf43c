import assert from 'node:assert/strict';
import { test } from 'node:test';
import { answerTo, example, isAnswered, measuresOf } from '#documents';
import { addPieced, borderUnits, fitAsItIs, fitBlock, fitsNear, moveBorder, stripBefore } from './border-edits.ts';
import { addFrame, framesFor, framesForAll, takeFrameOut } from './frame-edits.ts';

const throwQuilt = () => example('harvest-home-throw');
const cloths = { light: 'oat', dark: 'slate' };
const mark = 1 / 8;

test('lengths that divide both sides are offered on marks of the ruler, the nearest first', () => {
  // by hand: 60 and 48 are both divided by 12/k; of those from 1.5 to 6, 2.4 and 12/7 are on no eighth
  const fits = fitsNear({ sides: [60, 48], near: 3, mark });
  assert.deepEqual(
    fits.map(({ along }) => along),
    [3, 4, 2, 6, 1.5],
  );
  assert.deepEqual(fits[0], { along: 3, counts: [20, 16], spacer: [0, 0] });
  assert.deepEqual(fitsNear({ sides: [60 * Math.SQRT2, 48], near: 3, mark }), []);
});

test('of its own size a block takes the spacers that craft lays', () => {
  // 57 in by 4 in: 15 blocks are 60, 1½ in on either side
  assert.deepEqual(fitAsItIs({ sides: [57, 56], along: 4, seam: 0.25 }), {
    along: 4,
    counts: [15, 14],
    spacer: [1.5, 0],
  });
});

test('a strip before it is made as wide as brings both sides to whole blocks', () => {
  // by hand: 54 and two strips of 1 are 56, 14 blocks of 4
  assert.equal(stripBefore({ sides: [54, 54], width: 1.5, along: 4, mark }), 1);
  assert.equal(stripBefore({ sides: [54, 53], width: 1.5, along: 4, mark }), null);
});

for (const unit of borderUnits) {
  test(`a new border of ${unit} fits what it goes round without a spacer`, () => {
    const document = throwQuilt();
    document.top.borders?.splice(1);
    addPieced(document, { unit, sides: measuresOf(document).rings[1] ?? null, mark, cloths });
    const { picture } = answerTo(document);
    assert.ok(picture.strips.every(({ role }) => role !== 'spacer'));
    assert.ok(picture.placed.some(({ path }) => path === '/top/borders/1'));
  });
}

test('what a border is pieced of falls on marks too, not its length alone', () => {
  const document = throwQuilt();
  document.top.borders = [];
  // by hand: 49 in are eight lengths of 6⅛, whose halves are on no eighth, and seven of 7
  addPieced(document, { unit: 'geese', sides: [49, 49], mark, cloths });
  assert.deepEqual(document.blocks.at(-1)?.size, ['7', '3 1/2']);
});

test('a border without known sides is made all the same, and craft lays spacers where they are needed', () => {
  const document = throwQuilt();
  document.top.borders?.splice(1);
  addPieced(document, { unit: 'geese', sides: null, mark, cloths });
  assert.ok(answerTo(document).picture.strips.some(({ role }) => role === 'spacer'));
});

test('a block that fits the border alone is changed; one that lies in the top too is copied for it', () => {
  const document = throwQuilt();
  const star = {
    id: 'star',
    from: 'ohio-star',
    size: '4',
    colourings: { default: { light: 'oat', dark: 'slate', medium: 'plum' } },
  };
  document.blocks.push(star);
  document.top.borders = [{ pieced: { block: 'star' } }];
  const fitted = structuredClone(document);
  fitBlock(fitted, { index: 0, along: 4.5, size: [4, 4] });
  assert.equal(fitted.blocks.length, 2);
  assert.equal(fitted.blocks[1]?.size, '4 1/2');
  assert.deepEqual(answerTo(fitted).figures.top, [63, 63]);

  const shared = structuredClone(document);
  shared.sizes = [{ id: 'small', top: { rows: [[{ block: 'star' }]] } }];
  fitBlock(shared, { index: 0, along: 4.5, size: [4, 4] });
  assert.deepEqual(shared.blocks.map(({ id, size }) => [id, size]).slice(1), [
    ['star', '4'],
    ['star-border', '4 1/2'],
  ]);
  assert.deepEqual(answerTo(shared).figures.top, [63, 63]);
});

test('a border changes places with its neighbour, and not beyond the ends', () => {
  const borders = [
    { width: '1', fabric: 'a' },
    { width: '2', fabric: 'b' },
    { width: '3', fabric: 'c' },
  ];
  moveBorder(borders, { from: 0, by: 1 });
  assert.deepEqual(
    borders.map(({ fabric }) => fabric),
    ['b', 'a', 'c'],
  );
  const once = structuredClone(borders);
  moveBorder(borders, { from: 2, by: 1 });
  moveBorder(borders, { from: 0, by: -1 });
  assert.deepEqual(borders, once);
});

const square = (id: string, side: number) => ({ id, size: [side, side] as const, inner: [side, side] as const });

test('frames bring a block to the sizes of others, where they are equally wide on all sides', () => {
  const blocks = [square('a', 9), square('b', 12), square('c', 10), { ...square('d', 11), size: [11, 14] as const }];
  assert.deepEqual(framesFor(square('a', 9), blocks), [
    { size: [10, 10], width: 0.5 },
    { size: [12, 12], width: 1.5 },
  ]);
  assert.deepEqual(
    [...framesForAll(blocks.slice(0, 3))].map(([id, { width }]) => [id, width]),
    [
      ['a', 1.5],
      ['c', 1],
    ],
  );
  assert.equal(framesForAll(blocks).size, 0);
});

test('framed up to the common size, blocks of two sizes make one quilt', () => {
  const document = throwQuilt();
  const star = {
    id: 'star',
    from: 'ohio-star',
    size: '6',
    colourings: { default: { light: 'oat', dark: 'slate', medium: 'plum' } },
  };
  document.blocks.push(star);
  document.top = { rows: [[{ block: 'cabin' }, { block: 'star' }]] };
  assert.equal(isAnswered(document), false);
  const block = document.blocks[1];
  assert.ok(block);
  const frames = framesForAll(measuresOf(document).blocks);
  addFrame(block, { width: frames.get('star')?.width ?? 0, cloth: 'oat' });
  assert.deepEqual(block.frame, [{ width: '1 1/2', fabric: 'oat' }]);
  assert.deepEqual(answerTo(document).figures.top, [18, 9]);
  takeFrameOut(block, 0);
  assert.equal(block.frame, undefined);
});
