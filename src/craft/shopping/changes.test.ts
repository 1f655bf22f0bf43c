import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltPlan } from '#craft';
import { plainBlock, planned } from '#documents';
import { type PurchaseChange, purchaseChanges } from './changes.ts';
import { strongestOf } from './strongest.ts';

const search = { steps: 6, solver: null } as const;

/** Squares of one size, all of one cloth, five to a row. */
const squares = (of: {
  readonly side: string;
  readonly rows: number;
  readonly fabric?: Readonly<Record<string, unknown>>;
  readonly cutting?: Readonly<Record<string, unknown>>;
}): QuiltPlan =>
  planned({
    format: 'seamstead-quilt',
    version: 1,
    unit: 'in',
    cutting: { squaring: 0, ...of.cutting },
    fabrics: [{ id: 'oat', colour: '#eeeeee', ...of.fabric }],
    blocks: [plainBlock('patch', of.side, of.side, 'oat')],
    top: { rows: Array.from({ length: of.rows }, () => Array.from({ length: 5 }, () => ({ block: 'patch' }))) },
  });

const found = (changes: readonly PurchaseChange[], code: PurchaseChange['code']) =>
  changes
    .filter((change) => change.code === code)
    .map((change) => ['width' in change ? change.width : null, change.after.amount, change.difference]);

test('a cloth wide enough for one square more in a strip saves the strip', () => {
  // derived by hand: squares cut 10 1/2, twenty of them. On 40 or 41 in three to a strip, 7 strips, 73 1/2 in, 2 1/8 yd (76 1/2 in);
  // on 42 in four, 5 strips, 52 1/2 in, 1 1/2 yd (54 in). 39 in: three as well
  const changes = purchaseChanges({ plan: squares({ side: '10', rows: 4 }), search });
  assert.deepEqual(found(changes, 'shopping/usable-width'), [[42, 1.5, -0.625]]);
  assert.equal(changes.find(({ code }) => code === 'shopping/usable-width')?.after.proven, true);
  assert.deepEqual(changes[0]?.code, 'shopping/usable-width');
});

test('a cloth just too narrow costs a strip more', () => {
  // derived by hand: squares cut 4 in, ten to a strip of 40 in, nine on 39: 50 squares need 5 strips, 20 in, 5/8 yd, or 6
  // strips, 24 in, 3/4 yd
  const changes = purchaseChanges({ plan: squares({ side: '3 1/2', rows: 10 }), search });
  assert.deepEqual(found(changes, 'shopping/usable-width'), [[39, 0.75, 0.125]]);
});

test('shrinkage and straight ends move a purchase only over a step', () => {
  // derived by hand: 5 strips of 3 1/2 in, 17 1/2 in; with 1 in at each end 19 1/2, 5/8 yd (22 1/2). 5 % more is 20.475: the
  // same. Without the ends 17 1/2: 1/2 yd
  const plan = squares({ side: '3', rows: 11, cutting: { squaring: 1 } });
  const changes = purchaseChanges({ plan, search });
  assert.deepEqual(found(changes, 'shopping/shrinkage'), []);
  assert.deepEqual(found(changes, 'shopping/straight-ends'), [[null, 0.5, -0.125]]);
  // with 20 % for shrinkage: 19 1/2 · 1.2 = 23.4, 3/4 yd; without it 5/8
  const shrinking = squares({ side: '3', rows: 11, cutting: { squaring: 1, shrinkage: 0.2 } });
  assert.deepEqual(found(purchaseChanges({ plan: shrinking, search }), 'shopping/shrinkage'), [[null, 0.625, -0.125]]);
});

test('sheets stand in for a length, and a length for sheets', () => {
  // derived by hand: a fat quarter of 17 1/2 × 20 1/2 in gives 5 × 5 squares of 3 1/2: 50 squares need two
  const plan = squares({ side: '3', rows: 10 });
  assert.deepEqual(found(purchaseChanges({ plan, search }), 'shopping/in-fat-quarters'), [[null, 2, null]]);
  // of 40 in eleven to a strip, 5 strips, 17 1/2 in, 1/2 yd
  const sheets = squares({ side: '3', rows: 10, fabric: { bought: 'fat-quarter' } });
  assert.deepEqual(found(purchaseChanges({ plan: sheets, search }), 'shopping/by-length'), [[40, 0.5, null]]);
});

test('of widths that come to the same, the one nearest to the cloth’s own is told', () => {
  const change = (width: number, difference: number): PurchaseChange =>
    ({
      code: 'shopping/usable-width',
      width,
      fabric: 'oat',
      difference,
      before: { amount: 1, unit: 'yd', proven: true },
      after: { amount: 1 + difference, unit: 'yd', proven: true },
    }) as PurchaseChange;
  const told = strongestOf([change(39, 0.25), change(40, 0.25), change(42, -0.125), change(43, -0.125)], 5);
  assert.deepEqual(
    told.map((one) => 'width' in one && one.width),
    [40, 42],
  );
});
