import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { planQuilt } from '#craft';
import { problemText } from '#paper/words';
import { readyBundle } from '../../scripts/ready/bundle.mjs';
import { proseFiles, root } from './prose.ts';
import { isExcerpt, snippetsOf, withoutComments } from './snippets.ts';

const snippets = proseFiles.flatMap(snippetsOf);
const documents = snippets
  .filter(({ language, text }) => language.startsWith('json') && text.includes('"seamstead-quilt"'))
  .map((snippet) => ({ ...snippet, text: withoutComments(snippet.text) }));

/** A folder where a reader tries what she reads: the examples, the reference problems, and the README's document saved as it says. */
const desk = mkdtempSync(join(tmpdir(), 'seamstead-docs-'));
after(() => rmSync(desk, { recursive: true, force: true }));
for (const folder of ['examples', 'bench']) symlinkSync(join(root, folder), join(desk, folder), 'dir');
mkdirSync(join(desk, 'out'));

/** As a shell takes them: what stands in quotes is one word. */
const wordsOf = (command: string): readonly string[] =>
  [...command.matchAll(/"([^"]*)"|\S+/g)].map(([word, quoted]) => quoted ?? word);

const runAtDesk = (command: string) =>
  spawnSync(process.execPath, [join(root, 'bin/seamstead.mjs'), ...wordsOf(command)], {
    cwd: desk,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });

describe('whole documents in our prose', () => {
  it('stand in the README and in docs/document.md', () => {
    for (const file of ['README.md', 'docs/document.md']) {
      assert.ok(
        documents.some(({ at }) => at.startsWith(`${file}:`)),
        file,
      );
    }
  });

  for (const { at, text } of documents) {
    it(`${at} is planned without a note`, () => {
      const planned = planQuilt(text, { budget: { steps: 0 } });
      assert.ok(planned.ok, planned.ok ? '' : planned.problems.map((p) => JSON.stringify(problemText(p))).join('\n'));
      assert.deepEqual(planned.value.notes, []);
    });
  }
});

describe('commands in our prose', () => {
  // so that none of them says that it is being built
  before(() => readyBundle(root, () => undefined));
  const [first] = documents.filter(({ at }) => at.startsWith('README.md:'));
  writeFileSync(join(desk, 'my.quilt.json'), first?.text ?? '');
  const shells = snippets.filter(({ language }) => language === 'sh');
  const commands = new Set(
    shells.flatMap(({ text }) =>
      text.split('\n').flatMap((line) => (line.startsWith('npx seamstead ') ? [line.slice(14).trim()] : [])),
    ),
  );

  it('are some', () => assert.ok(commands.size >= 4, `${commands.size}`));

  for (const command of commands) {
    it(`seamstead ${command} ends with 0`, () => {
      const { status, stderr } = runAtDesk(command);
      assert.deepEqual([status, stderr], [0, '']);
    });
  }

  it('the summary in the README is what its command prints', () => {
    const excerpt = snippets.find(({ at, language }) => at.startsWith('README.md:') && language === 'text');
    assert.ok(excerpt);
    const { stdout } = runAtDesk('plan examples/harvest-home-throw.quilt.json');
    assert.ok(isExcerpt(excerpt.text, stdout), `${excerpt.at} is no part of\n${stdout}`);
  });
});

describe('an excerpt', () => {
  it('holds lines in order, and leaps only where it says so', () => {
    const text = 'a\nb\nc\nd';
    assert.equal(isExcerpt('a\nb\n…\nd', text), true);
    assert.equal(isExcerpt('a\nc', text), false);
    assert.equal(isExcerpt('b\n…\na', text), false);
    assert.equal(isExcerpt('a\nx', text), false);
  });

  it('is freed of comments, but not of slashes in text', () => {
    assert.equal(
      withoutComments('{ "a": "b/c", // no\n// all\n"u": "http://x" }'),
      '{ "a": "b/c", \n\n"u": "http://x" }',
    );
  });
});
