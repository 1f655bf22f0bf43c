import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cupboardProblemText } from './shopping-text.ts';

const at = { path: '--have oats=2', fabric: 'oats' } as const;

test('what is wrong with an amount at hand says where, what, and how to mend it', () => {
  assert.deepEqual(cupboardProblemText({ code: 'shopping/unknown-cloth', ...at, known: ['oat', 'bark'] }), {
    where: '--have oats=2',
    what: 'The quilt has no cloth “oats”.',
    mend: 'Did you mean “oat”?',
  });
  const words = [
    cupboardProblemText({ code: 'shopping/no-unit', ...at, found: '2' }),
    cupboardProblemText({
      code: 'shopping/unreadable',
      ...at,
      found: '1/0',
      why: { fault: 'zero-denominator', found: '1/0' },
    }),
    cupboardProblemText({ code: 'shopping/nothing', ...at, found: '0 yd' }),
    cupboardProblemText({ code: 'shopping/too-much', ...at, found: '9999 yd' }),
    cupboardProblemText({ code: 'shopping/sheets-wanted', ...at, found: '1 yd' }),
    cupboardProblemText({ code: 'shopping/not-one-amount', ...at }),
  ];
  for (const { where, what, mend } of words) {
    assert.equal(where, '--have oats=2');
    assert.match(what, /\.$/);
    assert.match(mend, /\.$/);
  }
  assert.equal(new Set(words.map(({ what }) => what)).size, words.length);
});
