import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { cutAlong, type DrawnPatch, joined, movedBy, seamsBetween, slackOf } from '#craft/redrawing';
import { at } from '#ground/plane';
import { askBlock, askDrawn } from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import type { Block } from './block-edits.ts';
import { drawnFrom, drawnIn, keepsCurves, putPatches, putSeams } from './drawing-edits.ts';

const fabrics: QuiltDocument['fabrics'] = [
  { id: 'oat', colour: '#efe6d0' },
  { id: 'slate', colour: '#2f3c44' },
];

const quiltOf = (block: Block): JsonObject =>
  JSON.parse(
    JSON.stringify({
      format: 'seamstead-quilt',
      version: 1,
      unit: 'in',
      fabrics,
      blocks: [block],
      top: { rows: [[{ block: block.id }]] },
    }),
  ) as JsonObject;

const toldOf = (block: Block) => {
  const reply = askDrawn(quiltOf(block), block.id);
  assert.ok(reply.ok, JSON.stringify(reply));
  return reply.value;
};

/** A quarter of a circle in a corner; on the right a straight strip. */
const asPatches = (): Block => ({
  id: 'bend',
  size: ['6', '4'],
  patches: {
    grid: [6, 4],
    list: [
      { points: [[0, 0], [3, 0], { to: [0, 3], centre: [0, 0], sweep: 'clockwise' }], tone: 'slate' },
      {
        points: [[3, 0], [4, 0], [4, 4], [0, 4], [0, 3], { to: [3, 0], centre: [0, 0], sweep: 'counterclockwise' }],
        tone: 'oat',
      },
      {
        points: [
          [4, 0],
          [6, 0],
          [6, 4],
          [4, 4],
        ],
        tone: 'slate',
      },
    ],
  },
});

const asSeams = (): Block => ({
  id: 'bend',
  size: '4',
  drawing: {
    grid: [4, 4],
    seams: [[[3, 0], { to: [0, 3], centre: [0, 0], sweep: 'clockwise' }]],
    tonesAt: [
      { at: [1, 1], tone: 'slate' },
      { at: [3.5, 3.5], tone: 'oat' },
    ],
  },
});

test('a curved patch is told with chords for its arcs, and that it is curved', () => {
  assert.equal(drawnIn(asPatches()), null);
  const { patches } = drawnFrom(toldOf(asPatches()));
  assert.deepEqual(
    patches.map(({ curved, points }) => [curved ?? false, points.length > 20]),
    [
      [true, true],
      [true, true],
      [false, false],
    ],
  );
});

test('another tone leaves the arcs of a document as they were written', () => {
  const block = asPatches();
  const before = drawnFrom(toldOf(block));
  const patches = before.patches.map((patch, i): DrawnPatch => (i === 0 ? { ...patch, tone: 'oat' } : patch));
  assert.ok(keepsCurves(block, { before, patches }));
  putPatches(block, { before, patches, colourings: {} });
  const was = asPatches().patches?.list ?? [];
  assert.deepEqual(block.patches?.list, [{ ...was[0], tone: 'oat' }, was[1], was[2]]);
  assert.ok(askBlock(quiltOf(block), block.id).ok);
});

test('a curved patch is not moved, cut or joined; straight ones beside it are, and it can be taken out', () => {
  const block = asPatches();
  const before = drawnFrom(toldOf(block));
  const slack = slackOf(before.grid);
  const isKept = (patches: readonly DrawnPatch[]): boolean => keepsCurves(block, { before, patches });
  assert.equal(isKept(movedBy(before, [0], [1, 0])), false);
  assert.equal(isKept(cutAlong(before.patches, [at(0, 2), at(4, 2)], slack).patches), false);
  assert.equal(isKept(joined(before.patches, [0, 1], slack) ?? []), false);
  const strip = cutAlong(before.patches, [at(4, 2), at(6, 2)], slack).patches;
  assert.equal(strip.length, 4);
  assert.equal(isKept(strip), true);
  putPatches(block, { before, patches: strip, colourings: {} });
  assert.ok(askBlock(quiltOf(block), block.id).ok);
  assert.equal(isKept(before.patches.slice(1)), true);
});

test('a seam is ruled across a block that is drawn by curved seams, and taken out again; its arc stays', () => {
  const block = asSeams();
  const drawing = block.drawing ?? assert.fail('no seams');
  const before = drawnFrom(toldOf(block));
  const slack = slackOf(before.grid);
  const run = [at(0, 2), at(4, 2)];
  const { patches } = cutAlong(before.patches, run, slack);
  assert.equal(patches.length, 4);
  assert.ok(keepsCurves(block, { before, patches, seams: { ruled: [run] } }));
  putSeams(drawing, { grid: before.grid, patches, ruled: [run] });
  const now = drawnFrom(toldOf(block));
  assert.equal(now.patches.length, 4);
  const upper = now.patches.findIndex(({ points }) => points.some(({ x, y }) => x === 4 && y === 0));
  const lower = now.patches.findIndex(({ points }) => points.some(({ x, y }) => x === 4 && y === 4));
  const out = seamsBetween([now.patches[upper]?.points ?? [], now.patches[lower]?.points ?? []], slack);
  const fewer = joined(now.patches, [upper, lower], slack) ?? assert.fail('they lie apart');
  assert.ok(keepsCurves(block, { before: now, patches: fewer, seams: { out } }));
  putSeams(drawing, { grid: now.grid, patches: fewer, out });
  assert.equal(drawnFrom(toldOf(block)).patches.length, 3);
  assert.deepEqual(drawing.seams[0], asSeams().drawing?.seams[0]);
});

test('an arc of a block that is drawn by its seams is not taken out by halves', () => {
  const block = asSeams();
  const before = drawnFrom(toldOf(block));
  const slack = slackOf(before.grid);
  const outlines = before.patches.map(({ points }) => points);
  const patches = joined(before.patches, [0, 1], slack) ?? assert.fail('they lie apart');
  assert.equal(keepsCurves(block, { before, patches, seams: { out: seamsBetween(outlines, slack) } }), false);
});

test('a curved block of the collection stays one', () => {
  const block: Block = {
    id: 'bend',
    size: '4',
    from: 'drunkards-path',
    colourings: { default: { dark: 'slate', light: 'oat' } },
  };
  const before = drawnFrom(toldOf(block));
  assert.equal(keepsCurves(block, { before, patches: before.patches }), false);
});
