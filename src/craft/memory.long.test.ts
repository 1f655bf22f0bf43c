import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { recalling } from '#ground/recall';

const first = { budget: { steps: 0 } } as const;

test('a plan that remembers those before it is the plan that remembers nothing, edit after edit', () => {
  const memory = recalling(400);
  for (const file of ['twelve-fields', 'crumb-tin', 'bramble-lane', 'skerry-walk']) {
    const document = JSON.parse(readFileSync(`examples/${file}.quilt.json`, 'utf8'));
    const edits: readonly ((draft: typeof document) => void)[] = [
      () => undefined,
      (draft) => void Object.assign(draft, { cutting: { ...draft.cutting, squaring: 0 } }),
      (draft) => void Object.assign(draft, { cutting: { ...draft.cutting, layout: 'easy' } }),
      (draft) => void Object.assign(draft, { cutting: { ...draft.cutting, shrinkage: 0.1, fold: true } }),
      (draft) => void Object.assign(draft.fabrics[0], { print: 'one-way' }),
      (draft) => void draft.fabrics.reverse(),
      (draft) => {
        for (const fabric of draft.fabrics)
          if (fabric.bought === undefined) fabric.usableWidth = draft.unit === 'in' ? '37' : '95';
      },
      (draft) => void Object.assign(draft, { seam: draft.unit === 'in' ? '3/8' : '1' }),
      () => undefined,
    ];
    for (const [i, edit] of edits.entries()) {
      const draft = structuredClone(document);
      edit(draft);
      assert.deepEqual(planQuilt(draft, { ...first, memory }), planQuilt(draft, first), `${file}, edit ${i}`);
    }
  }
});
