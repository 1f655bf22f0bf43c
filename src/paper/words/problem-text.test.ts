import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Problem } from '#craft';
import { readQuilt } from '#craft/design';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import { problemText } from '#paper/words';

const worded = (problem: Problem): readonly string[] => Object.values(problemText(problem));

test('sizes that differ are told with both figures and the unit', () => {
  // worded by hand
  assert.deepEqual(
    worded({
      code: 'design/size-disagrees',
      path: '/blocks/0/size',
      block: 'cabin',
      found: [rational(19, 2), rational(9)],
      expected: [rational(9), rational(9)],
      unit: 'in',
    }),
    [
      '/blocks/0/size',
      'Block “cabin” states 9½ × 9 in, but its recipe makes 9 × 9 in.',
      'Leave the size out, or change the centre or the widths of the logs.',
    ],
  );
});

test('an overlap and a hole are told with how much and where', () => {
  const at = [1.5, 2.25] as const;
  assert.equal(
    problemText({
      code: 'drafting/overlap',
      path: '/blocks/1',
      block: 'fly',
      patches: [2, 4],
      area: 0.5,
      at,
      unit: 'in',
    }).what,
    'In block “fly”, patches 2 and 4 of the list lie over each other by 0.5 square inches, about 1½ in from the left and 2¼ in from the top.',
  );
  assert.equal(
    problemText({ code: 'drafting/gap', path: '/blocks/1', block: 'fly', area: 0.00042, at, unit: 'cm' }).what,
    'Block “fly” has a hole of 0.00042 square centimetres, about 1.5 cm from the left and 2.25 cm from the top.',
  );
});

test('a piece that its cloth has no room for is told with both widths', () => {
  const needs = [length(45.875), length(45.875)] as const;
  assert.equal(
    problemText({
      code: 'cutting/wider-than-cloth',
      path: '/blocks/1',
      fabric: 'oat',
      needs,
      usable: length(40),
      unit: 'in',
    }).what,
    'A piece is cut 45⅞ × 45⅞ in, but “oat” is only 40 in wide between its selvages.',
  );
});

test('a fault in the text is placed by line and column, any other by its pointer', () => {
  assert.deepEqual(worded({ code: 'design/not-json', path: '/top', line: 3, column: 7, found: '}' }), [
    'line 3, column 7',
    'The text is not JSON: “}” cannot stand here.',
    'Look just before this place for a missing comma, quotation mark or bracket.',
  ]);
  assert.equal(
    problemText({ code: 'design/not-json', path: '', line: 1, column: 1, found: '\u0007' }).what,
    'The text is not JSON: “U+0007” cannot stand here.',
  );
  assert.equal(problemText({ code: 'design/too-many-values', path: '', most: 5 }).where, 'the whole document');
});

test('a name that is nearly right is answered with the right one, another with what there is', () => {
  const mend = (found: string, known: readonly string[]): string =>
    problemText({ code: 'design/unknown-fabric', path: '/top/borders/0/fabric', found, known }).mend;
  assert.equal(mend('brak', ['oat', 'bark']), 'Did you mean “bark”?');
  assert.equal(mend('Oat', ['oat', 'bark']), 'Did you mean “oat”?');
  assert.equal(mend('plum', ['oat', 'bark', 'moss']), 'Known here: “oat”, “bark” and “moss”.');
  assert.equal(mend('plum', []), 'Known here: none.');
  const many = Array.from({ length: 20 }, (_, i) => `cloth-number-${i}`);
  assert.match(mend('plum', many), /“cloth-number-7” and 12 more\.$/);
});

test('one of a thing is not told as many', () => {
  const few = (found: number) =>
    problemText({ code: 'design/too-few', path: '/blocks/0/patches/list/0/points', what: 'corners', found, least: 3 })
      .what;
  assert.equal(few(1), 'There is 1 corner; at least 3 must be given.');
  assert.equal(few(2), 'There are 2 corners; at least 3 must be given.');
  const row = (index: number) =>
    problemText({ code: 'design/uneven-rows', path: '/top/rows/0', row: index, found: 1, expected: 3 }).what;
  assert.equal(row(1), 'The 2nd row has 1 cell, the first has 3.');
  assert.match(row(10), /^The 11th row/);
  assert.match(row(20), /^The 21st row/);
  assert.match(row(110), /^The 111th row/);
});

test('a text of the maker’s own is quoted short, whatever it holds', () => {
  const document = { format: 'seamstead-quilt', version: 1, unit: '😀'.repeat(500), fabrics: [], blocks: [], top: {} };
  const quilt = readQuilt(document);
  assert.ok(!quilt.ok);
  for (const problem of quilt.problems) {
    const { what } = problemText(problem);
    assert.ok(what.length < 200, what);
    assert.doesNotMatch(what, /\p{Surrogate}/u);
  }
});
