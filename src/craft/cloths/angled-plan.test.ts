import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt, type QuiltPlan, recut } from '#craft';

type Written = Readonly<Record<string, unknown>>;

const planOf = (block: Written, fabric: Written = {}): QuiltPlan => {
  const planned = planQuilt(
    {
      format: 'seamstead-quilt',
      version: 1,
      unit: 'in',
      fabrics: ['ash', 'bay', 'clay'].map((id) => ({ id, colour: '#aa8844', ...fabric })),
      blocks: [{ id: 'b', size: '12', ...block }],
      top: { set: 'straight', rows: Array(4).fill(Array(4).fill({ block: 'b' })) },
    },
    { budget: { steps: 0 } },
  );
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  return planned.value;
};

const star = { from: 'lemoyne-star', colourings: { default: { light: 'ash', medium: 'bay', dark: 'clay' } } };
const lengthOf = (laid: QuiltPlan['fabrics'][number]['laid'] | null | undefined): number =>
  laid && !('sheets' in laid) ? laid.layout.length : Number.NaN;
const search = { steps: 0, solver: null };

test('the diamonds of sixteen stars of 12 in take eight strips of 3 in, and the block’s list says so', () => {
  // by hand: 64 diamonds of a cloth, eight in 40 in; one below another 24 in
  const plan = planOf(star);
  for (const fabric of plan.fabrics.slice(1)) {
    assert.deepEqual(
      fabric.pieces.map(({ shape, count, gives }) => [shape, count, gives]),
      [['angled', 8, 8]],
    );
    assert.equal(lengthOf(fabric.laid), 24);
  }
  assert.deepEqual(plan.blocks[0]?.pieces.map(({ cut }) => [cut.shape, cut.gives]).sort(), [
    ['angled', 8],
    ['angled', 8],
    ['quarter-square', 4],
    ['square', 1],
  ]);
});

test('cut anew, a cloth of the plan lies as before, and with an upright print it lies otherwise', () => {
  const plan = planOf(star);
  const again = (as: object) => recut({ plan, fabric: 'bay', as, turning: 'as-they-may', search })?.laid;
  assert.equal(lengthOf(again({})), 24);
  // by hand: a one-way print leaves parallel cuts as they are where a side lies level: half of the diamonds stand along the
  // cloth then, so the layout is another one, and no piece is lost
  const upright = again({ print: 'one-way' });
  assert.ok(lengthOf(upright) > 24);
});
