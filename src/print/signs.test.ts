import assert from 'node:assert/strict';
import { test } from 'node:test';
import { fontFiles, glyphsOf, openFont } from './fonts.ts';
import { allDrawable, drawable } from './signs.ts';

const latin = new Set([...'abc é□'].map((sign) => sign.codePointAt(0) ?? 0));

test('a sign that no font has becomes an empty square, and is reported once', () => {
  assert.deepEqual(drawable('a🧵b🧵', latin), { text: 'a□b□', missing: ['🧵'] });
});

test('an accent written apart is joined to its letter before it is looked for', () => {
  assert.deepEqual(drawable('e\u0301', latin), { text: 'é', missing: [] });
});

test('signs without a form of their own are left out silently', () => {
  assert.deepEqual(drawable('a\u200d\ufe0f\u202eb\u0007', latin), { text: 'ab', missing: [] });
  assert.equal(drawable('a\nb\tc', latin).text, 'a b c');
});

test('half of a pair of surrogates cannot stop the press', () => {
  assert.equal(drawable('a\ud83e', latin).text, 'a□');
});

test('every string inside the facts is made drawable', () => {
  assert.deepEqual(allDrawable({ a: ['x', { b: 'c' }], n: 1, z: null }, latin), {
    value: { a: ['□', { b: 'c' }], n: 1, z: null },
    missing: ['x'],
  });
});

test('the fonts are there and have what the pages need', () => {
  const files = fontFiles();
  const sans = files.filter((file) => file.includes('SourceSans3')).map((file) => glyphsOf(openFont(file)));
  const serif = files.filter((file) => file.includes('SourceSerif4')).map((file) => glyphsOf(openFont(file)));
  for (const sign of 'Aaé½⅞×□⁄⁵₁₆°–…') {
    for (const face of sans) assert.ok(face.has(sign.codePointAt(0) ?? 0), sign);
  }
  // seen in the files: Source Serif 4 has no empty square, which is why each family stands in for the other
  assert.ok(serif.length > 0 && serif.every((face) => !face.has(0x25a1)));
  assert.ok(sans.every((face) => !face.has(0x1f9f5)));
});
