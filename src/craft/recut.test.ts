import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from './quilt.ts';
import { recut } from './recut.ts';

test('cut anew as it is, a cloth of long borders lies lengthwise as in its plan', () => {
  // by hand: round 60 in, borders cut 10 in wide: 2 of 60 1/2 and 2 of 79 1/2 in, side by side on 40 in, take 79 1/2; joined across, two
  // strips each, 80
  const planned = planQuilt(
    {
      format: 'seamstead-quilt',
      version: 1,
      unit: 'in',
      fabrics: ['ash', 'bay'].map((id) => ({ id, colour: '#aa8844' })),
      blocks: [{ id: 'b', from: 'nine-patch', size: '12', colourings: { default: { light: 'ash', dark: 'ash' } } }],
      top: {
        set: 'straight',
        rows: Array(5).fill(Array(5).fill({ block: 'b' })),
        borders: [{ width: '9 1/2', fabric: 'bay' }],
      },
    },
    { budget: { steps: 0 } },
  );
  assert.ok(planned.ok);
  const plan = planned.value;
  const own = plan.fabrics.find(({ id }) => id === 'bay')?.laid;
  const again = recut({ plan, fabric: 'bay', turning: 'as-they-may', search: { steps: 0, solver: null } })?.laid;
  assert.equal(own?.layout.length, 79.5);
  assert.deepEqual(again, own);
});
