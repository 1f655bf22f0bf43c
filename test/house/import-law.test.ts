// The law is only worth its line in the table if it goes red. Each fault is planted in a small copy of the house, and
// the guard that should see it must name the file and the line. Three guards stand together: our own law reads imports
// and shapes, the type projects refuse globals that a pure layer's language lacks, and the linter refuses those that a
// package's own types let in again.

import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { after, describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';
import { breachesIn } from '../../scripts/law/judging.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const kept = [
  'package.json',
  'tsconfig.base.json',
  'biome.json',
  'src/ground/tsconfig.json',
  'src/craft/tsconfig.json',
];

/** A house that keeps the law, with an import of every allowed kind. */
const sound: Readonly<Record<string, string>> = {
  'src/ground/exact/index.ts': "import Fraction from 'fraction.js';\n\nexport const half = new Fraction(1, 2);\n",
  'src/craft/cutting/index.ts': "export { cut } from './cut.ts';\n",
  'src/craft/cutting/cut.ts': "import { half } from '#ground/exact';\n\nexport const cut = () => half;\n",
  'src/craft/cutting/cut.test.ts':
    "import { test } from 'node:test';\nimport { cut } from './cut.ts';\n\ntest('cuts', () => cut());\n",
  'src/craft/quilt.ts': "import { cut } from '#craft/cutting';\n\nexport const planQuilt = () => cut();\n",
  'src/paper/chart/index.ts': "import { planQuilt } from '#craft';\n\nexport const chart = () => planQuilt();\n",
  'src/print/index.ts':
    "import { readFileSync } from 'node:fs';\nimport { chart } from '#paper/chart';\n\nexport const print = () => [readFileSync, chart];\n",
  'src/cli/index.ts':
    "import { Command } from 'commander';\nimport { print } from '#print';\n\nexport const main = () => [Command, print];\n",
};

const built: string[] = [];
after(() => {
  for (const house of built) rmSync(house, { recursive: true, force: true });
});

/** Builds the sound house with some files laid over it. */
function houseWith(planted: Readonly<Record<string, string>>): string {
  const house = mkdtempSync(join(tmpdir(), 'seamstead-house-'));
  built.push(house);
  for (const [file, text] of Object.entries({ ...sound, ...planted })) {
    mkdirSync(dirname(join(house, file)), { recursive: true });
    writeFileSync(join(house, file), text);
  }
  for (const file of kept) copyFileSync(join(root, file), join(house, file));
  symlinkSync(join(root, 'node_modules'), join(house, 'node_modules'), 'dir');
  return house;
}

const breachesWith = (planted: Readonly<Record<string, string>>): string[] =>
  breachesIn(houseWith(planted)).map(({ file, line, says }) => `${file}:${line} ${says}`);

/** Runs a tool of the house in a built house; answers what it printed and whether it went red. */
function runIn(house: string, command: string, args: readonly string[]): { red: boolean; printed: string } {
  const run = spawnSync(process.execPath, [join(root, 'node_modules', command), ...args], {
    cwd: house,
    encoding: 'utf8',
  });
  return { red: run.status !== 0, printed: run.stdout + run.stderr };
}
const compile = (house: string) => runIn(house, 'typescript/bin/tsc', ['-b', 'src/craft', '--pretty', 'false']);
const lint = (house: string) =>
  runIn(house, '@biomejs/biome/bin/biome', ['lint', '--vcs-enabled=false', '--colors=off', 'src']);

