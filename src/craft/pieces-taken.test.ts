import assert from 'node:assert/strict';
import { test } from 'node:test';
import { naturesOf } from '#craft/cloths';
import { piecesTaken } from './pieces-taken.ts';
import { planQuilt } from './quilt.ts';

const square = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** Two squares lie across the oat and leave room beside them for borders along it. */
const document = {
  format: 'seamstead-quilt',
  version: 1,
  unit: 'in',
  fabrics: [
    { id: 'oat', colour: '#eeeeee', usableWidth: 40 },
    { id: 'bark', colour: '#443322', usableWidth: 40 },
  ],
  blocks: [{ id: 'patch', size: '13', patches: { grid: [1, 1], list: [{ points: square, tone: 'oat' }] } }],
  top: {
    rows: Array.from({ length: 4 }, () => Array.from({ length: 4 }, () => ({ block: 'patch' }))),
    borders: [
      { width: '4 1/2', fabric: 'oat' },
      { width: '2', fabric: 'bark' },
    ],
  },
};

test('asked for one cloth alone, what that cloth gives is what it gives among all', () => {
  const planned = planQuilt(document, { budget: { steps: 0 } });
  assert.ok(planned.ok);
  const { quilt, top, blocks } = planned.value;
  const task = { quilt, set: top.set, drawn: top.drawn, pressing: top.pressing, blocks, natures: naturesOf(quilt) };
  const all = piecesTaken(task).pieces;
  const sizesOf = (pieces: typeof all, id: string) =>
    pieces.filter(({ fabric, use }) => fabric === id && use.role === 'border').map(({ cut }) => cut.size);
  // longer than the cloth is wide: in one piece along it
  assert.ok(sizesOf(all, 'oat').every(([, along]) => along > 40));
  for (const id of ['oat', 'bark'])
    assert.deepEqual(sizesOf(piecesTaken({ ...task, asked: id }).pieces, id), sizesOf(all, id), id);
});
