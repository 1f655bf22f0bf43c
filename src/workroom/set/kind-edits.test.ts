import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { example, pictureOf, quilt, star } from '#documents';
import { alternate, changeSet } from './kind-edits.ts';
import { holding, plain } from './place-edits.ts';
import type { Top } from './top-edits.ts';
import { writtenLength } from './written-length.ts';

const turnsOf = (document: QuiltDocument) => pictureOf(document).placed.map(({ turn }) => turn);

/** Two blocks of 6 by turns, with a plain square and sashing with cornerstones all round. */
const sashed = quilt({
  blocks: [star({ size: '6' })],
  top: {
    rows: [
      [{ block: 'star', turn: 90 }, { plain: 'light' }, { block: 'star' }],
      [{ block: 'star' }, { block: 'star', mirror: true }, { block: 'star' }],
    ],
    sashing: { width: { across: '1', down: '2' }, fabric: 'dark', cornerstones: 'light', outer: true },
    borders: [{ width: '3', fabric: 'dark' }],
  },
});

test('an arrangement set on point keeps its blocks as they lie, and comes back straight as it was', () => {
  const barn = example('drying-barn');
  const picture = pictureOf(barn);
  const top = structuredClone(barn.top);
  changeSet(top, { kind: 'on-point', picture, cloth: 'oat' });
  const { rows, between = [] } = top;
  assert.equal(top.arrangement, undefined);
  assert.deepEqual([between.length, between[0]?.length], [(rows?.length ?? 0) - 1, (rows?.[0]?.length ?? 0) - 1]);
  changeSet(top, { kind: 'straight', picture, cloth: 'oat' });
  assert.equal(top.settingFabric, undefined);
  assert.deepEqual(turnsOf({ ...barn, top }), turnsOf(barn));
});

test('a sashed top in sections has every piece where it was', () => {
  const picture = pictureOf(sashed);
  const top = structuredClone(sashed.top);
  changeSet(top, { kind: 'sections', picture, cloth: 'light' });
  const after = pictureOf({ ...sashed, top });
  assert.deepEqual([after.width, after.height], [picture.width, picture.height]);
  const placed = (of: typeof picture) =>
    of.placed.map(({ at, size, turn }) => JSON.stringify([at, size, turn])).toSorted();
  assert.deepEqual(placed(after), placed(picture));
  const strips = (of: typeof picture) =>
    of.strips.map(({ points, fabric }) => JSON.stringify([points, fabric])).toSorted();
  assert.deepEqual(strips(after), strips(picture));
});

test('a plain square in sections is as wide as the blocks of its column lie', () => {
  for (const [turn, width] of [
    [0, '6'],
    [90, '4'],
  ] as const) {
    const lying = { block: 'star', turn };
    const document = quilt({
      blocks: [star({ size: ['6', '4'] })],
      top: {
        rows: [
          [lying, { plain: 'light' }],
          [lying, lying],
        ],
      },
    });
    const picture = pictureOf(document);
    const top = structuredClone(document.top);
    changeSet(top, { kind: 'sections', picture, cloth: 'light' });
    const row = { across: [lying, { strip: 'light', width }] };
    assert.deepEqual(top.sections, { down: [row, { across: [lying, lying] }] });
    assert.equal(pictureOf({ ...document, top }).width, picture.width);
  }
});

test('sections give their blocks in rows: as many each where they are rows, else in as near a square as they make', () => {
  const top = structuredClone(sashed.top);
  changeSet(top, { kind: 'sections', picture: pictureOf(sashed), cloth: 'light' });
  top.sections = {
    down: [
      { across: [{ block: 'a' }, { strip: 'x', width: '1' }, { block: 'b', turn: 90 }] },
      { across: [{ block: 'c' }, { block: 'd' }] },
    ],
  };
  const even = structuredClone(top);
  changeSet(even, { kind: 'straight', picture: null, cloth: 'light' });
  assert.deepEqual(even.rows, [
    [{ block: 'a' }, { block: 'b', turn: 90 }],
    [{ block: 'c' }, { block: 'd' }],
  ]);
  assert.equal(even.sections, undefined);
  top.sections = { across: [{ block: 'a' }, { down: [{ block: 'b' }, { fill: 'x' }, { block: 'c' }] }] };
  changeSet(top, { kind: 'on-point', picture: null, cloth: 'light' });
  assert.deepEqual(top.rows, [
    [{ block: 'a' }, { block: 'b' }],
    [{ block: 'c' }, { plain: 'light' }],
  ]);
  assert.deepEqual(top.borders, sashed.top.borders);
});

test('on point sashing has one width, and the set can be sewn', () => {
  const top = structuredClone(sashed.top);
  changeSet(top, { kind: 'on-point', picture: pictureOf(sashed), cloth: 'light' });
  assert.equal(top.sashing?.width, '1');
  // 3 · √2 · (6 + 1) and two borders of 3
  assert.ok(Math.abs(pictureOf({ ...sashed, top }).width - (3 * Math.SQRT2 * 7 + 6)) < 1e-6);
});

test('the set that it has already is left alone', () => {
  const top = structuredClone(sashed.top);
  changeSet(top, { kind: 'straight', picture: null, cloth: 'dark' });
  assert.deepEqual(top, sashed.top);
});

test('every other place takes what is given', () => {
  const top: Top = {
    rows: [
      [{ block: 'a' }, { block: 'a' }],
      [{ block: 'a', turn: 90 }, { block: 'a' }],
    ],
  };
  alternate(top, { picture: null, change: plain('oat') });
  assert.deepEqual(top.rows, [
    [{ block: 'a' }, { plain: 'oat' }],
    [{ plain: 'oat' }, { block: 'a' }],
  ]);
  const point: Top = { set: 'on-point', rows: [[{ block: 'a' }, { block: 'a' }]], between: [[{ plain: 'oat' }]] };
  alternate(point, { picture: null, change: holding('b') });
  assert.deepEqual(point.between, [[{ block: 'b' }]]);
  assert.deepEqual(point.rows, [[{ block: 'a' }, { block: 'a' }]]);
});

test('a worked-out length is written as the fraction that it is', () => {
  assert.deepEqual([9, 2.5, 25 / 3, 0.1, 1 / 64, Math.PI].map(writtenLength), [
    '9',
    '2 1/2',
    '25/3',
    '0.1',
    '1/64',
    '3.141592653589793',
  ]);
});
