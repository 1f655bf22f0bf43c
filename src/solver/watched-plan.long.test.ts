import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { before, describe, it } from 'node:test';
import { type FabricPlan, planQuilt, planQuiltBySteps, type QuiltPlan, withBetterCloth } from '#craft';
import type { IntegerSolver } from '#craft/strips';
import { recalling } from '#ground/recall';
import { openSolver } from './index.ts';

const read = (name: string) => JSON.parse(readFileSync(`examples/${name}.quilt.json`, 'utf8'));
const document = read('twelve-fields');

const planned = (options: Parameters<typeof planQuilt>[1], of = document): QuiltPlan => {
  const plan = planQuilt(of, options);
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

  it('comes to the same plan step by step, whatever searches were given up on the way before', () => {
    const memory = recalling(1000);
    const narrower = {
      ...document,
      fabrics: document.fabrics.map((fabric: object) => ({ ...fabric, usableWidth: '38' })),
    };
    // given up between two steps of its third cloth or so: some steps are of layouts, some lie between
    const givenUp = planQuiltBySteps(narrower, { solver, memory });
    for (let step = 0; step < 100; step++) assert.ok(givenUp.next().done !== true);
    const steps = planQuiltBySteps(document, { solver, memory });
    let count = 0;
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done === true) {
        assert.ok(step.value.ok);
        assert.deepEqual(structuredClone(step.value.value), structuredClone(whole));
        break;
      }
      count += 1;
    }
    // no cloth is searched through in one go
    assert.ok(count > 4 * whole.fabrics.length, `${count} steps`);
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

  it('takes nothing that is worse than what there is, whole or on the way', () => {
    const first = planned({ budget: { steps: 0 } });
    const worse = first.fabrics.filter(
      ({ laid }, i) => laid.layout.length > (whole.fabrics[i]?.laid.layout.length ?? 0),
    );
    assert.ok(worse.length > 0);
    for (const cloth of worse) assert.equal(withBetterCloth(whole, cloth), whole, cloth.id);
  });

  it('tells whole layouts of other quilts too', () => {
    for (const name of ['harvest-home-throw', 'skerry-walk', 'orchard-gate']) {
      const wrong: string[] = [];
      planned(
        {
          solver,
          watch: ({ id, pieces, laid }) => {
            const counts = pieces.map(() => 0);
            for (const { parts } of laid.layout.strips)
              for (const part of parts) for (const { of } of part.pieces) counts[of] = (counts[of] ?? 0) + 1;
            if (pieces.some(({ count }, i) => count !== counts[i])) wrong.push(id);
          },
        },
        read(name),
      );
      assert.deepEqual(wrong, [], name);
    }
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
