import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { example } from '#documents';
import { documentOf, planOf } from '#paper/specimen';
import { seamTestPage } from './seam-test.ts';

test('of a top the seams in its blocks count with those between them', () => {
  const nine = { id: 'nine', from: 'nine-patch', size: '6', colourings: { default: { light: 'oat', dark: 'bark' } } };
  const row = [{ block: 'nine' }, { block: 'nine' }];
  const plan = planOf(documentOf({ blocks: [nine], top: { rows: [row, row] } }));
  const { blocks } = seamTestPage({ plan, album: new Map() });
  // by hand: two seams each way in a nine-patch, and one between two of them; both allowances of a seam 1/32 in too wide take 1/16 in
  assert.deepEqual(
    blocks.map(({ title, lines }) => [title, lines[0]?.replaceAll('\u00a0', ' ')]),
    [
      [
        'Nine Patch',
        'It is crossed by 2 seams each way: each allowance ¹⁄₃₂ in too wide makes the block ⅛ in too small.',
      ],
      [
        'The whole top, its blocks counted in',
        'It is crossed by 5 seams each way: each allowance ¹⁄₃₂ in too wide makes the top ⁵⁄₁₆ in too small.',
      ],
    ],
  );
});

test('of a top on point no seams are counted: corner to corner its rows go over none', () => {
  const outcome = planQuilt(example('hedge-sparrow'), { budget: { steps: 0 } });
  assert.ok(outcome.ok);
  const top = seamTestPage({ plan: outcome.value, album: new Map() }).blocks.at(-1);
  assert.match(
    top?.lines.join(' ').replaceAll('\u00a0', ' ') ?? '',
    /^Each allowance ¹⁄₃₂ in too wide makes the top about [^.]* too narrow and about [^.]* too low\.$/,
  );
});
