import assert from 'node:assert/strict';
import { test } from 'node:test';
import { gridFor, unitsDown, unitsUp } from './grid.ts';

test('the coarsest common grid is found', () => {
  // derived by hand
  assert.deepEqual(gridFor([2.5, 3.875, 40]), { per: 8, exact: true });
  assert.deepEqual(gridFor([101.6, 2.5]), { per: 10, exact: true });
  assert.deepEqual(gridFor([1 / 3, 0.5]), { per: 6, exact: true });
  assert.deepEqual(gridFor([3 / 7]), { per: 7, exact: true });
});

test('off every grid sizes round up and the width rounds down, by less than a unit', () => {
  const grid = gridFor([Math.PI]);
  assert.equal(grid.exact, false);
  assert.ok(unitsUp(Math.PI, grid) / grid.per >= Math.PI);
  assert.ok(unitsDown(Math.PI, grid) / grid.per <= Math.PI);
  assert.equal(unitsUp(Math.PI, grid) - unitsDown(Math.PI, grid), 1);
});
