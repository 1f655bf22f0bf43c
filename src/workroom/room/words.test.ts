import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lengthWordsFor, timeWords } from './words.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

test('a finished size that falls on no mark is told by the nearest one, and said to be near', () => {
  // by hand: three blocks of 22.5 cm on point are 3 · 22.5 · √2 = 95.459 cm, 37.582 in across
  const across = 67.5 * Math.SQRT2;
  const cm = lengthWordsFor({ unit: 'cm' }, 'written');
  assert.equal(plain(cm.nearSize([across, 96])), 'about 95.5 × 96 cm');
  assert.equal(plain(cm.near(96)), '96 cm');
  assert.equal(plain(lengthWordsFor({ unit: 'cm', ruler: '0.5' }, 'written').near(across)), 'about 95.5 cm');
  assert.equal(plain(lengthWordsFor({ unit: 'cm', ruler: '1' }, 'written').near(across)), 'about 95 cm');
  // in the unit that one likes better what comes of it is told as it is: 1 in = 2.54 cm exactly
  assert.equal(plain(lengthWordsFor({ unit: 'cm', ruler: '1' }, 'in').near(30.48)), '12 in');
  assert.equal(plain(lengthWordsFor({ unit: 'in' }, 'cm').near(64)), '162.56 cm');
  // what cannot be read is told as a problem; the words go on
  assert.equal(plain(lengthWordsFor({ unit: 'in', ruler: 'fine' }, 'written').near(Math.SQRT2)), 'about 1⅜ in');
});

test('an hour is said to be one, and no time breaks off from its unit', () => {
  assert.deepEqual([0.2, 7, 33, 59, 61, 64, 89.9, 95, 560].map(timeWords).map(plain), [
    '1 min',
    '7 min',
    '35 min',
    '1 h',
    '1 h',
    '65 min',
    '90 min',
    '2 h',
    '9 h',
  ]);
  assert.doesNotMatch(timeWords(33), / /);
});
