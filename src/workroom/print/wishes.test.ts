import assert from 'node:assert/strict';
import { test } from 'node:test';
import { patternChapters, usualChapters } from '#paper/pages';
import { chaptersByStop, likedIn, paperFor, withChapter } from './wishes.ts';

test('every chapter of a pattern is to be chosen at one stop', () => {
  const listed = chaptersByStop.flatMap(({ chapters }) => chapters);
  assert.deepEqual(listed.toSorted(), patternChapters.toSorted());
});

test('a chapter in and out again is as usual, and the last one stays', () => {
  const more = withChapter(null, 'labels', 'in');
  assert.deepEqual(
    more,
    patternChapters.filter((one) => one === 'labels' || usualChapters.includes(one)),
  );
  assert.equal(withChapter(more, 'labels', 'out'), null);
  const one = usualChapters
    .slice(1)
    .reduce((left, chapter) => withChapter(left, chapter, 'out'), withChapter(null, 'labels', 'out'));
  assert.deepEqual(one, usualChapters.slice(0, 1));
  assert.deepEqual(withChapter(one, 'cover', 'out'), one);
});

test('what was kept in another form is as usual', () => {
  const usual = { chapters: null, sizes: {} };
  for (const text of [null, '', '{', '3', '{"chapters": "cover"}', '{"chapters": ["preface"]}', '{"sizes": 4}'])
    assert.deepEqual(likedIn(text), usual, String(text));
  assert.deepEqual(likedIn('{"chapters": ["cautions", "cover", "preface"], "sizes": {"a": ["wall", 3]}}'), {
    chapters: ['cover', 'cautions'],
    sizes: { a: ['wall'] },
  });
});

test('a quilt in centimetres is printed on A4 and one in inches on US letter, unless she chose herself', () => {
  assert.deepEqual([paperFor('by-unit', 'in'), paperFor('by-unit', 'cm')], ['letter', 'a4']);
  for (const unit of ['in', 'cm'] as const)
    assert.deepEqual([paperFor('letter', unit), paperFor('a4', unit)], ['letter', 'a4']);
});
