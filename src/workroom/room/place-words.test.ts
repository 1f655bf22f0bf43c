import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import { placeWords } from './place-words.ts';

const harvest = JSON.parse(readFileSync('examples/harvest-home-throw.quilt.json', 'utf8')) as QuiltDocument;

test('a place is told by what the maker sees there', () => {
  for (const [where, words] of [
    ['/blocks/0/recipe/rounds/1/width', 'Block Log cabin'],
    ['/fabrics/6/colour', 'Cloth Slate'],
    ['/top/rows/2/0', 'Row 3, place 1'],
    ['/top/rows/2', 'Row 3'],
    ['/top/rows', 'The rows'],
    ['/top/between/0/1', 'Between, row 1, place 2'],
    ['/top/sections/down/0/across/2/width', 'Part 1.3'],
    ['/top/sections', 'The sections'],
    ['/top/borders/0', 'Inner border'],
    ['/top/borders/1/width', 'Outer border'],
    ['/top/sashing/width', 'The sashing'],
    ['/finish/binding', 'The finish: binding'],
    ['/top', 'The top'],
    ['the whole document', 'the whole document'],
    ['/blocks/9', 'Block 10'],
  ] as const) {
    assert.equal(placeWords(where, harvest), words, where);
  }
});
