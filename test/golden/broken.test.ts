// The refused documents, through the whole road: planning finds what the document alone cannot show.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { problemText } from '#paper/words';

const folder = new URL('../../examples/broken/', import.meta.url);

interface Refusal {
  readonly problems: readonly { readonly code: string; readonly path: string }[];
}

const expected = JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')) as Readonly<
  Record<string, Refusal>
>;

const inOrder = (problems: Refusal['problems']): readonly string[] =>
  problems.map(({ code, path }) => `${code} ${path}`).toSorted();

// each expectation was derived by hand from the format when its document was broken
for (const [file, { problems }] of Object.entries(expected)) {
  test(`planning examples/broken/${file} is refused with exactly its problems, each in two sentences`, () => {
    const planned = planQuilt(readFileSync(new URL(file, folder), 'utf8'));
    assert.ok(!planned.ok);
    assert.deepEqual(inOrder(planned.problems), inOrder(problems));
    for (const problem of planned.problems) {
      const { where, what, mend } = problemText(problem);
      assert.match(where, /^(?:\/|line \d+, column \d+$|the whole document$)/);
      for (const sentence of [what, mend]) {
        assert.match(sentence, /[.?]$/);
        assert.doesNotMatch(sentence, /undefined|NaN|\[object|design\/|\.\.$/);
      }
    }
  });
}
