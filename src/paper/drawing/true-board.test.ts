import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor } from '#paper/cloth';
import { documentOf, planOf } from '#paper/specimen';
import { trueBoard } from './true-board.ts';

const lettersOn = (dark: unknown): readonly string[] => {
  const nine = { id: 'nine', from: 'nine-patch', size: '6', colourings: { default: { light: 'oat', dark } } };
  const plan = planOf(documentOf({ blocks: [nine], top: { rows: [[{ block: 'nine' }, { block: 'nine' }]] } }));
  const [block] = plan.blocks;
  assert.ok(block !== undefined);
  const { labels } = trueBoard({ block, signs: clothSignsFor(plan), seam: 0.25, scale: 72 });
  return [...new Set(labels.map(({ text }) => text))].sort();
};

test('a board names the cloth of each piece, but not of a scrappy one, whose cloth changes', () => {
  // by hand: a nine patch has two kinds of pieces, and here one of them is drawn from two cloths
  assert.ok(lettersOn('bark').every((text) => /^[AB] · [A-Z]$/.test(text)));
  const [first = '', second = ''] = lettersOn(['bark', 'brick']);
  assert.match(`${first}, ${second}`, /^(A, B · [A-Z]|A · [A-Z], B)$/);
});
