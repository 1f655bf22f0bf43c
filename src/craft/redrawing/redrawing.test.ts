import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BlockDesign } from '#craft/design';
import { draftBlock } from '#craft/drafting';
import { fromDecimal } from '#ground/exact';
import { at, boxOf, type Point, type Polygon, signedArea } from '#ground/plane';
import {
  cutAlong,
  type Drawn,
  type DrawnPatch,
  faultsOf,
  joined,
  laidOn as laidOrNot,
  mirroredIn,
  movedBy,
  repeatedBy as repeatedOrNot,
  repeatedRound as roundOrNot,
  slackOf,
  turnedIn,
} from './index.ts';

const found = <T>(all: T | null): T => all ?? assert.fail('an arc is cut short');
const laidOn = (...of: Parameters<typeof laidOrNot>) => found(laidOrNot(...of));
const repeatedBy = (...of: Parameters<typeof repeatedOrNot>) => found(repeatedOrNot(...of));
const repeatedRound = (...of: Parameters<typeof roundOrNot>) => found(roundOrNot(...of));

const grid = [6, 6] as const;
const slack = slackOf(grid);
const shape = (text: string): Polygon =>
  text.split(' ').map((corner) => at(Number(corner.split(',')[0]), Number(corner.split(',')[1])));
const whole: DrawnPatch = { points: shape('0,0 6,0 6,6 0,6'), tone: 'ground' };
const patch = (text: string, tone = 'figure'): DrawnPatch => ({ points: shape(text), tone });
const areas = (patches: readonly DrawnPatch[]): readonly number[] =>
  patches.map(({ points }) => Math.round(signedArea(points) * 1e6) / 1e6);
const drawn = (patches: readonly DrawnPatch[]): Drawn => ({ grid, patches });

/** Judged by drafting, which knows nothing of how the drawing came about. */
const tiles = (patches: readonly DrawnPatch[]): boolean => {
  const design: BlockDesign = {
    id: 'b',
    title: 'B',
    path: '/blocks/0',
    colourings: { default: { ground: 'f', figure: 'f' } },
    shape: {
      kind: 'patches',
      size: [fromDecimal(6), fromDecimal(6)],
      grid: [fromDecimal(6), fromDecimal(6)],
      patches: patches.map(({ points, tone }) => ({
        tone,
        corners: points.map(({ x, y }) => [fromDecimal(x), fromDecimal(y)] as const),
      })),
    },
  };
  return draftBlock(design).ok;
};

test('a seam from edge to edge divides every patch on its way', () => {
  const halves = cutAlong([whole], shape('0,2 6,2'), slack);
  assert.deepEqual([halves.divided, areas(halves.patches).toSorted()], [1, [12, 24]]);
  const quarters = cutAlong(halves.patches, shape('2,0 2,6'), slack);
  assert.deepEqual(
    areas(quarters.patches).toSorted((a, b) => a - b),
    [4, 8, 8, 16],
  );
});

test('a seam through a corner, with a bend, or along another seam is cut as it is ruled', () => {
  assert.deepEqual(areas(cutAlong([whole], shape('0,0 6,6'), slack).patches), [18, 18]);
  // down the middle, then to the right: a quarter is left out of the block
  assert.deepEqual(areas(cutAlong([whole], shape('3,0 3,3 6,3'), slack).patches).toSorted(), [27, 9]);
  const halves = cutAlong([whole], shape('3,0 3,6'), slack).patches;
  assert.equal(cutAlong(halves, shape('3,0 3,6'), slack).divided, 0);
});

test('a seam that ends inside a patch divides nothing', () => {
  assert.equal(cutAlong([whole], shape('0,2 4,2'), slack).divided, 0);
  assert.equal(cutAlong([whole], shape('1,1 4,2 3,3'), slack).divided, 0);
});

