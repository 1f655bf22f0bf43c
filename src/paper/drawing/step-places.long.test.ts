import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BlockPlan } from '#craft';
import { collection } from '#craft/collection';
import { examples } from '#documents';
import { documentOf, planOf } from '#paper/specimen';
import { placesInBlock, placesInTop } from './step-places.ts';

const colouring = { light: 'oat', medium: 'brick', dark: 'bark', accent: 'brick' };
const ofCollection = (id: string): BlockPlan =>
  planOf(
    documentOf({
      blocks: [{ id, from: id, size: '12', colourings: { default: colouring } }],
      top: { set: 'straight', rows: [[{ block: id }]] },
    }),
  ).blocks[0] as BlockPlan;

/** Steps that do not lie in as many places as they are sewn, and patches that none takes. */
const astray = (block: BlockPlan): readonly string[] => {
  const places = placesInBlock(block);
  const counts = block.steps.flatMap(({ number, perBlock }, i) =>
    places[i]?.length === perBlock ? [] : [`step ${number}: ${places[i]?.length} places, sewn ${perBlock} times`],
  );
  const taken = new Set(places.flat(3));
  return [
    ...counts,
    ...block.patches.flatMap((_, i) => (taken.has(i) || block.steps.length === 0 ? [] : [`patch ${i}`])),
  ];
};

test('in every block of the collection each step lies in as many places as it is sewn', () => {
  for (const { id } of collection) assert.deepEqual(astray(ofCollection(id)), [], id);
});

test('in every example each step of the blocks and of the top lies in as many places as it is sewn', () => {
  for (const document of examples()) {
    const plan = planOf(document);
    const name = document.title;
    for (const block of plan.blocks) assert.deepEqual(astray(block), [], `${name}, ${block.id}`);
    const places = placesInTop(plan);
    for (const [i, { number, perBlock }] of plan.top.steps.entries()) {
      assert.equal(places[i]?.length, perBlock, `${name}, step ${number} of the top`);
    }
  }
});
