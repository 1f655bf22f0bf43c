import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltPlan } from '#craft';
import { clothSignsFor } from '#paper/cloth';
import { planOf, specimenDocument } from '#paper/specimen';
import { type TopStepWords, topStepWords } from './top-words.ts';

const wordsOf = (plan: QuiltPlan): readonly TopStepWords[] =>
  plan.top.steps.map((step) => topStepWords({ plan, signs: clothSignsFor(plan) }, step));
const topOf = (top: object): readonly TopStepWords[] => wordsOf(planOf({ ...specimenDocument, top }));
const cabin = { block: 'cabin' };

test('a row says which block is next, how it is turned, and from which rows it is the step', () => {
  const row = [cabin, { block: 'fly', turn: 90 }];
  const [first] = topOf({ set: 'straight', rows: [row, [{ block: 'fly' }, cabin], row] });
  assert.equal(first?.place, 'Rows 1 and 3');
  assert.match(first?.heading ?? '', / turned 90° goes to the right of /);
  assert.match(first?.machine ?? '', /^Leave .* as it lies; lay .* Chain both\.$/);
  assert.equal(first?.make, 'make 2');
});

test('rows are joined by their numbers, pressed down or up', () => {
  const words = topOf({ set: 'straight', rows: [[cabin], [cabin], [cabin]] });
  assert.deepEqual(
    words.map(({ heading }) => heading),
    ['Add row 2', 'Add row 3'],
  );
  assert.match(words[0]?.press ?? '', /^Press the seam (up|down), toward the /);
  assert.match(words[1]?.machine ?? '', /^Leave the top so far as it was sewn, row 2 at the right; lay row 3 on it/);
});

test('a square block has a top: to sew below it, it is turned a quarter', () => {
  const sections = (first: object) => ({ set: 'sections', sections: { down: [first, { strip: 'oat', width: '2' }] } });
  assert.match(topOf(sections(cabin))[0]?.machine ?? '', /^Turn .* a quarter turn counterclockwise; lay /);
});

test('borders are sewn on by their numbers, with what they are cut from; a row of squares and strip is joined first', () => {
  const border = { width: '2', fabric: 'oat', corners: 'squares', cornerFabric: 'bark' };
  const words = topOf({ set: 'straight', rows: [[cabin, cabin]], borders: [border] });
  const sewnOn = words.filter(({ heading }) => heading.startsWith('Sew strip'));
  assert.deepEqual(
    sewnOn.map(({ heading }) => heading),
    ['left', 'right', 'top', 'bottom'].map((side, i) => `Sew strip ${i + 1} to the ${side} of the quilt`),
  );
  assert.match(sewnOn[0]?.notes[0] ?? '', /^Strip 1: Left, cloth .\. Piece .\. Planned cut: /);
  assert.ok(words.some(({ heading }) => heading.includes('corner square')));
});

test('a mitre is told as the page of borders tells it, corner by corner from the upper left', () => {
  const words = topOf({
    set: 'straight',
    rows: [[cabin]],
    borders: [{ width: '2', fabric: 'oat', corners: 'mitred' }],
  }).slice(-4);
  assert.deepEqual(
    words.map(({ heading }) => heading),
    ['upper left', 'upper right', 'lower right', 'lower left'].map((corner) => `Close the corner at the ${corner}`),
  );
  assert.ok(
    words.every(({ machine, press }) => machine.startsWith('Fold the quilt') && press === 'Press the seam open.'),
  );
});
