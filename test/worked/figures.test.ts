// A hundred worked figures of the trade, each with its source: what the program computes is computed through it.

import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { type Checks, workedFigures } from './figures/case.ts';
import { cloth } from './figures/cloth.ts';
import { cutSizes } from './figures/cut-sizes.ts';
import { finishing } from './figures/finishing.ts';
import { logCabins } from './figures/log-cabins.ts';
import { notComputed } from './figures/not-computed.ts';
import { setting } from './figures/setting.ts';
import { structures } from './figures/structures.ts';

const checks: Checks = { ...cutSizes, ...logCabins, ...structures, ...cloth, ...setting, ...finishing };

for (const [fn, check] of Object.entries(checks)) {
  describe(fn, () => {
    for (const figure of workedFigures.filter((one) => one.fn === fn)) {
      test(`${figure.id}: ${figure.source}`, () => check(figure));
    }
  });
}

test('at least 80 of the 100 figures are computed, and every other is named with its reason', () => {
  const computed = workedFigures.filter(({ fn }) => fn in checks);
  const listed = workedFigures.filter(({ fn }) => fn in notComputed);
  assert.ok(computed.length >= 80, `${computed.length}`);
  assert.equal(computed.length + listed.length, 100);
  assert.equal(new Set(workedFigures.map(({ id }) => id)).size, 100);
  for (const { id, fn } of workedFigures) assert.notEqual(fn in checks, fn in notComputed, id);
});

test('every check and every reason stands for a figure', () => {
  const named = new Set(workedFigures.map(({ fn }) => fn));
  for (const fn of [...Object.keys(checks), ...Object.keys(notComputed)]) assert.ok(named.has(fn), fn);
});
