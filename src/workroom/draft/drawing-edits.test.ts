import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { cutAlong, joined, laidOn as laidOrNot, movedBy, seamsBetween, slackOf } from '#craft/redrawing';
import { at } from '#ground/plane';
import { askBlock, askDrawn } from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import { type Block, blankBlock } from './block-edits.ts';
import { firstCabin } from './cabin-edits.ts';
import {
  drawnFrom,
  drawnIn,
  dropSeam,
  giveSize,
  makeDrawing,
  putPatches,
  putSeams,
  regridded,
  regridSeams,
  writtenPlace,
} from './drawing-edits.ts';

const laidOn = (...of: Parameters<typeof laidOrNot>) => laidOrNot(...of) ?? assert.fail('an arc is cut short');

const fabrics: QuiltDocument['fabrics'] = [
  { id: 'oat', colour: '#efe6d0' },
  { id: 'slate', colour: '#2f3c44' },
  { id: 'ember', colour: '#b1452f' },
];
const quiltOf = (...blocks: Block[]): JsonObject => {
  const [first] = blocks;
  const quilt = {
    format: 'seamstead-quilt',
    version: 1,
    unit: 'in',
    fabrics,
    blocks,
    top: { rows: [[{ block: first?.id }]] },
  };
  return JSON.parse(JSON.stringify(quilt)) as JsonObject;
};
const answerOf = (...blocks: Block[]) => {
  const reply = askBlock(quiltOf(...blocks), blocks[0]?.id ?? '');
  assert.ok(reply.ok, JSON.stringify(reply));
  return reply.value;
};
const toldOf = (...blocks: Block[]) => {
  const reply = askDrawn(quiltOf(...blocks), blocks[0]?.id ?? '');
  assert.ok(reply.ok, JSON.stringify(reply));
  return reply.value;
};
const blank = (): Block => blankBlock({ unit: 'in', fabrics, blocks: [] });
const drawnOf = (block: Block) => drawnIn(block) ?? assert.fail('no drawing of patches');
/** A block's patches by tone and area, as the plan has them, in whole square inches or so. */
const patchesOf = (...blocks: Block[]) =>
  answerOf(...blocks)
    .picture.patches.map(({ fabric, points }) => `${fabric} ${Math.round(areaOf(points) * 100) / 100}`)
    .toSorted();
const areaOf = (points: readonly number[]): number => {
  let twice = 0;
  for (let i = 0; i < points.length; i += 2) {
    const [x, y, u, v] = [points[i], points[i + 1], points[(i + 2) % points.length], points[(i + 3) % points.length]];
    twice += (x as number) * (v as number) - (u as number) * (y as number);
  }
  return twice / 2;
};

const seamed = (): Block => ({
  id: 'drawn',
  size: '8',
  drawing: {
    grid: [8, 8],
    seams: [
      [
        [0, 2],
        [8, 2],
      ],
      [
        [4, 2],
        [4, 8],
      ],
    ],
    tonesAt: [
      { at: [1, 1], tone: 'oat' },
      { at: [1, 5], tone: 'slate' },
      { at: [5, 5], tone: 'ember' },
    ],
  },
});

test('places are written as the fractions they are', () => {
  assert.deepEqual([2, 1.5, 4 / 3, 0.1 + 0.2, 7 / 12].map(writtenPlace), [2, 1.5, '4/3', 0.3, '7/12']);
  assert.equal(writtenPlace(1.23456789123), 1.234567891);
});

test('a blank block, a seam ruled and a patch laid make a document that can be sewn', () => {
  const block = blank();
  const before = drawnOf(block);
  const slack = slackOf(before.grid);
  putPatches(block, {
    before,
    patches: cutAlong(before.patches, [at(0, 0), at(8, 8)], slack).patches,
    colourings: {},
  });
  assert.deepEqual(patchesOf(block), ['oat 32', 'oat 32']);
  const halves = drawnOf(block);
  const lower = halves.patches.findIndex(({ points }) => points.some(({ x, y }) => x === 0 && y === 8));
  const untouched = block.patches?.list[lower];
  const patch = { tone: 'slate', points: [at(6, 0), at(8, 0), at(8, 2), at(6, 2)] };
  putPatches(block, { before: halves, patches: laidOn(halves.patches, patch, slack), colourings: {} });
  assert.deepEqual(patchesOf(block), ['oat 28', 'oat 32', 'slate 4']);
  // what the patch does not touch is written as it was
  assert.ok(untouched !== undefined && block.patches?.list.includes(untouched));
});

