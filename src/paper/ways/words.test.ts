import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltPlan } from '#craft';
import type { FrontPoint } from '#craft/front';
import { length } from '#craft/measure';
import { differenceTexts, trueText } from './index.ts';

const point = (deviation: number): FrontPoint => ({
  choice: [],
  cloth: length(30),
  clothBound: length(30),
  minutes: 60,
  deviation: length(deviation),
  cost: null,
});

const plan = { quilt: { unit: 'in', currency: '' } } as QuiltPlan;

test('a choice is called less true, or truer, where its figure is another, and not else', () => {
  const said = (now: number, other: number) => differenceTexts({ plan, now: point(now), point: point(other) });
  // 0.0234 and 0.0236 are ± 0.023 and ± 0.024; 0.0236 and 0.0243 both ± 0.024
  assert.deepEqual(said(0.0234, 0.0236), ['less true']);
  assert.deepEqual(said(0.0236, 0.0234), ['truer']);
  assert.deepEqual(said(0.0236, 0.0243), []);
  assert.equal(trueText(0.0236, 'in'), '± 0.024 in');
});
