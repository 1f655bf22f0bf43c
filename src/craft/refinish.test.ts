import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readQuilt, toDocument } from '#craft/design';
import { planQuilt } from './quilt.ts';
import { refinish } from './refinish.ts';

const search = { steps: 0, solver: null } as const;

/** A top of 50 × 70 in: upright its backing takes 2 panels of 78 in, level 2 of 58 in from a cloth of 42 in (docs/formulas.md#backing). */
const document = (backing: object, bay: object = {}) => ({
  format: 'seamstead-quilt',
  version: 1,
  unit: 'in',
  fabrics: [
    { id: 'ash', colour: '#aa8844' },
    { id: 'bay', colour: '#224488', usableWidth: '42', ...bay },
  ],
  blocks: [{ id: 'b', from: 'nine-patch', size: '10', colourings: { default: { light: 'ash', dark: 'ash' } } }],
  top: { set: 'straight', rows: Array(7).fill(Array(5).fill({ block: 'b' })) },
  finish: { backing: { fabric: 'bay', ...backing }, binding: { fabric: 'ash' } },
});

const planned = (of: object) => {
  const plan = planQuilt(of, { budget: { steps: 0 } });
  assert.ok(plan.ok);
  return plan.value;
};

test('the named cloths alone are laid out anew, those that nothing is cut from any more left out', () => {
  const plan = planned(document({}));
  const { finish } = plan.quilt;
  const laid = (fabrics: readonly string[], as = finish) =>
    refinish({ plan, finish: as, fabrics: new Set(fabrics), search })?.map(({ id }) => id);
  assert.deepEqual(laid(['bay']), ['bay']);
  assert.deepEqual(laid(['ash', 'bay']), ['ash', 'bay']);
  assert.deepEqual(laid(['bay'], { ...finish, backing: null }), []);
});

test('finished as it is, a cloth is laid out as in its plan; without its binding it takes less', () => {
  const plan = planned(document({}));
  const { finish } = plan.quilt;
  const fabrics = new Set(['ash', 'bay']);
  const again = refinish({ plan, finish, fabrics, search });
  assert.deepEqual(again, plan.fabrics);
  const [ash] = refinish({ plan, finish, fabrics, without: new Set(['binding'] as const), search }) ?? [];
  assert.ok(ash && ash.buy.amount < (plan.fabrics[0]?.buy.amount ?? 0));
});

test('seams of a backing run as the document says, and where it says nothing the way that takes less cloth', () => {
  const run = (backing: object, bay?: object) => planned(document(backing, bay)).finish.backing?.run;
  assert.equal(run({}), 'level');
  assert.equal(run({ run: 'upright' }), 'upright');
  assert.equal(run({ run: 'level' }), 'level');
  // a print that stands upright decides it
  assert.equal(run({ run: 'level' }, { print: 'one-way' }), 'upright');
  assert.equal(run({ run: 'upright' }, { print: 'one-way', printRuns: 'crosswise' }), 'level');
});

test('the run is read, written and read again, and another word for it is refused at its place', () => {
  const read = readQuilt(document({ run: 'level' }));
  assert.ok(read.ok);
  assert.deepEqual(readQuilt(JSON.parse(JSON.stringify(toDocument(read.value)))), read);
  const refused = readQuilt(document({ run: 'slanted' }));
  assert.ok(!refused.ok && refused.problems[0]?.path === '/finish/backing/run');
});

test('the price of a batting is read, written and read again, and stands apart from the cost of the cloths', () => {
  const of = { ...document({}), finish: { batting: { price: 29.9 } } };
  const read = readQuilt(of);
  assert.ok(read.ok);
  assert.deepEqual(readQuilt(JSON.parse(JSON.stringify(toDocument(read.value)))), read);
  const { finish, cost } = planned(of);
  assert.equal(finish.batting?.cost, 29.9);
  assert.equal(cost.total, null);
  assert.ok(!('cost' in (planned({ ...of, finish: { batting: {} } }).finish.batting ?? {})));
  const refused = readQuilt({ ...of, finish: { batting: { price: -1 } } });
  assert.ok(!refused.ok && refused.problems[0]?.path === '/finish/batting/price');
});