test('corners that are listed the other way round are drafted on alike', () => {
  const block = blank();
  const [whole] = block.patches?.list ?? [];
  whole?.points.reverse();
  const before = drawnOf(block);
  const slack = slackOf(before.grid);
  const halves = cutAlong(before.patches, [at(0, 4), at(8, 4)], slack).patches;
  putPatches(block, { before, patches: halves, colourings: {} });
  block.patches?.list[0]?.points.reverse();
  assert.deepEqual(patchesOf(block), ['oat 32', 'oat 32']);
  const now = drawnOf(block);
  const patches = joined(now.patches, [0, 1], slack) ?? assert.fail('they share a seam');
  putPatches(block, { before: now, patches, colourings: {} });
  assert.deepEqual(patchesOf(block), ['oat 64']);
});

test('a patch that is moved leaves a gap and an overlap, each told at its place', () => {
  const block = blank();
  const first = drawnOf(block);
  const slack = slackOf(first.grid);
  const patch = { tone: 'slate', points: [at(0, 0), at(2, 0), at(2, 2), at(0, 2)] };
  const patches = laidOn(first.patches, patch, slack);
  putPatches(block, { before: first, patches: movedBy({ ...first, patches }, [1], [1, 0]), colourings: {} });
  const { bare, double } = toldOf(block);
  const box = (points: readonly number[]) => [Math.min(...points), Math.max(...points.filter((_, i) => i % 2 === 0))];
  assert.deepEqual([bare.map(box), double.map(box)], [[[0, 1]], [[0, 3]]]);
  assert.ok(!askBlock(quiltOf(block), block.id).ok);
});

test('a log cabin becomes a drawing of the same patches at the same size', () => {
  const cabin = firstCabin({ unit: 'in', fabrics, blocks: [] });
  const was = patchesOf(cabin);
  const told = toldOf(cabin);
  const drawn = drawnFrom(told);
  // a centre of 3 in and logs of 1 in lie on a grid of inches
  assert.deepEqual(drawn.grid, [9, 9]);
  giveSize(cabin, told.size);
  putPatches(cabin, { before: drawn, patches: drawn.patches, colourings: told.colourings });
  assert.equal(cabin.recipe, undefined);
  assert.equal(cabin.size, '9');
  assert.deepEqual(patchesOf(cabin), was);
});

test('a block of the collection and one with a pieced centre keep every cloth and their names as drawings', () => {
  const star: Block = {
    id: 'star',
    from: 'ohio-star',
    size: '9',
    colourings: { default: { light: 'oat', medium: 'ember', dark: 'slate' } },
  };
  const was = patchesOf(star);
  const told = toldOf(star);
  makeDrawing(star, told);
  assert.deepEqual(patchesOf(star), was);
  // as the collection calls it
  assert.equal(star.title, 'Ohio Star');

  const round: Block = {
    id: 'round',
    recipe: {
      kind: 'log-cabin',
      centre: { block: 'drawn' },
      rounds: [{ width: '1', tones: ['oat', 'oat', 'ember', 'ember'] }],
    },
  };
  // the centre's tones get their cloth from the centre's own colouring
  const core = seamed();
  for (const one of core.drawing?.tonesAt ?? []) one.tone = `${one.tone} part`;
  core.colourings = { default: { 'oat part': 'ember', 'slate part': 'oat', 'ember part': 'slate' } };
  const before = patchesOf(round, core);
  const all = toldOf(round, core);
  giveSize(round, all.size);
  putPatches(round, { before: drawnFrom(all), patches: drawnFrom(all).patches, colourings: all.colourings });
  assert.equal(round.size, '10');
  assert.deepEqual(patchesOf(round), before);
});

