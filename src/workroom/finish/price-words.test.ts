import assert from 'node:assert/strict';
import { test } from 'node:test';
import { moreWords, takenWords } from './price-words.ts';

const of = { nameOf: (id: string) => ({ oat: 'Oat', bay: 'Bay' })[id] ?? id, currency: 'EUR' };
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

test('a way says what it takes more or less, in cloth and in money', () => {
  const more = { cloths: [{ id: 'oat', amount: 0.5, unit: 'yd' }], cost: 6.25 } as const;
  assert.equal(spaced(moreWords(more, of)), '½ yd more of Oat, 6.25 EUR more');
  const other = {
    cloths: [
      { id: 'oat', amount: -2, unit: 'sheets' },
      { id: 'bay', amount: 1.25, unit: 'm' },
    ],
    cost: -3,
  } as const;
  assert.equal(spaced(moreWords(other, of)), '2 sheets less of Oat and 1.25 m more of Bay, 3.00 EUR less');
  assert.equal(spaced(moreWords({ ...other, cost: null }, of)), '2 sheets less of Oat and 1.25 m more of Bay');
  assert.equal(moreWords({ cloths: [], cost: 0 }, of), 'no more and no less cloth');
  assert.equal(moreWords({ cloths: null, cost: null }, of), 'there is no room for it on its cloth');
});

test('what stands is told by what would be bought without it', () => {
  const without = { cloths: [{ id: 'oat', amount: -4.625, unit: 'yd' }], cost: -57.81 } as const;
  assert.equal(spaced(takenWords(without, of)), '4⅝ yd of Oat, 57.81 EUR');
  assert.equal(takenWords({ cloths: [], cost: 0 }, of), 'cut from cloth that is bought anyway');
  assert.equal(spaced(takenWords({ cloths: [], cost: -30 }, of)), '30.00 EUR');
});