describe('the import law', () => {
  it('finds nothing in a house that keeps it', () => {
    assert.deepEqual(breachesWith({}), []);
  });

  const plantings: readonly { fault: string; file: string; text: string; says: RegExp }[] = [
    {
      fault: 'an upward import',
      file: 'src/craft/cutting/planted.ts',
      text: "\nimport { chart } from '#paper/chart';\n",
      says: /^src\/craft\/cutting\/planted\.ts:2 #paper\/chart goes upward: craft may import ground$/,
    },
    {
      fault: 'a pure room of the workroom that leans on one with a page',
      file: 'src/workroom/editing/planted.ts',
      text: "import { openStore } from '#workroom/store';\n\nexport const open = openStore;\n",
      says: /^src\/workroom\/editing\/planted\.ts:1 #workroom\/store goes upward/,
    },
    {
      fault: 'a page that leans on the server',
      file: 'src/workroom/set/planted.tsx',
      text: "import { makeShop } from '#shop';\n\nexport const Shop = () => <p>{String(makeShop)}</p>;\n",
      says: /^src\/workroom\/set\/planted\.tsx:1 #shop goes upward/,
    },
    {
      fault: 'an upward import of a type',
      file: 'src/ground/exact/planted.ts',
      text: "import type { Cut } from '#craft/cutting';\n",
      says: /^src\/ground\/exact\/planted\.ts:1 #craft\/cutting goes upward: ground may import no other layer$/,
    },
    {
      fault: 'an upward import inside a type',
      file: 'src/ground/exact/planted.ts',
      text: "\n\nexport type Cut = import('#craft/cutting').Cut;\n",
      says: /^src\/ground\/exact\/planted\.ts:3 #craft\/cutting goes upward/,
    },
    {
      fault: 'an upward re-export',
      file: 'src/ground/exact/planted.ts',
      text: "export * from '#craft/cutting';\n",
      says: /^src\/ground\/exact\/planted\.ts:1 #craft\/cutting goes upward/,
    },
    {
      fault: 'an upward import in a unit test',
      file: 'src/craft/cutting/cut.test.ts',
      text: "import '#paper/chart';\n",
      says: /^src\/craft\/cutting\/cut\.test\.ts:1 #paper\/chart goes upward/,
    },
    {
      fault: 'an import that climbs',
      file: 'src/craft/cutting/planted.ts',
      text: "import '../quilt.ts';\n",
      says: /^src\/craft\/cutting\/planted\.ts:1 \.\.\/quilt\.ts climbs out of its folder/,
    },
    {
      fault: 'an import by path into another folder',
      file: 'src/craft/quilt.ts',
      text: "import './cutting/cut.ts';\n",
      says: /^src\/craft\/quilt\.ts:1 \.\/cutting\/cut\.ts is no file of this folder/,
    },
    {
      fault: 'an import past the door',
      file: 'src/paper/chart/index.ts',
      text: "import '#craft/cutting/cut';\n",
      says: /^src\/paper\/chart\/index\.ts:1 #craft\/cutting\/cut reaches past the door: import #craft\/cutting$/,
    },
    {
      fault: 'a Node module in a pure layer',
      file: 'src/craft/cutting/planted.ts',
      text: "export const fs = () => import('node:fs');\n",
      says: /^src\/craft\/cutting\/planted\.ts:1 node:fs is of the machine, which craft may not touch$/,
    },
    {
      fault: 'a Node module without its prefix',
      file: 'src/craft/cutting/planted.ts',
      text: "import 'fs';\n",
      says: /^src\/craft\/cutting\/planted\.ts:1 fs is of the machine/,
    },
    {
      fault: 'a package that the table does not give to the layer',
      file: 'src/craft/cutting/planted.ts',
      text: "import 'highs';\n",
      says: /^src\/craft\/cutting\/planted\.ts:1 craft may not import the package highs$/,
    },
    {
      fault: 'types brought in by a comment',
      file: 'src/craft/cutting/planted.ts',
      text: '/// <reference types="node" />\nexport {};\n',
      says: /^src\/craft\/cutting\/planted\.ts:1 a reference comment/,
    },
    {
      fault: 'a file outside every layer',
      file: 'src/loose.ts',
      text: 'export {};\n',
      says: /^src\/loose\.ts:1 belongs to no layer/,
    },
    {
      fault: 'a name that is no idea',
      file: 'src/craft/cutting/cut-helpers.ts',
      text: 'export {};\n',
      says: /^src\/craft\/cutting\/cut-helpers\.ts:1 "helpers" in its path names no idea$/,
    },
    {
      fault: 'a default export',
      file: 'src/craft/cutting/planted.ts',
      text: '\nexport default 1;\n',
      says: /^src\/craft\/cutting\/planted\.ts:2 a default export/,
    },
    {
      fault: 'an enum',
      file: 'src/craft/cutting/planted.ts',
      text: 'export enum Side {}\n',
      says: /^src\/craft\/cutting\/planted\.ts:1 an enum/,
    },
    {
      fault: 'state at module level',
      file: 'src/craft/cutting/planted.ts',
      text: 'export let cuts = 0;\n',
      says: /^src\/craft\/cutting\/planted\.ts:1 let at module level/,
    },
    {
      fault: 'chance in a pure layer',
      file: 'src/craft/cutting/planted.ts',
      text: 'export const toss = () => Math.random();\n',
      says: /^src\/craft\/cutting\/planted\.ts:1 Math\.random gives another answer each time/,
    },
    {
      fault: 'the locale of the machine in a pure layer',
      file: 'src/craft/cutting/planted.ts',
      text: "export const order = (a: string) => a.localeCompare('b');\n",
      says: /^src\/craft\/cutting\/planted\.ts:1 localeCompare follows the locale/,
    },
  ];
  for (const { fault, file, text, says } of plantings) {
    it(`refuses ${fault}`, () => {
      const breaches = breachesWith({ [file]: text });
      assert.equal(breaches.length, 1, breaches.join('\n'));
      assert.match(breaches[0] ?? '', says);
    });
  }

  it('refuses a circle, of types as well, and names the whole ring', () => {
    const breaches = breachesWith({
      'src/craft/cutting/cut.ts': "import { planQuilt } from '#craft';\n\nexport const cut = () => planQuilt();\n",
      'src/ground/exact/index.ts': "\nimport type { B } from './b.ts';\n\nexport type A = B;\n",
      'src/ground/exact/b.ts': "import type { A } from './index.ts';\n\nexport type B = A;\n",
    });
    assert.deepEqual(breaches, [
      'src/craft/cutting/cut.ts:1 closes a circle: src/craft/quilt.ts -> src/craft/cutting/index.ts -> src/craft/cutting/cut.ts -> src/craft/quilt.ts',
      'src/ground/exact/index.ts:2 closes a circle: src/ground/exact/b.ts -> src/ground/exact/index.ts -> src/ground/exact/b.ts',
    ]);
  });

  it('is not misled by words in comments and strings, nor by a let inside a function', () => {
    const text =
      "// import '../x.ts'\nexport const says = \"import 'node:fs'\";\nexport function f() {\n  let n = 0;\n  return ++n;\n}\n";
    assert.deepEqual(breachesWith({ 'src/craft/cutting/cut.ts': text }), []);
  });

  it('as a command prints file and line and fails', () => {
    const house = houseWith({ 'src/craft/cutting/planted.ts': "import '../quilt.ts';\n" });
    const law = join(root, 'scripts/import-law.ts');
    const run = spawnSync(process.execPath, ['--import', 'tsx', law, house], { cwd: root, encoding: 'utf8' });
    assert.equal(run.status, 1);
    assert.match(run.stdout, /^src\/craft\/cutting\/planted\.ts:1 {2}\.\.\/quilt\.ts climbs/);
  });
});

