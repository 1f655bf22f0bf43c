import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type IntegerProgram, isSolution } from './solver.ts';

test('a solution must be whole, within its limits and meet every row', () => {
  const program: IntegerProgram = {
    cost: [1, 1],
    upper: [2, 2],
    rows: [
      {
        least: 3,
        terms: [
          [0, 1],
          [1, 1],
        ],
      },
    ],
  };
  assert.equal(isSolution(program, [2, 1]), true);
  assert.equal(isSolution(program, [1, 1]), false);
  assert.equal(isSolution(program, [3, 0]), false);
  assert.equal(isSolution(program, [1.5, 1.5]), false);
  assert.equal(isSolution(program, [2]), false);
});
