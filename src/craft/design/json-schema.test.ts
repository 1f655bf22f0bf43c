import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { z } from 'zod';
import { schemaText } from '#craft/design';

const root = new URL('../../../', import.meta.url);
const textOf = (file: string): string => readFileSync(new URL(file, root), 'utf8');
const published = textOf('schema/seamstead-quilt-1.schema.json');

test('the published schema is the one that the reader uses', () => {
  assert.equal(published, schemaText(), 'write it again: npm run schema');
});

// the published text alone, read back by the schema library's own reader of JSON Schema
const schema = z.fromJSONSchema(JSON.parse(published));

test('the published schema accepts every example', () => {
  const files = readdirSync(new URL('examples/', root)).filter((file) => file.endsWith('.quilt.json'));
  assert.ok(files.length > 0);
  for (const file of files) assert.ok(schema.safeParse(JSON.parse(textOf(`examples/${file}`))).success, file);
});

test('the published schema accepts what is described but not built yet', () => {
  const { success } = schema.safeParse(JSON.parse(textOf('examples/broken/unbuilt-cloth.quilt.json')));
  assert.ok(success);
});

test('the published schema refuses documents of the wrong form', () => {
  const wrong = ['no-format', 'newer-version', 'unknown-key', 'no-unit', 'unit-of-miles', 'turn-45'];
  for (const name of [...wrong, 'rows-of-words', 'colour-by-name', 'name-with-slash', 'long-title']) {
    assert.equal(schema.safeParse(JSON.parse(textOf(`examples/broken/${name}.quilt.json`))).success, false, name);
  }
});
