import assert from 'node:assert/strict';
import { test } from 'node:test';
import { checkLayout, type Demand, planLayout } from '#craft/cutting';
import { length } from '#craft/measure';
import { costOf, type IntegerProgram, isSolution } from '#craft/strips';
import { chanceFrom } from '#ground/chance';
import { openSolver } from './index.ts';

const solver = await openSolver();
const limits = { nodes: 1000 };

/** The least cost over every whole solution, infinite without one. */
const leastCost = (program: IntegerProgram): number => {
  let least = Number.POSITIVE_INFINITY;
  const go = (x: readonly number[]): void => {
    if (x.length === program.cost.length) {
      if (isSolution(program, x)) least = Math.min(least, costOf(program, x));
      return;
    }
    for (let n = 0; n <= (program.upper[x.length] ?? 0); n++) go([...x, n]);
  };
  go([]);
  return least;
};

test('a small cover is solved to proof', () => {
  // derived by hand: 3x + 5y with x + 2y >= 5: x = 1, y = 2 costs 13
  const program: IntegerProgram = {
    cost: [3, 5],
    upper: [9, 9],
    rows: [
      {
        least: 5,
        terms: [
          [0, 1],
          [1, 2],
        ],
      },
    ],
  };
  assert.deepEqual(solver.minimise(program, limits), {
    status: 'optimal',
    x: [1, 2],
    objective: 13,
    bound: 13,
    pivots: 0,
  });
});

test('a program without a solution has none', () => {
  const program: IntegerProgram = { cost: [1], upper: [2], rows: [{ least: 5, terms: [[0, 1]] }] };
  assert.deepEqual(solver.minimise(program, limits), { status: 'none', isImpossible: true, pivots: 0 });
  assert.deepEqual(solver.minimise({ cost: [], upper: [], rows: [] }, limits), { status: 'none' });
});

test('large costs are no trouble', () => {
  const program: IntegerProgram = {
    cost: [30_000_001, 50_000_000],
    upper: [9, 9],
    rows: [
      {
        least: 5,
        terms: [
          [0, 1],
          [1, 2],
        ],
      },
    ],
  };
  const answer = solver.minimise(program, limits);
  assert.ok(answer.status === 'optimal');
  assert.equal(answer.objective, 130_000_001);
});

test('random programs are solved as trying every solution does', () => {
  const chance = chanceFrom(5);
  const upTo = (n: number): number => Math.floor(chance() * (n + 1));
  for (let n = 0; n < 60; n++) {
    const columns = 1 + upTo(3);
    const program: IntegerProgram = {
      cost: Array.from({ length: columns }, () => 1 + upTo(40)),
      upper: Array.from({ length: columns }, () => upTo(4)),
      rows: Array.from({ length: 1 + upTo(2) }, () => ({
        least: upTo(9),
        terms: Array.from({ length: columns }, (_, i) => [i, upTo(3)] as const).filter(([, f]) => f > 0),
      })),
    };
    const answer = solver.minimise(program, limits);
    const least = leastCost(program);
    if (answer.status === 'none') assert.equal(least, Number.POSITIVE_INFINITY);
    else {
      assert.equal(answer.objective, least);
      assert.ok(answer.bound <= least);
    }
  }
});

test('with the solver a layout is sound, never longer, and the same each time', async () => {
  const chance = chanceFrom(6);
  const demands: readonly Demand[] = Array.from({ length: 9 }, () => ({
    across: length(1 + Math.floor(chance() * 80) / 8),
    along: length(1 + Math.floor(chance() * 80) / 8),
    count: 1 + Math.floor(chance() * 12),
    mayTurn: chance() < 0.5,
  }));
  const task = { width: length(42), demands, budget: { steps: 12 } };
  const without = planLayout(task);
  const laid = planLayout({ ...task, solver });
  assert.deepEqual(checkLayout({ layout: laid.layout, width: task.width, demands }), []);
  assert.ok(laid.layout.length <= without.layout.length);
  assert.ok(laid.bound <= laid.layout.length);
  assert.deepEqual(planLayout({ ...task, solver: await openSolver() }), laid);
});