test('a seam that crosses itself divides on its way to its end; its round only where that meets another edge', () => {
  // areas by hand: down, to the right, up and across itself to the left; the round lies between 3 and 5, 2 and 4
  const run = shape('3,0 3,4 5,4 5,2 0,2');
  const alone = cutAlong([whole], run, slack);
  assert.deepEqual([alone.divided, areas(alone.patches).toSorted((a, b) => a - b)], [1, [6, 30]]);
  assert.deepEqual(alone.ruled, [shape('3,0 3,2 0,2')]);
  const halves = cutAlong([whole], shape('4,0 4,6'), slack).patches;
  const both = cutAlong(halves, run, slack);
  assert.deepEqual([both.divided, areas(both.patches).toSorted((a, b) => a - b)], [2, [2, 2, 2, 6, 10, 14]]);
  assert.deepEqual(both.ruled, [shape('3,0 3,2 0,2'), shape('3,2 3,4 5,4 5,2 3,2')]);
  // back along itself and on from there
  assert.deepEqual(areas(cutAlong([whole], shape('0,3 4,3 2,3 2,6'), slack).patches).toSorted(), [30, 6]);
});

test('a seam is taken out again, and what does not make one patch is left', () => {
  const halves = cutAlong([whole], shape('0,2 6,2'), slack).patches;
  assert.deepEqual(areas(joined(halves, [0, 1], slack) ?? []), [36]);
  // two corners of a chequer meet at a point alone
  assert.equal(joined([patch('0,0 3,0 3,3 0,3'), patch('3,3 6,3 6,6 3,6')], [0, 1], slack), null);
  // edges that lie along each other in part
  const steps = [patch('0,0 3,0 3,2 0,2'), patch('3,1 6,1 6,3 3,3')];
  assert.deepEqual(areas(joined(steps, [0, 1], slack) ?? []), [12]);
  // a ring of four round a square would have a hole
  const ring = ['0,0 4,0 4,2 0,2', '4,0 6,0 6,4 4,4', '2,4 6,4 6,6 2,6', '0,2 2,2 2,6 0,6'].map((text) => patch(text));
  assert.equal(joined(ring, [0, 1, 2, 3], slack), null);
});

test('patches round a hole that touches the outside at a corner make no one patch, in whatever order they are named', () => {
  const nine = Array.from({ length: 9 }, (_, i) => [i % 3, Math.floor(i / 3)] as const);
  const seven = nine.filter(([x, y]) => !(x === y && x > 0));
  const squares = seven.map(([x, y]) => patch(`${x},${y} ${x + 1},${y} ${x + 1},${y + 1} ${x},${y + 1}`));
  for (let turn = 0; turn < squares.length; turn++) {
    const order = [...squares.slice(turn), ...squares.slice(0, turn)];
    assert.equal(
      joined(
        order,
        order.map((_, i) => i),
        slack,
      ),
      null,
    );
  }
});

test('a patch that is laid takes the place of what it covers', () => {
  const onEdge = laidOn([whole], patch('0,0 2,0 0,2'), slack);
  assert.deepEqual(areas(onEdge), [34, 2]);
  const inside = laidOn([whole], patch('2,2 4,2 4,4 2,4'), slack);
  assert.ok(tiles(inside));
  // in the middle of one patch it needs seams that lead to it: along one of its sides to the edge, and no more
  assert.equal(inside.length, 3);
  // the diamond of a square in a square touches all four sides
  assert.deepEqual(areas(laidOn([whole], patch('3,0 6,3 3,6 0,3'), slack)), [4.5, 4.5, 4.5, 4.5, 18]);
  // it touches at one corner alone
  assert.ok(tiles(laidOn([whole], patch('3,0 4,2 2,2'), slack)));
  // over all of it
  assert.deepEqual(areas(laidOn([whole], { ...whole, tone: 'figure' }, slack)), [36]);
});

