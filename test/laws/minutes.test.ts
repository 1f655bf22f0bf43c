// Laws of minutes on random quilts: what parts take adds up to what the whole takes, and every minute comes from the one table.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { blockMinutes, blockStepMinutes, type QuiltPlan, topMinutes, topStepMinutes } from '#craft';
import { usualMinutes } from '#craft/minutes';
import { planned } from '../documents/documents.ts';
import { type RandomQuilt, randomQuilt } from './random-quilts.ts';

const holds = (law: (document: RandomQuilt) => void, seed: number, numRuns: number): void =>
  fc.assert(fc.property(randomQuilt(), law), { seed, numRuns });

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** Whole minutes are rounded by themselves: each may be half of one off. */
const near = (found: number, expected: number, roundings: number): void =>
  assert.ok(Math.abs(found - expected) <= roundings / 2 + 1e-6, `found ${found}, expected ${expected}`);

const nothing = Object.fromEntries(Object.keys(usualMinutes).map((key) => [key, 0]));

const timeOf = (document: RandomQuilt, minutes: object): QuiltPlan['time'] => planned({ ...document, minutes }).time;

test('a quilt takes what its steps, its blocks and its top take, its cutting and its finishing', () => {
  holds(
    (document) => {
      const plan = planned({ ...document });
      const blocks = plan.blocks.map((block) => blockMinutes(plan, block));
      plan.blocks.forEach((block, i) => {
        near(sum(block.steps.map((step) => blockStepMinutes(plan, block, step))), blocks[i] as number, 0);
      });
      near(sum(plan.top.steps.map((step) => topStepMinutes(plan, step))), topMinutes(plan), 0);
      near(plan.time.sewing, sum(blocks) + topMinutes(plan), 1);
      near(plan.time.minutes, plan.time.cutting + plan.time.sewing + plan.time.finishing, 4);
      assert.equal(plan.time.finishing > 0, 'finish' in document);
    },
    1,
    60,
  );
});

test('alone in the table, laying counts the seams and a chain its steps: one beginning for all that are alike', () => {
  holds(
    (document) => {
      const plan = planned({ ...document });
      const steps = plan.blocks.flatMap((block) => block.steps).length + plan.top.steps.length;
      assert.equal(timeOf(document, { ...nothing, lay: 1 }).sewing, plan.time.seams);
      assert.equal(timeOf(document, { ...nothing, chain: 1 }).sewing, steps);
      assert.deepEqual(timeOf(document, nothing), {
        seams: plan.time.seams,
        minutes: 0,
        cutting: 0,
        sewing: 0,
        finishing: 0,
      });
    },
    2,
    40,
  );
});

test('a table that is twice as slow makes all twice as long', () => {
  holds(
    (document) => {
      const slow = Object.fromEntries(Object.entries(usualMinutes).map(([key, minutes]) => [key, 2 * minutes]));
      const [once, twice] = [planned({ ...document }).time, timeOf(document, slow)];
      for (const part of ['minutes', 'cutting', 'sewing', 'finishing'] as const) near(twice[part], 2 * once[part], 3);
    },
    3,
    40,
  );
});
