// However a document is changed, the whole road refuses it with words or plans it: it never throws.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import fc from 'fast-check';
import { planQuilt } from '#craft';
import { noteText, problemText } from '#paper/words';

const example = JSON.parse(readFileSync(new URL('../../examples/orchard-gate.quilt.json', import.meta.url), 'utf8'));

interface Change {
  readonly place: number;
  readonly how: 'replace' | 'remove' | 'repeat';
  readonly value: unknown;
}

const change: fc.Arbitrary<Change> = fc.record({
  place: fc.nat(),
  how: fc.constantFrom('replace', 'replace', 'remove', 'repeat'),
  value: fc.constantFrom<unknown>(
    '1/64',
    '1',
    '9',
    '1/7',
    '10000',
    0.001,
    3,
    'oat',
    'brick',
    'cabin',
    90,
    180,
    true,
    'left',
    '2.5',
    1e-7,
  ),
});

const placesIn = (value: unknown): readonly (readonly [holder: Record<string, unknown>, key: string])[] => {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [[holder, key] as const, ...placesIn(holder[key])]);
};

const changed = (document: unknown, { place, how, value }: Change): void => {
  const places = placesIn(document).filter(([holder, key]) => how !== 'replace' || typeof holder[key] !== 'object');
  const [holder, key] = places[place % places.length] ?? [];
  if (holder === undefined || key === undefined) return;
  const list = Array.isArray(holder) ? (holder as unknown[]) : null;
  if (how === 'replace') holder[key] = value;
  else if (how === 'repeat' && list) list.splice(Number(key), 0, structuredClone(list[Number(key)]));
  else if (list) list.splice(Number(key), 1);
  else delete holder[key];
};

test('a changed document is planned or refused in words, and never throws', () => {
  const seen = { planned: 0, refused: 0 };
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 2 }), (changes) => {
      const document = structuredClone(example);
      for (const one of changes) changed(document, one);
      const planned = planQuilt(document, { budget: { steps: 0 } });
      if (planned.ok) {
        seen.planned++;
        for (const note of planned.value.notes) assert.doesNotMatch(noteText(note, 'in'), /NaN|undefined/);
        return;
      }
      seen.refused++;
      for (const problem of planned.problems)
        assert.doesNotMatch(JSON.stringify(problemText(problem)), /NaN|undefined/);
    }),
    { seed: 81, numRuns: 150 },
  );
  // otherwise one half of the title would say nothing
  assert.ok(seen.planned > 10 && seen.refused > 10, JSON.stringify(seen));
});
