import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { clothSignsFor } from '#paper/cloth';
import { patternPages } from '#paper/pages';
import { summaryText } from '#paper/summary';
import { drawQuilt } from './index.ts';

const planned = planQuilt(
  {
    format: 'seamstead-quilt',
    version: 1,
    unit: 'in',
    fabrics: [{ id: 'oat', colour: '#efe6d0' }],
    blocks: [
      { id: 'panel', title: 'Printed panel', made: 'elsewhere', size: ['6', '4'] },
      {
        id: 'plain',
        size: ['6', '4'],
        patches: {
          grid: [1, 1],
          list: [
            {
              points: [
                [0, 0],
                [1, 0],
                [1, 1],
                [0, 1],
              ],
              tone: 'oat',
            },
          ],
        },
      },
    ],
    top: { rows: [[{ block: 'panel' }, { block: 'plain' }, { block: 'panel', turn: 180 }]] },
  },
  { budget: { steps: 0 } },
);
assert.ok(planned.ok, planned.ok ? '' : JSON.stringify(planned.problems));
const plan = planned.value;

test('the place of a block made elsewhere is dashed and empty, in colour and in hatches', () => {
  const signs = clothSignsFor(plan);
  for (const [fill, places] of [
    ['colour', 1],
    ['hatched', 2],
  ] as const) {
    const { svg } = drawQuilt({ plan, signs, fitPt: [182, 42], fill, alt: 'A quilt.' });
    // by hand: 18 × 4 in across 180 × 40 pt is 10 pt to the inch; once for use by reference, or once a place
    const rects = svg.match(/<rect x="0" y="0" width="60" height="40" fill="#fffdf8"\/>/g) ?? [];
    assert.equal(rects.length, places, fill);
    assert.match(svg, /stroke-dasharray="3 2"/);
  }
});

test('it has no chapter and no steps; the note says what it must measure', () => {
  const pages = JSON.stringify(patternPages(plan));
  assert.match(pages, /made elsewhere: the top keeps a place of 6 × 4 in for it.* 6½ × 4½ in/);
  assert.doesNotMatch(pages, /The board of Printed panel/);
  assert.match(summaryText(plan), /^ {2}2 × Printed panel: made elsewhere$/m);
});
