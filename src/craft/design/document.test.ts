import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { limits } from '#craft/limits';

const prose = readFileSync(new URL('../../../docs/document.md', import.meta.url), 'utf8');
const schema = JSON.parse(
  readFileSync(new URL('../../../schema/seamstead-quilt-1.schema.json', import.meta.url), 'utf8'),
) as unknown;

const keysIn = (node: unknown): readonly string[] => {
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, inner]) => [
    ...(key === 'properties' ? Object.keys(inner as object) : []),
    ...keysIn(inner),
  ]);
};

test('every key that the reader takes from a shape it plans is described in docs/document.md', () => {
  const later = ['down', 'fill', 'strip', 'kind', 'columns', 'swap', 'darkCorner', 'pieced', 'spacer'];
  const missing = [...new Set(keysIn(schema))].filter(
    (key) => !later.includes(key) && !new RegExp(`[\`"]${key}["\`]`).test(prose),
  );
  assert.deepEqual(missing, []);
});

test('the limits that docs/document.md names are those that hold', () => {
  const spaced = (figure: number): string => String(figure).replace(/\B(?=(\d{3})+$)/g, ' ');
  const text = prose.replaceAll('\n', ' ');
  for (const words of [
    `${spaced(limits.characters)} characters`,
    `${limits.depth} levels`,
    `${limits.fabrics} fabrics`,
    `${limits.blocks} blocks`,
    `${limits.colourings} colourings`,
    `${limits.rounds} rounds`,
    `${limits.logs} logs`,
    `${spaced(limits.patches)} patches`,
    `${limits.corners} corners`,
    `${limits.seams} straight lines`,
    `${limits.rows} rows`,
    `${limits.columns} cells in a row`,
    `${spaced(limits.cells)} cells`,
    `${limits.borders} borders`,
    `${spaced(limits.pieces)} pieces`,
    `${limits.titleCharacters} characters`,
    `${spaced(limits.notesCharacters)} characters`,
    `${limits.idCharacters} characters`,
  ]) {
    assert.ok(text.includes(words), words);
  }
  assert.equal(limits.values, 2_000_000);
});
