import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Job } from '#craft/strips';
import { heightChoices, roughLengthOn, singleParts } from './by-height.ts';

test('of many heights the one whose parts cost least on the next higher strips is given up, one after the other', () => {
  const side = fc.integer({ min: 1, max: 40 });
  fc.assert(
    fc.property(
      fc.array(fc.record({ width: side, height: side, count: fc.integer({ min: 1, max: 9 }) }), {
        minLength: 8,
        maxLength: 14,
      }),
      (kinds) => {
        const job: Job = { width: 40, kinds: kinds.map((kind) => ({ ...kind, mayTurn: false })) };
        const parts = singleParts(job, 'across');
        const rows = heightChoices(parts, job.width);
        const all = rows[0] ?? [];
        fc.pre(all.length > 7);
        assert.deepEqual(
          rows.map((row) => row.length),
          Array.from(all, (_, i) => all.length - i),
        );
        rows.slice(1).forEach((row, i) => {
          const before = rows[i] ?? [];
          // every other height given up in its place, laid out and measured
          const others = before.slice(1).map((out) =>
            roughLengthOn(
              parts,
              before.filter((height) => height !== out),
              job.width,
            ),
          );
          assert.ok(row.every((height) => before.includes(height)) && row[0] === all[0]);
          assert.equal(roughLengthOn(parts, row, job.width), Math.min(...others));
        });
      },
    ),
    { numRuns: 100, seed: 61 },
  );
});