test('a block of units can be drafted on', () => {
  const units: Block = {
    id: 'units',
    size: '4',
    recipe: {
      kind: 'units',
      grid: [2, 2],
      units: [
        { at: [0, 0], unit: 'half-square', tones: ['oat', 'slate'] },
        { at: [1, 0], unit: 'square', tones: ['ember'] },
        { at: [0, 1], span: [2, 1], unit: 'flying-geese', tones: ['slate', 'oat'] },
      ],
    },
  };
  const was = patchesOf(units);
  const told = toldOf(units);
  assert.deepEqual(told.grid, [2, 2]);
  putPatches(units, { before: drawnFrom(told), patches: drawnFrom(told).patches, colourings: told.colourings });
  assert.deepEqual(patchesOf(units), was);
});

test('of a seam that crosses itself a block drawn by its seams takes what divides it', () => {
  const block = seamed();
  const before = drawnFrom(toldOf(block));
  const run = [at(6, 2), at(6, 6), at(7, 6), at(7, 4), at(4, 4)];
  const cut = cutAlong(before.patches, run, slackOf(before.grid));
  putSeams(block.drawing ?? assert.fail('no seams'), { grid: before.grid, patches: cut.patches, ruled: cut.ruled });
  // by hand: the corner two wide and two high that the way to its end cuts off; the round hangs on it at one place
  assert.deepEqual(patchesOf(block), ['ember 20', 'ember 4', 'oat 16', 'slate 24']);
});

test('a block drawn by its seams stays one when a seam is ruled, taken out or recoloured', () => {
  const block = seamed();
  const drawing = block.drawing ?? assert.fail('no seams');
  const before = drawnFrom(toldOf(block));
  const slack = slackOf(before.grid);
  const run = [at(0, 5), at(4, 5)];
  putSeams(drawing, { grid: before.grid, patches: cutAlong(before.patches, run, slack).patches, ruled: [run] });
  assert.deepEqual(patchesOf(block), ['ember 24', 'oat 16', 'slate 12', 'slate 12']);
  assert.equal(drawing.seams.length, 3);
  assert.deepEqual(drawing.tonesAt[0], { at: [1, 1], tone: 'oat' });

  // the upright seam is taken out beside one patch alone
  const now = drawnFrom(toldOf(block));
  const right = now.patches.findIndex(({ tone }) => tone === 'ember');
  const left = now.patches.findIndex(({ points }) => points.some(({ x, y }) => x === 0 && y === 8));
  const patches = joined(now.patches, [right, left], slack) ?? assert.fail('they share a seam');
  const out = seamsBetween(
    [right, left].flatMap((i) => now.patches[i] ?? []),
    slack,
  );
  putSeams(drawing, { grid: now.grid, patches, out });
  assert.deepEqual(patchesOf(block), ['ember 36', 'oat 16', 'slate 12']);
  assert.deepEqual(drawing.seams[1], [
    [4, 2],
    [4, 5],
  ]);

  const last = drawnFrom(toldOf(block));
  const recoloured = last.patches.map((patch) => (patch.tone === 'oat' ? { ...patch, tone: 'ember' } : patch));
  putSeams(drawing, { grid: last.grid, patches: recoloured });
  assert.deepEqual(patchesOf(block), ['ember 16', 'ember 36', 'slate 12']);
});

test('a finer grid leaves the drawing as it is', () => {
  const block = seamed();
  const was = patchesOf(block);
  regridSeams(block.drawing ?? assert.fail('no seams'), [24, 12]);
  assert.deepEqual(patchesOf(block), was);
  assert.deepEqual(block.drawing?.grid, [24, 12]);
  const plain = blank();
  const before = drawnOf(plain);
  putPatches(plain, { before, patches: regridded(before, [3, 3]), grid: [3, 3], colourings: {} });
  assert.deepEqual(patchesOf(plain), ['oat 64']);
});

test('a seam that ends inside a patch can be taken out', () => {
  const block = seamed();
  const drawing = block.drawing ?? assert.fail('no seams');
  drawing.seams.push([
    [4, 5],
    [6, 5],
  ]);
  const refused = askBlock(quiltOf(block), block.id);
  assert.ok(!refused.ok && refused.problems[0]?.where.startsWith('/blocks/0/drawing/seams/2'));
  dropSeam(drawing, 2);
  assert.ok(askBlock(quiltOf(block), block.id).ok);
});
