// Ends of a cloth at hand beside what is bought by the length: counted by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { FabricPlan } from '#craft';
import { noteText } from '#paper/words';
import { only, plainBlock, planned, quilt, setOf, type Written } from '../documents/documents.ts';

/** So many squares cut 5 in, of cloth 40 in wide with these ends at hand. */
const squares = (count: number, cloth: Written): Written =>
  quilt({
    fabrics: [{ id: 'dark', colour: '#4a3023', usableWidth: 40, ...cloth }],
    blocks: [plainBlock('square', 4.5, 4.5)],
    top: setOf('square', { across: count }),
  });

const end = (across: number, along: number, more: Written = {}): Written => ({ size: [across, along], ...more });

const placedOn = (layouts: readonly FabricPlan['laid']['layout'][]): number =>
  layouts.reduce(
    (all, { strips }) =>
      all + strips.reduce((sum, { parts }) => sum + parts.reduce((n, { pieces }) => n + pieces.length, 0), 0),
    0,
  );

test('an end at hand that takes a whole strip saves the steps of the shop that it held', () => {
  // by hand: 20 squares are three strips of eight, 15 in and 2 in of squaring: 4 steps of 4 1/2 in, 1/2 yd; an end of
  // 10 × 10 takes the third strip's four, and 10 + 2 in are 3 steps, 3/8 yd
  const plan = planned(squares(20, { ends: [end(10, 10, { name: 'scrap' })], price: 8 }));
  const { laid, ends, buy, cost } = only(plan.fabrics);
  assert.deepEqual([laid.layout.length, buy.amount, cost], [10, 0.375, 3]);
  assert.deepEqual(ends?.saves, { length: 5, amount: 0.125, cost: 1 });
  assert.deepEqual(
    ends?.used.map(({ name, kind }) => [name, kind]),
    [['scrap', 0]],
  );
  const note = plan.notes.find(({ code }) => code === 'cutting/ends-save');
  assert.ok(note);
  assert.equal(noteText(note, 'in'), 'One end of “dark” at hand is cut first, and saves ⅛ yd of what is bought.');
});

test('an end that would save no step of the shop stays whole, and the plan says so', () => {
  // by hand: 24 squares fill three strips; an end with room for one square leaves 23, still three strips
  const plan = planned(squares(24, { ends: [end(5, 6)] }));
  assert.deepEqual(only(plan.fabrics).ends, {
    used: [],
    directions: null,
    saves: { length: 0, amount: 0, cost: null },
  });
  const note = plan.notes.find(({ code }) => code === 'cutting/ends-save');
  assert.ok(note);
  assert.match(noteText(note, 'in'), /would not save a step of what the shop cuts, so they stay whole\.$/);
});

test('nothing is bought where the ends hold everything', () => {
  // by hand: two ends of 10 × 10 hold four squares each
  const { laid, buy, ends } = only(planned(squares(8, { ends: [end(10, 10, { count: 2 })] })).fabrics);
  assert.deepEqual([laid.layout.length, buy.amount, ends?.used.length], [0, 0, 2]);
});

test('with ends nothing is cut twice or lost, no more is bought than without, and no bound is passed', () => {
  const ends = fc.array(
    fc.tuple(fc.integer({ min: 6, max: 30 }), fc.integer({ min: 6, max: 30 }), fc.integer({ min: 1, max: 3 })),
    {
      minLength: 1,
      maxLength: 3,
    },
  );
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 120 }), ends, (count, list) => {
      const at = list.map(([across, along, n]) => end(across, along, { count: n }));
      const plain = only(planned(squares(count, {})).fabrics);
      const cloth = only(planned(squares(count, { ends: at })).fabrics);
      const used = cloth.ends?.used ?? [];
      assert.equal(placedOn([cloth.laid.layout, ...used.map(({ layout }) => layout)]), count);
      assert.ok(cloth.buy.amount <= plain.buy.amount);
      assert.ok(cloth.laid.bound <= cloth.laid.layout.length + 1e-9);
      list.forEach(([, , n], kind) => {
        assert.ok(used.filter((one) => one.kind === kind).length <= n);
      });
    }),
    { seed: 77, numRuns: 60 },
  );
});
