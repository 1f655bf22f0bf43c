import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor } from '#paper/cloth';
import { documentOf, faultInIds, faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { asFirstPlaced, patchesAt } from './drawn.ts';
import { drawQuilt } from './quilt.ts';

const [cabin, fly] = specimenDocument.blocks;
const plan = planOf(
  documentOf({ blocks: [cabin, { ...fly, colourings: { default: { sky: ['oat', 'bark'], wing: 'brick' } } }] }),
);

test('a scrappy block is drawn at every place in the cloths that were drawn for it, others by reference', () => {
  const { svg } = drawQuilt({ plan, signs: clothSignsFor(plan), fitPt: [302, 302], fill: 'colour', alt: 'Quilt' });
  assert.equal(faultInXml(svg), null);
  assert.equal(faultInIds(svg), null);
  // the specimen: two cabins by reference, two flies of their own
  assert.equal(svg.match(/<use /g)?.length, 2);
});

test('the cloths of a place are those of the plan; the first place stands for the block', () => {
  const block = plan.blocks.find(({ id }) => id === 'fly');
  if (block === undefined) throw new Error('no fly');
  const place = plan.top.set.placed.findIndex((placed) => placed.block === 'fly');
  const cloths = patchesAt(plan, place, block).map(({ fabric }) => fabric);
  assert.deepEqual(cloths, plan.top.drawn[place]);
  assert.deepEqual(
    asFirstPlaced(plan, block).patches.map(({ fabric }) => fabric),
    cloths,
  );
  assert.ok(cloths.includes('bark') && cloths.includes('oat'));
});