test('what lies bare or double is found at its place', () => {
  const left = patch('0,0 4,0 4,6 0,6');
  const right = patch('3,0 6,0 6,4 3,4');
  const { bare, double } = faultsOf(drawn([left, right]));
  assert.deepEqual(
    bare.map((points) => boxOf(points)),
    [{ x: 4, y: 4, width: 2, height: 2 }],
  );
  assert.deepEqual(
    double.map(({ patches, points }) => [patches, boxOf(points)]),
    [[[0, 1], { x: 3, y: 0, width: 1, height: 4 }]],
  );
  assert.deepEqual(faultsOf(drawn([whole])), { bare: [], double: [] });
});

test('patches are moved, mirrored and turned, and stay within the block', () => {
  const two = drawn([whole, patch('0,0 2,0 0,1')]);
  assert.deepEqual(movedBy(two, [1], [9, 1])[1]?.points, shape('4,1 6,1 4,2'));
  assert.deepEqual(new Set(mirroredIn(two.patches, [1], 'left-right')[1]?.points), new Set(shape('2,0 2,1 0,0')));
  assert.deepEqual(boxOf(turnedIn(two, [1])[1]?.points ?? []), { x: 0, y: 0, width: 1, height: 2 });
});

test('a patch is repeated across, down, and round the middle of the block', () => {
  const first = laidOn([whole], patch('0,0 2,0 2,2 0,2'), slack);
  const across = repeatedBy(drawn(first), [1], { times: [3, 2], step: [2, 3] });
  assert.equal(across.filter(({ tone }) => tone === 'figure').length, 6);
  assert.ok(tiles(across));
  // the third would lie over the edge
  const beyond = repeatedBy(drawn(first), [1], { times: [3, 1], step: [3, 0] });
  assert.equal(beyond.filter(({ tone }) => tone === 'figure').length, 2);
  const round = repeatedRound(drawn(laidOn([whole], patch('0,0 2,0 0,1'), slack)), [1]);
  assert.deepEqual(
    round.filter(({ tone }) => tone === 'figure').map(({ points }) => boxOf(points)),
    [
      { x: 0, y: 0, width: 2, height: 1 },
      { x: 5, y: 0, width: 1, height: 2 },
      { x: 4, y: 5, width: 2, height: 1 },
      { x: 0, y: 4, width: 1, height: 2 },
    ],
  );
  assert.ok(tiles(round));
});

/** Places on halves of the grid. */
const spot = fc.tuple(fc.nat(12), fc.nat(12)).map(([x, y]) => at(x / 2, y / 2));
const triangle = fc
  .tuple(spot, spot, spot)
  .map(([a, b, c]): Polygon => (signedArea([a, b, c]) < 0 ? [a, c, b] : [a, b, c]))
  .filter((points) => signedArea(points) > 0.1);
const step = fc.oneof(
  fc.array(spot, { minLength: 2, maxLength: 4 }).map((run) => ({ kind: 'rule' as const, run })),
  triangle.map((points) => ({ kind: 'lay' as const, points })),
  fc.tuple(fc.nat(40), fc.nat(40)).map(([a, b]) => ({ kind: 'join' as const, a, b })),
);
const after = (patches: readonly DrawnPatch[], one: Parameters<Parameters<typeof step.map>[0]>[0]) => {
  if (one.kind === 'rule') return cutAlong(patches, one.run as readonly Point[], slack).patches;
  if (one.kind === 'lay') return laidOn(patches, { points: one.points, tone: 'figure' }, slack);
  const [a, b] = [one.a % patches.length, one.b % patches.length];
  return (a === b ? null : joined(patches, [a, b], slack)) ?? patches;
};

test('whatever is ruled, laid and joined, a block that was covered once stays covered once', () => {
  fc.assert(
    fc.property(fc.array(step, { minLength: 1, maxLength: 8 }), (steps) => {
      let patches: readonly DrawnPatch[] = [whole];
      for (const one of steps) patches = after(patches, one);
      assert.ok(tiles(patches), JSON.stringify(patches));
    }),
    { numRuns: 300 },
  );
});
