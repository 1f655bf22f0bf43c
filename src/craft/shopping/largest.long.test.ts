import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { QuiltPlan } from '#craft';
import { length } from '#craft/measure';
import { plainBlock, planned } from '#documents';
import { drained } from '#ground/search';
import type { AtHand } from './at-hand.ts';
import { type LargestFound, searchLargest } from './largest.ts';

const search = { steps: 4, solver: null } as const;

/** Squares that finish 3 in, cut 3 1/2: eleven to a strip of 40 in. Oat alone, or oat and bark in turns. */
const squares = (of: { readonly rows: number; readonly columns: number; readonly chequered?: boolean }): QuiltPlan => {
  const tones = of.chequered ? ['oat', 'bark'] : ['oat', 'oat'];
  return planned({
    format: 'seamstead-quilt',
    version: 1,
    unit: 'in',
    cutting: { squaring: 0 },
    fabrics: ['oat', 'bark'].map((id) => ({ id, colour: id === 'oat' ? '#eeeeee' : '#444444' })),
    blocks: tones.map((tone, i) => plainBlock(`patch-${i}`, '3', '3', tone)),
    top: {
      rows: Array.from({ length: of.rows }, (_, i) =>
        Array.from({ length: of.columns }, (_, j) => ({ block: `patch-${of.chequered ? (i + j) % 2 : 0}` })),
      ),
    },
  });
};

/** Of each cloth one piece, or several from the longest. */
const largest = (
  plan: QuiltPlan,
  inches: Readonly<Record<string, number | readonly [number, ...number[]]>>,
): LargestFound => {
  const cupboard = new Map(
    Object.entries(inches).map(([id, long]): [string, AtHand] => {
      const [longest, ...others] = typeof long === 'number' ? [long] : long;
      return [id, { kind: 'length', length: length(longest), others: others.map(length) }];
    }),
  );
  return drained(searchLargest({ plan, cupboard, search }));
};

test('a shorter piece of a cloth is cut first, and makes a larger quilt than the longest alone', () => {
  // derived by hand: 14 in give 44 squares, 9 in two strips of 11 more: 66, and 8 × 8 is the most within the shape
  const { best } = largest(squares({ rows: 5, columns: 5 }), { oat: [14, 9] });
  assert.deepEqual(best?.counts, { rows: 8, columns: 8 });
  assert.deepEqual([best?.cloths[0]?.has, best?.cloths[0]?.others, best?.cloths[0]?.needs], [14, 1, 14]);
  assert.deepEqual(best?.quilt.fabrics[0]?.ends.length, 1);
});

test('the largest quilt is the one of most squares within the shape', () => {
  // derived by hand: 14 in are 4 strips, 44 squares; 6 × 7 = 42 is the most that is no longer than half again its width
  // (4 × 11 is); 7 × 7 needs a fifth strip
  const { drawn, best, next } = largest(squares({ rows: 5, columns: 5 }), { oat: 14 });
  assert.deepEqual(drawn.cloths, [
    { fabric: 'oat', of: 'length', needs: 10.5, has: 14, others: 0, left: 3.5, lacks: 0, buy: null, proven: false },
  ]);
  assert.deepEqual(best?.counts, { rows: 6, columns: 7 });
  assert.deepEqual(best?.size, [21, 18]);
  assert.deepEqual(best?.cloths[0]?.left, 0);
  assert.deepEqual(next?.counts, { rows: 6, columns: 8 });
  assert.deepEqual([next?.cloths[0]?.lacks, next?.cloths[0]?.proven], [3.5, true]);
});

test('cloth that does for no size is told, with the smallest', () => {
  const { best, next } = largest(squares({ rows: 3, columns: 3 }), { oat: 3 });
  // by hand: one square is 3 1/2 in
  assert.deepEqual([best, next?.counts, next?.cloths[0]?.lacks], [null, { rows: 1, columns: 1 }, 0.5]);
});

test('a chequered quilt ends as it was drawn, and a cloth that is not at hand is bought', () => {
  // derived by hand: odd rows and columns only; oat at the corners. 7 in are 2 strips, 22 squares: 5 × 7 takes 18, 7 × 7 takes 25
  const { best } = largest(squares({ rows: 3, columns: 3, chequered: true }), { oat: 7 });
  assert.deepEqual(best?.counts, { rows: 5, columns: 7 });
  const bark = best?.cloths.find(({ fabric }) => fabric === 'bark');
  // by hand: 17 squares, 2 strips, 7 in, 1/4 yd
  assert.deepEqual([bark?.has, bark?.needs, bark?.buy?.amount], [null, 7, 0.25]);
});

test('more cloth never makes a smaller quilt', () => {
  const plan = squares({ rows: 4, columns: 5, chequered: true });
  const area = ({ best }: LargestFound): number => (best === null ? 0 : best.size[0] * best.size[1]);
  const inches = fc.integer({ min: 1, max: 24 });
  fc.assert(
    fc.property(
      inches,
      inches,
      fc.integer({ min: 0, max: 12 }),
      fc.integer({ min: 0, max: 12 }),
      (a, b, more, also) => {
        assert.ok(area(largest(plan, { oat: a + more, bark: b + also })) >= area(largest(plan, { oat: a, bark: b })));
      },
    ),
    { seed: 4, numRuns: 10 },
  );
});

test('what is at hand and what a size takes of it agree', () => {
  const plan = squares({ rows: 4, columns: 4 });
  fc.assert(
    fc.property(fc.integer({ min: 4, max: 60 }), (inches) => {
      const { best, next } = largest(plan, { oat: inches });
      for (const { needs, left } of best?.cloths ?? []) assert.ok(Math.abs(needs + left - inches) < 1e-9);
      for (const { needs, lacks } of next?.cloths ?? []) assert.ok(Math.abs(needs - lacks - inches) < 1e-9);
    }),
    { seed: 5, numRuns: 12 },
  );
});
