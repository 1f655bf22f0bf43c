// Laws of the shop on random quilts: what is said to be proven is not beaten, what is said to change a purchase does, and the
// largest quilt can be made of the cloth that it was found for.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { planQuilt, type QuiltPlan } from '#craft';
import { toDocument } from '#craft/design';
import { length } from '#craft/measure';
import { type AtHand, clothFits, isEnough, purchaseChanges, type SizedQuilt, searchLargest } from '#craft/shopping';
import { drained } from '#ground/search';
import { near, planned } from '../documents/documents.ts';
import { randomQuilt } from './random-quilts.ts';

const search = { steps: 0, solver: null } as const;

const holds = (law: (plan: QuiltPlan, document: object) => void, of: { seed: number; runs: number }): void =>
  fc.assert(
    fc.property(randomQuilt(), (document) => law(planned({ ...document }, 0), document)),
    { seed: of.seed, numRuns: of.runs },
  );

test('a longer search does not beat a purchase that is proven least', () => {
  let proven = 0;
  holds(
    ({ fabrics }, document) => {
      const again = planned({ ...document }, 6);
      fabrics.forEach(({ id, buy }, i) => {
        if (!buy.proven) return;
        proven++;
        assert.deepEqual(again.fabrics[i]?.buy, buy, id);
      });
    },
    { seed: 61, runs: 15 },
  );
  assert.ok(proven > 15, `${proven}`);
});

test('allowances add up to what is bought', () => {
  holds(
    ({ fabrics, quilt }) => {
      for (const { allowances, buy } of fabrics) {
        if (allowances === null) continue;
        const { cut, squaring, shrinkage, rounding } = allowances;
        // 1 yd = 36 in exactly
        const bought = buy.unit === 'yd' ? buy.amount * 36 : buy.amount * 100;
        assert.equal(quilt.unit === 'in', buy.unit === 'yd');
        near(cut + squaring + shrinkage + rounding, bought, 1e-6);
      }
    },
    { seed: 62, runs: 20 },
  );
});

test('a wider cloth never costs more, nor does leave to turn', () => {
  holds(
    (plan) => {
      for (const { id } of plan.fabrics) {
        const own = plan.fabrics.find((cloth) => cloth.id === id)?.laid.layout.width as number;
        const changes = purchaseChanges({ plan, search }).filter(({ fabric }) => fabric === id);
        const widths = changes.flatMap((change) =>
          change.code === 'shopping/usable-width' ? [[change.width, change.after.amount] as const] : [],
        );
        const amounts = widths.toSorted((a, b) => a[0] - b[0]).map(([, amount]) => amount);
        assert.deepEqual(
          amounts,
          amounts.toSorted((a, b) => b - a),
        );
        for (const change of changes) {
          assert.notEqual(change.difference, 0);
          if (change.code === 'shopping/usable-width')
            assert.equal(Math.sign(change.difference as number), Math.sign(own - change.width));
          if (change.code === 'shopping/no-turning') assert.ok((change.difference as number) > 0);
        }
      }
    },
    { seed: 63, runs: 8 },
  );
});

const largest = (plan: QuiltPlan, cupboard: ReadonlyMap<string, AtHand>): SizedQuilt | null =>
  drained(searchLargest({ plan, cupboard, search })).best;

test('the largest quilt can be made of the cloth at hand, and is no smaller with half as much again', () => {
  const area = (made: SizedQuilt | null): number => (made === null ? 0 : made.size[0] * made.size[1]);
  fc.assert(
    fc.property(randomQuilt(), fc.integer({ min: 5, max: 25 }), (document, tenths) => {
      const plan = planned({ ...document }, 0);
      const [first] = plan.fabrics;
      if (first === undefined) return;
      const hand = (share: number): ReadonlyMap<string, AtHand> =>
        new Map([
          [first.id, { kind: 'length', length: length((first.laid.layout.length * share * tenths) / 10), others: [] }],
        ]);
      const best = largest(plan, hand(1));
      if (best !== null) {
        const again = planQuilt(toDocument(best.quilt), { budget: { steps: 0 } });
        assert.ok(again.ok && isEnough(clothFits(again.value, hand(1))));
        near(again.value.top.set.width, best.size[0], 1e-9);
      }
      assert.ok(area(largest(plan, hand(1.5))) >= area(best));
    }),
    { seed: 64, numRuns: 8 },
  );
});
