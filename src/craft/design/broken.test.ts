import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { parseQuilt } from '#craft/design';

const folder = new URL('../../../examples/broken/', import.meta.url);

/** `later`: the document itself is sound; planning finds what is wrong. */
interface Refusal {
  readonly problems: readonly { readonly code: string; readonly path: string }[];
  readonly later?: boolean;
}

const expected = JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')) as Readonly<
  Record<string, Refusal>
>;

test('every file among the broken examples has its expected problems, and every entry its file', () => {
  const files = readdirSync(folder).filter((file) => file.endsWith('.quilt.json'));
  assert.deepEqual(files.toSorted(), Object.keys(expected).toSorted());
  assert.ok(files.length >= 30, `${files.length}`);
});

const inOrder = (problems: Refusal['problems']): readonly string[] =>
  problems.map(({ code, path }) => `${code} ${path}`).toSorted();

// each expectation was derived by hand from docs/document.md when its document was broken
for (const [file, { problems, later }] of Object.entries(expected)) {
  const fact = later ? 'is sound as a document' : 'is refused with exactly its problems';
  test(`examples/broken/${file} ${fact}`, () => {
    const read = parseQuilt(readFileSync(new URL(file, folder), 'utf8'));
    if (later) {
      assert.ok(read.ok);
      return;
    }
    assert.ok(!read.ok);
    assert.deepEqual(inOrder(read.problems), inOrder(problems));
    assert.equal(read.more, 0);
  });
}
