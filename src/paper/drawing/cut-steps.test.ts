import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { PatternCut } from '#craft/directions';
import { length } from '#craft/measure';
import { drawCutSteps, stepsPt } from './cut-steps.ts';

const pattern = (places: readonly number[]): PatternCut => ({
  number: 3,
  count: 1,
  strip: { at: length(0), height: length(5), parts: [] },
  cuts: places.map((at) => ({ cut: 'narrow', at: length(at), to: length(1) })),
  offcuts: [],
});

const textsOf = (places: readonly number[], scale: number): readonly (string | undefined)[] =>
  drawCutSteps({ pattern: pattern(places), scale, y: 20, hand: 'right' }).flatMap((svg) =>
    [...svg.matchAll(/>([^<]+)<\/text>/g)].map(([, text]) => text),
  );

test('cuts are numbered over their strip where they begin', () => {
  assert.deepEqual(textsOf([0, 10, 20], 5), ['3.1', '3.2', '3.3']);
});

test('cuts at one place, or too near for two labels, share one', () => {
  assert.deepEqual(textsOf([0, 10, 10], 5), ['3.1', '3.2–3.3']);
  // a point to the unit: two units are less than a label is wide
  assert.deepEqual(textsOf([0, 2, 4, 60], 1), ['3.1–3.3', '3.4']);
});

test('a strip with one cut needs no numbers and no room for them', () => {
  assert.deepEqual(textsOf([0], 5), []);
  assert.equal(stepsPt(pattern([0])), 0);
});
