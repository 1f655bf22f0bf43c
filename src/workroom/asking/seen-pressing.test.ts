import assert from 'node:assert/strict';
import { test } from 'node:test';
import { example, planned } from '#documents';
import { lookAt } from './looks.ts';

const look = { chosen: null, way: 'first' } as const;
const plan = planned(example('twelve-fields') as unknown as Readonly<Record<string, unknown>>);

const arrowsOf = (svg: string): readonly string[] =>
  [...svg.matchAll(/data-thing="(\d+)"/g)].map(([, step]) => step ?? '');

test('every seam of a block has its arrow in the picture, and every step its line with the way and the reason', () => {
  for (const block of plan.blocks) {
    const seen = lookAt(plan, 'pressing', { entry: block.id, ...look });
    assert.ok(seen !== 'nowhere', block.id);
    assert.equal(
      arrowsOf(seen.picture.svg).length,
      block.steps.reduce((all, step) => all + step.perBlock, 0),
      block.id,
    );
    assert.deepEqual(
      seen.steps.map(({ number }) => number),
      block.steps.map(({ number }) => number),
    );
    for (const { press } of seen.steps) assert.match(press, /^(Press|Spin the seam:) .*\. [A-Z].*\.$/);
  }
});

test('the picture of the top has every seam but its mitres, each with its step', () => {
  const seen = lookAt(plan, 'pressing', { entry: '~top', ...look });
  assert.ok(seen !== 'nowhere');
  const shown = arrowsOf(seen.picture.svg).toSorted();
  const sewn = plan.top.steps.flatMap(({ number, stage, total }) =>
    stage === 'mitre' ? [] : Array.from({ length: total }, () => `${number}`),
  );
  assert.deepEqual(shown, sewn.toSorted());
});

test('what the quilt does not have is nowhere', () => {
  assert.equal(lookAt(plan, 'pressing', { entry: 'none', ...look }), 'nowhere');
});
