// Pieces too narrow to show between their seams are refused, with their place.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { quilt, setOf } from '../documents/documents.ts';

const cabin = (log: string) => ({
  id: 'cabin',
  recipe: {
    kind: 'log-cabin',
    centre: 2,
    centreTone: 'dark',
    order: ['left'],
    rounds: [{ width: log, tones: ['light'] }],
  },
});

test('a log under half a mark is refused, one of half a mark goes up to the mark', () => {
  // the ruler's mark is 1/8 in: half of it is 1/16 (by hand)
  const refused = planQuilt(quilt({ blocks: [cabin('1/100')], top: setOf('cabin') }));
  assert.ok(!refused.ok);
  const [problem] = refused.problems;
  assert.ok(problem?.code === 'cutting/nothing-left');
  assert.deepEqual([problem.path, problem.block, problem.label, problem.finished], ['/blocks/0', 'cabin', 'B', 0.01]);
  const planned = planQuilt(quilt({ blocks: [cabin('1/16')], top: setOf('cabin') }));
  assert.ok(planned.ok);
});
