// The lists in our prose hold what the code holds: fields of the plan file, codes of notes, identifiers of terms.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { planQuilt } from '#craft';
import { toPlanFile } from '#paper';
import { root, sourceFiles } from './prose.ts';

const read = (path: string): string => readFileSync(join(root, path), 'utf8');

/** What stands between backticks, quotation marks round it left out. */
const coded = (text: string): ReadonlySet<string> =>
  new Set([...text.matchAll(/`([^`\n]+)`/g)].flatMap(([, code = '']) => [code, code.replace(/^"(.*)"$/, '$1')]));

const keysIn = (value: unknown): readonly string[] => {
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) return value.flatMap(keysIn);
  return Object.entries(value).flatMap(([key, inner]) => [key, ...keysIn(inner)]);
};

describe('docs/plan.md', () => {
  const described = coded(read('docs/plan.md'));
  const examples = readdirSync(join(root, 'examples')).filter((file) => file.endsWith('.quilt.json'));

  it('describes every field that a plan of an example has', () => {
    assert.ok(examples.length >= 3);
    for (const example of examples) {
      const planned = planQuilt(read(`examples/${example}`), { budget: { steps: 0 } });
      assert.ok(planned.ok, example);
      const keys = new Set(keysIn(toPlanFile(planned.value)));
      assert.deepEqual(
        [...keys].filter((key) => !described.has(key)),
        [],
        example,
      );
    }
  });

  it('lists every code of a note', () => {
    const codes = [...read('src/craft/plan/notes.ts').matchAll(/readonly code: '([^']+)'/g)].map(
      ([, code = '']) => code,
    );
    assert.ok(codes.length > 0);
    assert.deepEqual(
      codes.filter((code) => !described.has(code)),
      [],
    );
  });
});

describe('docs/terms.md', () => {
  const rows = read('docs/terms.md')
    .split('\n')
    .filter((line) => /^\| (?!word )[^-]/.test(line))
    .map((line) => line.split('|').map((cell) => cell.trim()));
  const sources = sourceFiles
    .filter((file) => file.startsWith('src/'))
    .map(read)
    .join('\n');

  it('has an identifier in the code for every word', () => {
    assert.ok(rows.length > 50, `${rows.length}`);
    for (const [, word = '', , identifiers = ''] of rows) {
      const names = [...coded(identifiers)];
      assert.ok(names.length > 0, `${word} names no identifier`);
      for (const name of names) {
        assert.match(sources, new RegExp(`(?<![\\w-])${name}(?![\\w-])`), `${word}: ${name} is not in src`);
      }
    }
  });

  it('gives each word once', () => {
    const words = rows.map(([, word = '']) => word);
    assert.deepEqual(
      words.filter((word, i) => words.indexOf(word) !== i),
      [],
    );
  });
});

describe('docs/sources.md', () => {
  const numbers = [...read('docs/sources.md').matchAll(/^\| (S\d+[a-z]?) \|/gm)].map(([, number = '']) => number);
  const prose = ['docs/formulas.md', ...sourceFiles].map(read).join('\n');

  it('holds every source that is cited by its number', () => {
    const cited = new Set([...prose.matchAll(/(?<![\w.#])(S\d+[a-z]?)(?=[ ,;):.])/g)].map(([, number = '']) => number));
    assert.ok(cited.size > 0);
    assert.deepEqual(
      [...cited].filter((number) => !numbers.includes(number)),
      [],
    );
  });

  it('gives each number once', () => assert.equal(new Set(numbers).size, numbers.length));
});
