import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { before, describe, it } from 'node:test';
import { type FabricPlan, planQuilt, type QuiltPlan, withBetterCloth } from '#craft';
import type { IntegerSolver } from '#craft/strips';
import { openSolver } from './index.ts';

const document = JSON.parse(readFileSync('examples/twelve-fields.quilt.json', 'utf8'));

const planned = (options: Parameters<typeof planQuilt>[1]): QuiltPlan => {
  const plan = planQuilt(document, options);
  assert.ok(plan.ok);
  return plan.value;
};

describe('a search that is watched', () => {
  let solver: IntegerSolver;
  let whole: QuiltPlan;
  const told: FabricPlan[] = [];
  before(async () => {
    solver = await openSolver();
    whole = planned({ solver, watch: (cloth) => void told.push(cloth) });
  });

  it('comes to the plan that nobody watched', () => {
    assert.deepEqual(structuredClone(planned({ solver })), structuredClone(whole));
  });

  it('tells every cloth, at last as the plan has it, and each layout on the way is whole and no shorter than its bound', () => {
    for (const fabric of whole.fabrics) {
      const own = told.filter(({ id }) => id === fabric.id);
      assert.deepEqual(own.at(-1), fabric);
      for (const cloth of own) {
        assert.ok(!('sheets' in cloth.laid));
        assert.ok(cloth.laid.bound <= cloth.laid.layout.length + 1e-9);
        const counts = cloth.pieces.map(() => 0);
        for (const { parts } of cloth.laid.layout.strips)
          for (const { pieces } of parts) for (const { of } of pieces) counts[of] = (counts[of] ?? 0) + 1;
        assert.deepEqual(
          counts,
          cloth.pieces.map(({ count }) => count),
        );
        // what is told can be sent from one worker to another
        assert.deepEqual(structuredClone(cloth), cloth);
      }
    }
    assert.ok(told.length > whole.fabrics.length, 'some cloth became better on the way');
  });

  it('decides cloths, their cost and notes alone, and these can be sent from one worker to another', () => {
    const { fabrics, cost, notes, ...rest } = whole;
    const { fabrics: _, cost: __, notes: ___, ...first } = planned({ budget: { steps: 0 } });
    assert.deepEqual(first, rest);
    assert.deepEqual(structuredClone({ fabrics, cost, notes }), { fabrics, cost, notes });
  });

  it('leads the first layouts step by step to those of the plan, and never to worse', () => {
    let now = planned({ budget: { steps: 0 } });
    for (const cloth of told) {
      const next = withBetterCloth(now, cloth);
      for (const [i, fabric] of next.fabrics.entries())
        assert.ok(fabric.buy.amount <= (now.fabrics[i]?.buy.amount ?? 0) + 1e-9, fabric.id);
      now = next;
    }
    assert.deepEqual(
      now.fabrics.map(({ id, buy, laid }) => [id, buy.amount, laid.layout.length, laid.bound]),
      whole.fabrics.map(({ id, buy, laid }) => [id, buy.amount, laid.layout.length, laid.bound]),
    );
    assert.deepEqual(now.cost, whole.cost);
    assert.equal(withBetterCloth(now, whole.fabrics[0] as FabricPlan), now);
  });
});