describe('a pure layer and the globals of a machine', () => {
  const planted = {
    'src/craft/cutting/cut.ts':
      'export const page = () => document.title;\nexport const folder = () => process.cwd();\nexport const now = () => Date.now();\n',
  };

  it('compiles and lints clean when it touches none', () => {
    const house = houseWith({});
    for (const { red, printed } of [compile(house), lint(house)]) assert.ok(!red, printed);
  });

  it('is a type error where it names the page or Node', () => {
    const { red, printed } = compile(houseWith(planted));
    assert.ok(red);
    assert.match(printed, /src\/craft\/cutting\/cut\.ts\(1,27\): error TS2\d+: Cannot find name 'document'/);
    assert.match(printed, /src\/craft\/cutting\/cut\.ts\(2,29\): error TS2\d+: Cannot find name 'process'/);
  });

  it('is a lint error where it names the page, Node or the clock', () => {
    const { red, printed } = lint(houseWith(planted));
    assert.ok(red);
    for (const place of ['1:27', '2:29', '3:26']) {
      assert.match(printed, new RegExp(`src/craft/cutting/cut\\.ts:${place} lint/style/noRestrictedGlobals`));
    }
  });

  it('may call its own values document or process', () => {
    const text = 'export const name = (document: { title: string }) => document.title;\n';
    const house = houseWith({
      'src/craft/cutting/cut.ts': text,
      'src/craft/cutting/index.ts': "export { name } from './cut.ts';\n",
      'src/craft/quilt.ts': "export { name } from '#craft/cutting';\n",
    });
    for (const { red, printed } of [compile(house), lint(house)]) assert.ok(!red, printed);
  });
});
