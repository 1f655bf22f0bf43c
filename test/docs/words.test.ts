// The lists in our prose hold what the code holds: fields of the plan file, codes of notes, identifiers of terms.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { planQuilt } from '#craft';
import { diagnose, readSeamTest } from '#craft/diagnosis';
import { length } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { toPlanFile } from '#paper';
import { toDiagnosisFile, toSeamTestFile } from '#paper/diagnosis';
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

  it('describes every field of a diagnosis, and every kind of verdict, explanation and rescue', () => {
    const planned = planQuilt(read('examples/harvest-home-throw.quilt.json'), { budget: { steps: 0 } });
    assert.ok(planned.ok);
    const [block] = planned.value.blocks;
    assert.ok(block);
    const { seam, unit } = planned.value.quilt;
    const sewn = { block, seam: length(toNumber(seam)), unit };
    const keys = ['1: 4 7/16 x; 4: 5 3/8', '1: 4 7/16 x; 4: 5 3/8; 8: 7 1/4 x 7 3/16; 12: 9 1/8 x 9 1/8'].flatMap(
      (measured) => {
        const found = diagnose({ ...sewn, measured });
        assert.ok(found.ok);
        return keysIn(toDiagnosisFile('cabin', found.value));
      },
    );
    const tested = readSeamTest('middle 15/16', sewn);
    assert.ok(tested.ok);
    keys.push(...keysIn(toSeamTestFile(tested.value, sewn.seam, unit)));
    assert.ok(keys.includes('next') && keys.includes('comesTo') && keys.includes('rescues'));
    const kinds = ['verdict', 'explanations', 'rescue', 'top-rescue'].flatMap((file) =>
      [...read(`src/craft/diagnosis/${file}.ts`).matchAll(/readonly kind: ([^;}]+)/g)].flatMap(([, named = '']) =>
        [...named.matchAll(/'([^']+)'/g)].map(([, kind = '']) => kind),
      ),
    );
    assert.ok(kinds.length > 20);
    const ofItsOwn = new Set(['format', 'version', 'strips', 'cut', 'none']);
    assert.deepEqual(
      [...new Set([...keys, ...kinds])].filter((word) => !described.has(word) && !ofItsOwn.has(word)),
      [],
    );
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
