import assert from 'node:assert/strict';
import { test } from 'node:test';
import { length } from '#craft/measure';
import type { Change, PurchaseChange } from '#craft/shopping';
import { changeText } from './change-text.ts';

const moved = (change: Change, after: number, unit: 'yd' | 'sheets' = 'yd'): PurchaseChange => ({
  ...change,
  fabric: 'oat',
  before: { amount: 1, unit: 'yd', proven: true },
  after: { amount: after, unit, proven: false },
  difference: unit === 'yd' ? after - 1 : null,
});

test('what would move a purchase says by how much, and which way', () => {
  // wording of our own
  for (const [change, words] of [
    [moved({ code: 'shopping/usable-width', width: length(42) }, 0.75), '42 in usable saves ¼ yd'],
    [moved({ code: 'shopping/no-turning' }, 1.125), 'with no piece turned it takes ⅛ yd more'],
    [moved({ code: 'shopping/any-way' }, 0.875), 'a print that may lie any way saves ⅛ yd'],
    [moved({ code: 'shopping/straight-ends' }, 0.875), 'cloth with straight ends saves ⅛ yd'],
    [moved({ code: 'shopping/shrinkage', share: 0.05 }, 1.125), 'with 5 % for shrinkage it takes ⅛ yd more'],
    [moved({ code: 'shopping/shrinkage', share: 0 }, 0.875), 'cloth that does not shrink saves ⅛ yd'],
    [moved({ code: 'shopping/in-fat-quarters' }, 1, 'sheets'), '1 fat quarter would do instead'],
    [moved({ code: 'shopping/in-fat-quarters' }, 3, 'sheets'), '3 fat quarters would do instead'],
    [moved({ code: 'shopping/by-length', width: length(40) }, 0.25), '¼ yd of cloth 40 in wide would do instead'],
  ] as const)
    assert.equal(changeText(change, 'in'), words);
});
