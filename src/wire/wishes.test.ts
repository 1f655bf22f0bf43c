import assert from 'node:assert/strict';
import { test } from 'node:test';
import { pageWishesIn, pageWishesText, printWishesIn, printWishesText } from './wishes.ts';

/** As a server reads what stands behind the question mark. */
const read = (text: string) => Object.fromEntries(new URLSearchParams(text));

test('what is written is read again', () => {
  for (const wishes of [
    { paper: 'letter', hand: 'right', chapters: null, sizes: [] },
    { paper: 'a4', hand: 'left', chapters: ['cover', 'run-sheet'], sizes: ['wall hanging', 'größer'] },
  ] as const) {
    assert.deepEqual(printWishesIn(read(printWishesText(wishes))), { ok: true, value: wishes });
    const page = { page: 12, widthPx: 160 };
    const text = `${printWishesText(wishes)}&${pageWishesText(page)}`;
    assert.deepEqual(pageWishesIn(read(text)), { ok: true, value: { print: wishes, page } });
  }
});

test('nothing said is US letter for the right hand with the usual chapters', () => {
  assert.deepEqual(printWishesIn({}), {
    ok: true,
    value: { paper: 'letter', hand: 'right', chapters: null, sizes: [] },
  });
});

test('whatever cannot be read is named with what it holds and what it may hold, all at once', () => {
  const refusedKeys = (query: Readonly<Record<string, unknown>>) => {
    const outcome = pageWishesIn(query);
    return outcome.ok ? [] : outcome.problems.map(({ key }) => key);
  };
  const sound = { page: '1', width: '160' };
  assert.deepEqual(refusedKeys(sound), []);
  assert.deepEqual(refusedKeys({ ...sound, paper: 'a3' }), ['paper']);
  assert.deepEqual(refusedKeys({ ...sound, paper: ['a4', 'letter'] }), ['paper']);
  for (const hand of ['both', '', 'Left', ['left', 'right']])
    assert.deepEqual(refusedKeys({ ...sound, hand }), ['hand'], String(hand));
  assert.deepEqual(refusedKeys({ ...sound, chapters: '' }), ['chapters']);
  assert.deepEqual(refusedKeys({ ...sound, sizes: 'a,,b' }), ['sizes']);
  assert.deepEqual(refusedKeys({ ...sound, colour: 'red' }), ['colour']);
  for (const page of ['0', '-1', '1.5', '', '1e3', '9999999', undefined])
    assert.deepEqual(refusedKeys({ ...sound, page }), ['page'], String(page));
  for (const width of ['39', '2601', 'wide', undefined])
    assert.deepEqual(refusedKeys({ ...sound, width }), ['width'], String(width));
  assert.deepEqual(refusedKeys({ paper: 'a3', chapters: '', page: '0', width: '1' }), [
    'paper',
    'chapters',
    'page',
    'width',
  ]);
});
