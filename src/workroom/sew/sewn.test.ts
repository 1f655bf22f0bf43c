import assert from 'node:assert/strict';
import { test } from 'node:test';
import { counted, countedTogether, countOf, type Sewn, sewnIn, sumOf } from './sewn.ts';

const none: Sewn = { last: null, counts: {} };
const step = { key: 'cabin 1 A+B', total: 36 };

test('a count goes up to all there are and down to none, and is then gone', () => {
  assert.equal(countOf(counted(none, step, 12), step), 12);
  assert.equal(countOf(counted(none, step, 99), step), 36);
  assert.deepEqual(counted(counted(none, step, 1), step, 0), none);
  assert.equal(countOf(none, { key: 'constructor', total: 3 }), 0);
});

test('a count is never more than the quilt has by now', () => {
  assert.equal(countOf(counted(none, step, 36), { ...step, total: 20 }), 20);
  const other = { key: 'cabin 2 #1+C', total: 36 };
  assert.equal(sumOf(counted(counted(none, step, 36), other, 4), [{ ...step, total: 20 }, other]), 24);
});

test('what was kept comes back, and what is no count is nothing', () => {
  const sewn: Sewn = { last: ['cabin', 5], counts: { [step.key]: 12 } };
  assert.deepEqual(sewnIn(JSON.stringify(sewn)), sewn);
  for (const text of [null, 'no json', '7', '[]', '{"last":[3,"a"],"counts":{"a":-1,"b":1.5,"c":"2","d":null}}']) {
    assert.deepEqual(sewnIn(text), none, String(text));
  }
});

test('what is sewn together goes onto the first that are not all sewn, and comes off the last; what was counted apart stays', () => {
  const [a, b] = [
    { key: 'star 3 B+C', total: 12 },
    { key: 'comb 1 A+B', total: 4 },
  ];
  const apart = counted(none, b, 2);
  const together = countedTogether(apart, [a, b], 3);
  assert.deepEqual([countOf(together, a), countOf(together, b)], [1, 2]);
  const all = countedTogether(together, [a, b], 99);
  assert.deepEqual([countOf(all, a), countOf(all, b)], [12, 4]);
  const less = countedTogether(all, [a, b], 10);
  assert.deepEqual([countOf(less, a), countOf(less, b)], [10, 0]);
  assert.deepEqual(countedTogether(less, [a, b], 0), none);
});
