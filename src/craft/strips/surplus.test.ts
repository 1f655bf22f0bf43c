import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Job } from './job.ts';
import { countsOf, lengthOf, patternOf, type StripUse, stackOf } from './pattern.ts';
import { withoutSurplus } from './surplus.ts';

const job: Job = {
  width: 10,
  kinds: [
    { width: 5, height: 4, count: 3, mayTurn: false },
    { width: 5, height: 3, count: 3, mayTurn: false },
  ],
};

const strip = (of: { readonly tall: number; readonly low: number; readonly times: number }): StripUse => ({
  pattern: patternOf([
    { stack: stackOf(job, [{ kind: 0, turned: false, times: 1 }]), times: of.tall },
    { stack: stackOf(job, [{ kind: 1, turned: false, times: 1 }]), times: of.low },
  ]),
  times: of.times,
});

const cutBy = (strips: readonly StripUse[]): readonly number[] =>
  job.kinds.map((_, i) => strips.reduce((n, s) => n + s.times * (countsOf(s.pattern, 2)[i] ?? 0), 0));

test('what is cut beyond the demand is taken out, and strips left empty vanish', () => {
  // derived by hand: 4 tall and 6 low pieces for 3 and 3: a whole low strip goes, and one piece of each kind
  const strips = withoutSurplus(job, [strip({ tall: 2, low: 0, times: 2 }), strip({ tall: 0, low: 2, times: 3 })]);
  assert.deepEqual(cutBy(strips), [3, 3]);
  assert.equal(lengthOf(strips), 4 + 4 + 3 + 3);
});
