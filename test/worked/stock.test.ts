// Cloth that comes in several kinds of sheet, as remnants, or in given lengths: what is bought, counted by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt, type QuiltPlan } from '#craft';
import { summaryText } from '#paper/summary';
import { problemText } from '#paper/words';
import { only, plainBlock, planned, quilt, setOf, type Written } from '../documents/documents.ts';

/** So many squares that finish 4 1/2 in and are cut 5 in, of a cloth that comes like this. */
const squares = (count: number, cloth: Written, more: Written = {}): Written =>
  quilt({
    fabrics: [{ id: 'dark', colour: '#4a3023', ...cloth }],
    blocks: [plainBlock('square', 4.5, 4.5)],
    top: setOf('square', { across: count }),
    ...more,
  });

const boughtOf = (plan: QuiltPlan) => {
  const { buy, parts, cost } = only(plan.fabrics);
  return { amount: buy.amount, unit: buy.unit, parts: parts?.map(({ name, count }) => [name, count]), cost };
};

test('remnants at hand come before fat quarters that are bought', () => {
  // by hand: a remnant of 10 × 15 holds 2 × 3 squares of 5 in, a fat quarter of 17 1/2 × 20 1/2 holds 3 × 4: 18 squares
  // are one of each
  const sheets = [
    { size: 'fat-quarter', price: 3.5 },
    { size: ['10', '15'], count: 1, price: 0, name: 'remnant' },
  ];
  assert.deepEqual(boughtOf(planned(squares(18, { bought: { sheets } }), 2)), {
    amount: 2,
    unit: 'sheets',
    parts: [
      ['fat quarter', 1],
      ['remnant', 1],
    ],
    cost: 3.5,
  });
});

test('what is left over when remnants do not suffice is told in words', () => {
  // by hand: two remnants of 10 × 15 hold 12 of 15 squares
  const bought = { sheets: [{ size: ['10', '15'], count: 2 }] };
  const outcome = planQuilt(squares(15, { bought }), { budget: { steps: 2 } });
  assert.ok(!outcome.ok);
  assert.deepEqual(problemText(only(outcome.problems)), {
    where: '/fabrics/0/bought',
    what: 'What there is of “dark” does not suffice: no room was found for 3 pieces (3 of 5 × 5 in).',
    mend: 'Raise a count, add another kind of sheet or length, or leave a count out for what can be bought as needed.',
  });
});

test('of given lengths the least cloth is bought, and squaring is taken off each of them', () => {
  // by hand: half a yard less two inches is 16 in, three rows of eight squares; a yard less two inches is 34 in, six rows.
  // Seven rows: a yard and a half, not two yards; one inch of squaring twice would leave room for seven in a yard (35 in)
  const lengths = (count: number, cutting: Written = {}) =>
    boughtOf(planned(squares(count, { bought: { lengths: ['1/2 yd', '1 yd', '2 yd'] } }, { cutting }), 2));
  assert.deepEqual(lengths(24), { amount: 0.5, unit: 'yd', parts: [[null, 1]], cost: null });
  assert.deepEqual(lengths(56), {
    amount: 1.5,
    unit: 'yd',
    parts: [
      [null, 1],
      [null, 1],
    ],
    cost: null,
  });
  assert.deepEqual(lengths(56, { squaring: '1/2' }), { amount: 1, unit: 'yd', parts: [[null, 1]], cost: null });
});

test('where every length has a price the cheapest are bought, though they are more cloth', () => {
  // by hand: 24 squares are half a yard for 8, or a yard at a bargain of 6
  const lengths = [
    { length: '1/2 yd', price: 8 },
    { length: '1 yd', count: 1, price: 6 },
  ];
  assert.deepEqual(boughtOf(planned(squares(24, { bought: { lengths } }), 2)), {
    amount: 1,
    unit: 'yd',
    parts: [[null, 1]],
    cost: 6,
  });
});

test('no strip runs from one length into the next', () => {
  const plan = planned(squares(56, { bought: { lengths: ['1/2 yd', '1 yd'] } }), 2);
  const { laid } = only(plan.fabrics);
  assert.ok('sheets' in laid);
  for (const { length, strips } of laid.sheets) {
    const end = strips.reduce((sum, { height }) => sum + height, 0);
    assert.ok(end <= length, `${end} in ${length}`);
  }
});

test('the summary names what is bought of each kind', () => {
  const sheets = [{ size: 'fat-quarter' }, { size: ['15', '10'], count: 1, name: 'remnant' }];
  assert.match(
    summaryText(planned(squares(18, { bought: { sheets } }), 2)),
    /2 sheets {2}dark: 1 × fat quarter \(17½ × 20½ in\) and 1 × remnant \(15 × 10 in\)/,
  );
});

test('borders and binding of sheets run along their longer side, unless the grain is asked for', () => {
  // by hand: round one square that finishes 30 in, two borders of 3 in cut 3 1/2 × 30 1/2 and two 36 1/2; of fat eighths, 20 1/2 in long: 20 1/2
  // and 10 1/2, 20 1/2 and 16 1/2; across them, 8 1/2 in wide: three and a piece of 6 1/2, four and one of 4 1/2
  const plan = (grain: string): QuiltPlan =>
    planned({
      ...quilt({
        fabrics: [
          { id: 'light', colour: '#f0e8d8' },
          { id: 'dark', colour: '#4a3023', bought: 'fat-eighth' },
        ],
        blocks: [plainBlock('square', 30, 30, 'light')],
        top: setOf('square', { borders: [{ width: '3', fabric: 'dark', grain }] }),
      }),
      finish: { binding: { fabric: 'dark' } },
    });
  const joined = (grain: string) => plan(grain).top.pieces.map(({ joinedFrom }) => joinedFrom);
  assert.deepEqual(
    joined('least').toSorted((a, b) => (a[1]?.[1] ?? 0) - (b[1]?.[1] ?? 0)),
    [
      [
        [3.5, 20.5],
        [3.5, 10.5],
      ],
      [
        [3.5, 20.5],
        [3.5, 16.5],
      ],
    ],
  );
  assert.ok(
    joined('crosswise')
      .flat()
      .every(([, along]) => along === 3.5),
  );
  // by hand: 4 · 36 + 12 = 156 in; (156 − 2 1/2) / (20 1/2 − 2 1/2) = 8.5
  const { finish, fabrics } = plan('least');
  assert.equal(finish.binding?.strips, 9);
  const binding = fabrics
    .flatMap(({ pieces }) => pieces)
    .find(({ for: uses }) => uses.some(({ role }) => role === 'binding'));
  assert.deepEqual([binding?.cut, binding?.count], [[2.5, 20.5], 9]);
});

test('a binding is cut along a sheet that is sold as strips, whichever way that is written', () => {
  const strips = (sheet: readonly string[]) =>
    planned({
      ...quilt({
        fabrics: [
          { id: 'light', colour: '#f0e8d8' },
          { id: 'dark', colour: '#4a3023', bought: { sheet } },
        ],
        blocks: [plainBlock('square', 12, 12, 'light')],
        top: setOf('square'),
      }),
      finish: { binding: { fabric: 'dark' } },
    }).fabrics.find(({ id }) => id === 'dark');
  // by hand: 48 + 12 = 60 in; (60 − 2 1/2) / (40 − 2 1/2) = 1.5, two strips, a sheet each
  assert.deepEqual(strips(['40', '2 1/2'])?.buy.amount, 2);
  assert.deepEqual(strips(['2 1/2', '40'])?.buy.amount, 2);
});
