// Blocks of every shape, however they are changed, are planned or refused in words; and what is planned adds up.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { planQuilt, type QuiltPlan } from '#craft';
import { signedArea } from '#ground/plane';
import { noteText, problemText } from '#paper/words';
import { cloths, quilt, type Written } from '../documents/documents.ts';

const colours = { light: 'light', dark: 'dark', medium: 'medium', accent: 'medium' };

const blocks: readonly Written[] = [
  { id: 'panel', made: 'elsewhere', size: 8 },
  {
    id: 'star',
    from: 'sawtooth-star',
    size: '6',
    frame: [{ width: '1', fabric: 'medium' }],
    colourings: { default: colours },
  },
  { id: 'four', from: 'four-patch', size: 4, colourings: { default: colours } },
  {
    id: 'nest',
    recipe: {
      kind: 'log-cabin',
      centre: { block: 'four' },
      rounds: [
        { width: 1, tones: ['light', 'light', 'dark', 'dark'] },
        { width: 1, tones: ['light', 'light', 'dark', 'dark'] },
      ],
    },
  },
  {
    id: 'drawn',
    size: 8,
    drawing: {
      grid: [4, 4],
      seams: [
        [
          [0, 4],
          [4, 0],
        ],
        [
          [0, 0],
          [4, 4],
        ],
        [
          [0, 2],
          [2, 0],
        ],
      ],
      tonesAt: [
        { at: [0.5, 0.6], tone: 'light' },
        { at: [1, 0.5], tone: 'medium' },
        { at: [0.4, 2], tone: 'dark' },
        { at: [2.4, 0.4], tone: 'light' },
        { at: [3.5, 2], tone: 'dark' },
        { at: [2, 3.5], tone: 'light' },
      ],
    },
  },
  {
    id: 'geese',
    size: 8,
    recipe: {
      kind: 'units',
      grid: [4, 4],
      units: [
        { at: [0, 0], unit: 'flying-geese', tones: ['dark', 'light'] },
        { at: [2, 0], unit: 'flying-geese', turn: 180, tones: ['dark', 'light'] },
        { at: [0, 1], span: [1, 2], unit: 'flying-geese', turn: 90, tones: ['dark', 'light'] },
        { at: [1, 1], span: [2, 2], unit: 'square-in-square', tones: ['light', 'dark'] },
        { at: [3, 1], span: [1, 2], unit: 'rails', turn: 90, tones: ['dark', 'light'] },
        { at: [0, 3], unit: 'half-square', tones: ['dark', 'light'] },
        { at: [1, 3], unit: 'quarter-square', tones: ['dark', 'light', 'dark', 'light'] },
        { at: [2, 3], span: [2, 1], unit: 'four-patch', tones: ['dark', 'light'] },
      ],
    },
  },
];

const whole = quilt({
  fabrics: cloths(40),
  blocks,
  top: {
    rows: [
      ['panel', 'star', 'nest'],
      ['drawn', 'geese', 'panel'],
    ].map((row) => row.map((block) => ({ block }))),
  },
});

/** Patches cover each block once, and over a block of straight seams every patch but one is sewn on. */
const addsUp = ({ blocks: entries }: QuiltPlan): void => {
  for (const { id, finished, patches, steps, joining } of entries) {
    if (patches.length === 0) continue;
    const area = patches.reduce((all, { points }) => all + signedArea(points), 0);
    assert.ok(Math.abs(area - finished[0] * finished[1]) < 1e-3 * area, id);
    const seams = steps.reduce((all, step) => all + step.perBlock, 0);
    if (joining === 'straight') assert.equal(seams, patches.length - 1, id);
  }
};

test('a quilt of blocks of every shape is planned, and adds up', () => {
  const planned = planQuilt(whole, { budget: { steps: 0 } });
  assert.ok(planned.ok, planned.ok ? '' : JSON.stringify(planned.problems));
  addsUp(planned.value);
  assert.equal(planned.value.blocks.length, 5);
});

const change = fc.record({
  place: fc.nat(),
  how: fc.constantFrom('replace', 'replace', 'replace', 'remove', 'repeat'),
  value: fc.constantFrom<unknown>(
    0,
    1,
    2,
    3,
    4,
    8,
    '1/3',
    1e-7,
    0.001,
    'dark',
    'light',
    'four',
    'nest',
    90,
    180,
    'square',
    'rails',
    'half-square',
    'log-cabin',
    'lemoyne-star',
  ),
});

const placesIn = (value: unknown): readonly (readonly [holder: Record<string, unknown>, key: string])[] => {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [[holder, key] as const, ...placesIn(holder[key])]);
};

const block = fc.constantFrom(...blocks.map(({ id }) => id));

test('a change to a block of any shape is planned or refused in words, and never throws', () => {
  const seen = { planned: 0, refused: 0 };
  fc.assert(
    fc.property(block, fc.array(change, { minLength: 1, maxLength: 2 }), (id, changes) => {
      // one block in the top: a size that changes then fits
      const document = structuredClone({ ...whole, top: { rows: [[{ block: id }]] } }) as Record<string, unknown>;
      for (const { place, how, value } of changes) {
        const places = placesIn(document.blocks).filter(
          ([holder, key]) => how !== 'replace' || typeof holder[key] !== 'object',
        );
        const [holder, key] = places[place % places.length] ?? [];
        if (holder === undefined || key === undefined) continue;
        const list = Array.isArray(holder) ? (holder as unknown[]) : null;
        if (how === 'replace') holder[key] = value;
        else if (how === 'repeat' && list) list.splice(Number(key), 0, structuredClone(list[Number(key)]));
        else if (list) list.splice(Number(key), 1);
        else delete holder[key];
      }
      const planned = planQuilt(document, { budget: { steps: 0 } });
      if (planned.ok) {
        seen.planned++;
        addsUp(planned.value);
        for (const note of planned.value.notes) assert.doesNotMatch(noteText(note, 'in'), /NaN|undefined/);
        return;
      }
      seen.refused++;
      for (const problem of planned.problems)
        assert.doesNotMatch(JSON.stringify(problemText(problem)), /NaN|undefined/);
    }),
    { seed: 341, numRuns: 200 },
  );
  // otherwise one half of the title would say nothing
  assert.ok(seen.planned > 10 && seen.refused > 10, JSON.stringify(seen));
});
