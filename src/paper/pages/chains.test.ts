import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor } from '#paper/cloth';
import { documentOf, planOf } from '#paper/specimen';
import { chainsPage } from './chains.ts';

const star = {
  id: 'star',
  from: 'lemoyne-star',
  size: '12',
  colourings: { default: { light: 'oat', medium: 'brick', dark: 'bark' } },
};

test('what is set in is sewn one by one and counts as no chain', () => {
  const plan = planOf(documentOf({ blocks: [star], top: { rows: [[{ block: 'star' }, { block: 'star' }]] } }));
  const page = chainsPage({ plan, signs: clothSignsFor(plan), album: new Map() });
  const lines = (page?.rounds ?? []).flatMap(({ sum, batches }) => batches.map(({ make }) => ({ sum, make })));
  assert.equal(lines.length, plan.blocks[0]?.steps.length);
  plan.blocks[0]?.steps.forEach(({ kind, total }, i) => {
    const { sum, make } = lines[i] ?? {};
    // every round of this star has one unit
    assert.deepEqual(
      [sum, make],
      kind === 'straight'
        ? [`${total} seams, one chain`, `${total}`]
        : [`${total} seams, one by one`, `${total}, one by one`],
    );
  });
  assert.ok(plan.blocks[0]?.steps.some(({ kind }) => kind === 'set-in'));
});
