import assert from 'node:assert/strict';
import { test } from 'node:test';
import { quartersFor } from '#craft/setting';
import { example, pictureOf } from '#documents';
import { arrangePlaces, isWrittenOut, ownQuarters, placesToArrange } from './arranged-edits.ts';
import { placesOf } from './place-edits.ts';
import { filledWith, type Top } from './top-edits.ts';

test('written out over the whole of a straight set, an arrangement is the one that craft makes', () => {
  const barn = example('drying-barn');
  const { arrangement } = barn.top;
  assert.ok(arrangement);
  const { rows, columns, block } = arrangement;
  for (const kind of ['barn-raising', 'straight-furrow', 'fields-and-furrows', 'pinwheel'] as const) {
    const ruled = pictureOf({ ...barn, top: { ...barn.top, arrangement: { kind, block, rows, columns } } });
    const quarters = quartersFor({ kind, rows, columns })[0]?.[0] ?? 0;
    const own = ownQuarters({ turn: ruled.placed[0]?.turn ?? 0, quarters });
    const top = structuredClone(barn.top);
    arrangePlaces(top, { paths: placesOf(top, ruled), kind, block, own, picture: pictureOf(barn) });
    assert.equal(top.arrangement, undefined);
    assert.deepEqual(pictureOf({ ...barn, top }).placed, ruled.placed, kind);
  }
});

test('of chosen places those alone are turned, over the box round them', () => {
  const top: Top = { rows: filledWith({ block: 'a', turn: 180 }, [3, 4]) };
  const paths = ['/top/rows/1/1', '/top/rows/1/2', '/top/rows/2/1', '/top/rows/2/2'];
  arrangePlaces(top, { paths, kind: 'pinwheel', block: 'b', own: 0, picture: null });
  // by hand: four blocks, each a further quarter turn
  assert.deepEqual(top.rows?.[1]?.slice(1, 3), [{ block: 'b', turn: 270 }, { block: 'b' }]);
  assert.deepEqual(top.rows?.[2]?.slice(1, 3), [
    { block: 'b', turn: 180 },
    { block: 'b', turn: 90 },
  ]);
  // a block that has its dark half a quarter further lies a quarter back
  arrangePlaces(top, { paths, kind: 'pinwheel', block: 'b', own: 1, picture: null });
  assert.deepEqual(top.rows?.[1]?.slice(1, 3), [
    { block: 'b', turn: 180 },
    { block: 'b', turn: 270 },
  ]);
  assert.ok(top.rows?.[0]?.every((cell) => 'block' in cell && cell.block === 'a'));
});

test('on point with blocks between, neighbours along a slanted row are neighbours of the arrangement', () => {
  const top: Top = {
    set: 'on-point',
    settingFabric: 'x',
    rows: filledWith({ block: 'a' }, [2, 2]),
    between: [[{ block: 'a' }]],
  };
  arrangePlaces(top, {
    paths: placesToArrange(top, null),
    kind: 'streak-of-lightning',
    block: 'a',
    own: 0,
    picture: null,
  });
  // by hand: the five stand in a grid of 3 × 3 on its corner, the upper left of them at the left of its middle row
  const quarters = quartersFor({ kind: 'streak-of-lightning', rows: 3, columns: 3 });
  const turnAt = (row: number, column: number) => (quarters[row]?.[column] ?? 0) * 90;
  const turnOf = (cell: object | undefined) => (cell as { turn?: number }).turn ?? 0;
  assert.equal(turnOf(top.rows?.[0]?.[0]), turnAt(1, 0));
  assert.equal(turnOf(top.between?.[0]?.[0]), turnAt(1, 1));
  assert.equal(turnOf(top.rows?.[1]?.[1]), turnAt(1, 2));
  assert.equal(turnOf(top.rows?.[0]?.[1]), turnAt(0, 1));
  assert.equal(turnOf(top.rows?.[1]?.[0]), turnAt(2, 1));
});

test('plain squares on point stay plain, and sections are arranged as a whole', () => {
  const top: Top = { set: 'on-point', rows: filledWith({ block: 'a' }, [2, 2]), between: [[{ plain: 'x' }]] };
  assert.equal(placesToArrange(top, null).length, 4);
  assert.ok(isWrittenOut(top, []));
  assert.equal(isWrittenOut({ set: 'sections' }, ['/top/sections/across/0', '/top/sections/across/1']), false);
  assert.equal(isWrittenOut({ rows: [] }, ['/top/rows/0/0']), false);
});
