import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { cutAlong, type Drawn, slackOf } from '#craft/redrawing';
import { example } from '#documents';
import { at } from '#ground/plane';
import { askBlock, askDrawn } from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import { drawnFrom, putPatches, putSeams } from './drawing-edits.ts';

const asFile = (document: QuiltDocument): JsonObject => document as unknown as JsonObject;

/** The advised lines taken as the drafting table takes them. */
const taken = (document: QuiltDocument, id: string): QuiltDocument => {
  const [asked, drawnReply] = [askBlock(asFile(document), id), askDrawn(asFile(document), id)];
  assert.ok(asked.ok && drawnReply.ok);
  const drawn: Drawn = drawnFrom(drawnReply.value);
  const { size } = drawnReply.value;
  const runs = (asked.value.advice?.seams ?? []).map(([x, y, u, v]) => [
    at((x * drawn.grid[0]) / size[0], (y * drawn.grid[1]) / size[1]),
    at((u * drawn.grid[0]) / size[0], (v * drawn.grid[1]) / size[1]),
  ]);
  const slack = slackOf(drawn.grid);
  const patches = runs.reduce((cut, run) => cutAlong(cut, run, slack).patches, drawn.patches);
  assert.equal(patches.length, drawn.patches.length + (asked.value.advice?.more ?? 0));
  const changed = structuredClone(document);
  const block = changed.blocks.find((one) => one.id === id);
  assert.ok(block);
  if (block.drawing !== undefined) putSeams(block.drawing, { grid: drawn.grid, patches, ruled: runs });
  else putPatches(block, { before: drawn, patches, colourings: drawnReply.value.colourings });
  return changed;
};

for (const [name, id, lines] of [
  ['weir-street', 'wheel', 1],
  ['lamp-street', 'star', 4],
] as const) {
  test(`${name}: with the advised lines straight seams alone join the block`, () => {
    const document = example(name);
    const before = askBlock(asFile(document), id);
    assert.ok(before.ok);
    assert.equal(before.value.advice?.lines, lines);
    const after = askBlock(asFile(taken(document, id)), id);
    assert.ok(after.ok);
    assert.equal(after.value.joining, 'straight');
    assert.equal(after.value.advice, null);
  });
}

test('a block drawn by its seams takes the line as one seam more', () => {
  const document = {
    ...example('weir-street'),
    blocks: [
      {
        id: 'wheel',
        size: '9',
        drawing: {
          grid: [3, 3],
          seams: [
            [
              [0, 1],
              [2, 1],
            ],
            [
              [2, 0],
              [2, 2],
            ],
            [
              [3, 2],
              [1, 2],
            ],
            [
              [1, 3],
              [1, 1],
            ],
          ],
          tonesAt: [
            { at: [1, 0.5], tone: 'slate' },
            { at: [2.5, 1], tone: 'flour' },
            { at: [2, 2.5], tone: 'slate' },
            { at: [0.5, 2], tone: 'flour' },
            { at: [1.5, 1.5], tone: 'ember' },
          ],
        },
      },
    ],
    top: { set: 'straight', rows: [[{ block: 'wheel' }]] },
  } as unknown as QuiltDocument;
  const after = taken(document, 'wheel');
  assert.equal(after.blocks[0]?.drawing?.seams.length, 5);
  const asked = askBlock(asFile(after), 'wheel');
  assert.ok(asked.ok);
  assert.equal(asked.value.joining, 'straight');
});

test('a round between two seams is divided by one line, and the block is then sewn in whole seams', () => {
  const round = { to: [6, 4], centre: [4, 4], sweep: 'clockwise' };
  const document = {
    ...example('weir-street'),
    blocks: [
      {
        id: 'wheel',
        size: '8',
        drawing: {
          grid: [8, 8],
          seams: [
            [[0, 4], [2, 4], round, { ...round, to: [2, 4] }],
            [
              [6, 4],
              [8, 4],
            ],
          ],
          tonesAt: [
            { at: [4, 1], tone: 'slate' },
            { at: [4, 7], tone: 'flour' },
            { at: [4, 4], tone: 'ember' },
          ],
        },
      },
    ],
    top: { set: 'straight', rows: [[{ block: 'wheel' }]] },
  } as unknown as QuiltDocument;
  const before = askBlock(asFile(document), 'wheel');
  assert.ok(before.ok, JSON.stringify(before));
  assert.deepEqual(before.value.advice?.seams, [[2, 4, 6, 4]]);
  assert.equal(before.value.advice.joins, 'curved');
  const after = askBlock(asFile(taken(document, 'wheel')), 'wheel');
  assert.ok(after.ok);
  assert.equal(after.value.joining, 'curved');
  assert.equal(after.value.advice, null);
});
