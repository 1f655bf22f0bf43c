import assert from 'node:assert/strict';
import { test } from 'node:test';
import { pageWidths } from '#wire';
import { pictureWidth, shownWidth, zooms } from './page-size.ts';

test('a page is as large as its room allows, and larger by what is asked', () => {
  // 16 px of white all round: 600 high leave 568, of which US letter is 8.5 / 11 wide
  const letter = { room: [900, 600], sizePt: [612, 792] } as const;
  assert.equal(shownWidth({ ...letter, zoom: 0 }), Math.round((568 * 8.5) / 11));
  assert.equal(shownWidth({ ...letter, room: [332, 2000], zoom: 0 }), 300);
  assert.equal(shownWidth({ ...letter, room: [332, 2000], zoom: 2 }), 600);
});

test('a picture has at least as many dots as it is shown with, up to what is given', () => {
  for (const wanted of [1, 306, 307, 700, 1224, 1300, 2448]) assert.ok(pictureWidth(wanted) >= wanted);
  for (const wanted of [1, 612, 9000]) {
    const width = pictureWidth(wanted);
    assert.ok(width >= pageWidths.least && width <= pageWidths.most);
  }
  assert.ok(zooms[0] === 1);
});
