import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor } from '#paper/cloth';
import { documentOf, planOf } from '#paper/specimen';
import { chainsPage } from './chains.ts';

const star = {
  id: 'star',
  from: 'lemoyne-star',
  size: '12',
  colourings: { default: { light: 'oat', medium: 'brick', dark: 'bark' } },
};

test('what is set in is sewn one by one and counts as no chain', () => {
  const plan = planOf(documentOf({ blocks: [star], top: { rows: [[{ block: 'star' }, { block: 'star' }]] } }));
  const page = chainsPage({ plan, signs: clothSignsFor(plan), album: new Map() });
  const lines = (page?.rounds ?? []).flatMap(({ sum, batches }) => batches.map(({ make }) => ({ sum, make })));
  assert.equal(lines.length, plan.blocks[0]?.steps.length);
  plan.blocks[0]?.steps.forEach(({ kind, total }, i) => {
    const { sum, make } = lines[i] ?? {};
    // every round of this star has one unit
    assert.deepEqual(
      [sum, make],
      kind === 'straight'
        ? [`${total} seams, one chain`, `${total}`]
        : [`${total} seams, one by one`, `${total}, one by one`],
    );
  });
  assert.ok(plan.blocks[0]?.steps.some(({ kind }) => kind === 'set-in'));
});

test('of units made together a chain says how, trims where the step does, and tells no size before they are units', () => {
  const block = (id: string, unit: string, tones: readonly string[]) => ({
    id,
    size: '6',
    recipe: {
      kind: 'units',
      grid: [2, 2],
      units: [
        [0, 0],
        [1, 0],
        [0, 1],
        [1, 1],
      ].map((at) => ({ at, unit, tones })),
    },
  });
  const plan = planOf(
    documentOf({
      blocks: [
        block('mill', 'half-square', ['oat', 'bark']),
        block('glass', 'quarter-square', ['oat', 'brick', 'oat', 'brick']),
      ],
      top: { rows: [[{ block: 'mill' }, { block: 'glass' }]] },
      methods: [
        { unit: 'half-square', way: 'two-at-a-time', trimmed: true },
        { unit: 'quarter-square', way: 'from-half-squares' },
      ],
    }),
  );
  const page = chainsPage({ plan, signs: clothSignsFor(plan), album: new Map() });
  const lines = (page?.rounds ?? []).flatMap(({ batches }) =>
    batches.map(({ make, members, measures }) => [members[0], make, measures.replaceAll('\u00a0', ' ')]),
  );
  // by hand: a half-square of 3 in and its allowances; of the quarter-square half is sewn, and is no unit yet
  assert.deepEqual(lines.slice(0, 2), [
    ['mill, unit 1: 4', '4, two at a time', 'Trim to 3½ × 3½ in.'],
    ['glass, unit 1: 8', '8, from half-squares', 'Do not trim yet.'],
  ]);
  assert.deepEqual(lines.find(([first]) => first === 'glass, unit 2: 4')?.slice(1), [
    '4, from half-squares',
    'Measures 3½ × 3½ in.',
  ]);
});
