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

/** x + 2y is at least 5. */
const smallCover = (cost: readonly [number, number]): IntegerProgram => ({
  cost,
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
});

test('a small cover is solved to proof', () => {
  // derived by hand: 3x + 5y with x + 2y >= 5: x = 1, y = 2 costs 13
  assert.deepEqual(solver.minimise(smallCover([3, 5]), limits), {
    status: 'optimal',
    x: [1, 2],
    objective: 13,
    bound: 13,
    work: 20,
  });
});

test('a program without a solution has none', () => {
  const program: IntegerProgram = { cost: [1], upper: [2], rows: [{ least: 5, terms: [[0, 1]] }] };
  assert.deepEqual(solver.minimise(program, limits), { status: 'none', isImpossible: true, work: 0 });
  assert.deepEqual(solver.minimise({ cost: [], upper: [], rows: [] }, limits), { status: 'none' });
});

/** Pieces of 12 widths on 60 chance strips of nearly one cost: a program that takes the solver thousands of steps. */
const longProgram = (): IntegerProgram => {
  const chance = chanceFrom(3);
  const widths = Array.from({ length: 12 }, () => 20 + Math.floor(chance() * 120));
  const strips = Array.from({ length: 60 }, () => {
    const held = new Map<number, number>();
    for (let room = 336, tries = 0; tries < 40; tries++) {
      const kind = Math.floor(chance() * widths.length);
      const width = widths[kind] ?? 0;
      if (width > room) continue;
      room -= width;
      held.set(kind, (held.get(kind) ?? 0) + 1);
    }
    return held;
  });
  return {
    cost: strips.map(() => 97 + Math.floor(chance() * 12)),
    upper: strips.map(() => 9),
    rows: widths.map((_, kind) => ({
      least: 3 + Math.floor(chance() * 12),
      terms: strips.flatMap((held, at) => (held.has(kind) ? [[at, held.get(kind) ?? 0] as const] : [])),
    })),
  };
};

test('a long program stops soon after the work it may take, and always with the same answer', () => {
  const program = longProgram();
  const long = solver.minimise(program, { nodes: 20, work: 6000 });
  const short = solver.minimise(program, { nodes: 20, work: 400 });
  assert.ok((long.work ?? 0) > 2000, `took ${long.work}`);
  assert.ok((short.work ?? 0) >= 400 && (short.work ?? 0) < 1200, `took ${short.work}`);
  assert.notEqual(short.status, 'optimal');
  assert.deepEqual(solver.minimise(program, { nodes: 20, work: 400 }), short);
});

test('large costs are no trouble', () => {
  const answer = solver.minimise(smallCover([30_000_001, 50_000_000]), limits);
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
