// The checker that bench and laws trust: good layouts pass, and every kind of fault is seen.

import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import type { Cutting, Job, StripPattern } from '#craft/strips';
import { patternOf, stackOf } from '#craft/strips';
import { layoutFaults, sheetFaults } from '../../bench/layouts/checked.ts';

const job: Job = {
  width: 10,
  kinds: [
    { width: 4, height: 6, count: 1, mayTurn: false },
    { width: 3, height: 6, count: 2, mayTurn: true },
  ],
};
const deep: Cutting = { stages: 3, stripHeights: 'any' };

// derived by hand: 4 × 6 upright beside two of 3 × 6 lying, one below the other
const strip = patternOf([
  { stack: stackOf(job, [{ kind: 0, turned: false, times: 1 }]), times: 1 },
  { stack: stackOf(job, [{ kind: 1, turned: true, times: 2 }]), times: 1 },
]);

const faultsOf = (of: {
  readonly pattern?: StripPattern;
  readonly length?: number;
  readonly cutting?: Cutting;
  readonly kinds?: Job['kinds'];
}): readonly string[] =>
  layoutFaults({
    job: { ...job, kinds: of.kinds ?? job.kinds },
    cutting: of.cutting ?? deep,
    strips: [{ pattern: of.pattern ?? strip, times: 1 }],
    length: of.length ?? 6,
  });

describe('the layout checker', () => {
  it('passes a good layout', () => assert.deepEqual(faultsOf({}), []));

  it('sees pieces beyond the cloth', () => {
    assert.match(faultsOf({ length: 5 }).join(), /reaches over 10 by 5/);
    const wide = patternOf([...strip.parts, { stack: stackOf(job, [{ kind: 1, turned: false, times: 1 }]), times: 1 }]);
    assert.match(faultsOf({ pattern: wide }).join(), /reaches over 10 by 6/);
  });

  it('sees pieces that are missing, that may not turn, and pieces of no kind', () => {
    const [first] = job.kinds as [Job['kinds'][0]];
    const second = { width: 3, height: 6, count: 3, mayTurn: true };
    assert.deepEqual(faultsOf({ kinds: [first, second] }), ['kind 1: 2 of 3']);
    assert.deepEqual(faultsOf({ kinds: [first, { ...second, count: 2, mayTurn: false }] }), [
      'kind 1 is turned',
      'kind 1 is turned',
    ]);
  });

  it('sees pieces that overlap', () => {
    const narrow = { ...strip, parts: strip.parts.map((part) => ({ ...part, stack: { ...part.stack, width: 2 } })) };
    assert.match(faultsOf({ pattern: narrow }).join(), /kinds [01] and [01] meet/);
  });

  it('counts the stages that a knife needs', () => {
    assert.match(faultsOf({ cutting: { stages: 2 } }).join(), /3 stages of 2/);
  });

  it('holds strips to the height of a piece where that is asked', () => {
    const kinds = [{ width: 4, height: 5, count: 1, mayTurn: false }, job.kinds[1] as Job['kinds'][0]];
    assert.deepEqual(faultsOf({ kinds, cutting: { stages: 3, stripHeights: 'piece' } }), []);
    const high = { ...strip, height: 7 };
    const found = faultsOf({ pattern: high, length: 7, cutting: { stages: 3, stripHeights: 'piece' } });
    assert.deepEqual(found, ['a strip of 7, as high as no piece']);
  });

  it('counts sheets against the stock', () => {
    const sheets = [{ width: 10, height: 6, cost: 1, stock: 1 }];
    const one = { sheet: 0, times: 1, strips: [{ pattern: strip, times: 1 }] };
    assert.deepEqual(sheetFaults({ kinds: job.kinds, cutting: deep, sheets, uses: [one] }), []);
    assert.deepEqual(sheetFaults({ kinds: job.kinds, cutting: deep, sheets, uses: [{ ...one, times: 2 }] }), [
      'sheet 0: 2 of 1',
    ]);
  });
});
