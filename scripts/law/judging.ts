// Judges every file under src/ by the table of layers. What it cannot see (a global of the browser or of Node in a
// pure layer) the type projects and the linter refuse; test/house shows each of the three going red.

import { readdirSync, readFileSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { basename, dirname, join, relative } from 'node:path';
import { circlesIn } from './circles.ts';
import { type Layer, layers, notNames } from './layers.ts';
import { type Reading, readSource } from './reading.ts';

export interface Breach {
  /** From the root, with forward slashes. */
  readonly file: string;
  readonly line: number;
  readonly says: string;
}

/** All breaches of the law under `root`/src, in the order of file and line. */
export function breachesIn(root: string): readonly Breach[] {
  const files = sourcesIn(join(root, 'src')).map((path) => relative(root, path).replaceAll('\\', '/'));
  const readings = new Map(files.map((file) => [file, readSource(file, readFileSync(join(root, file), 'utf8'))]));
  const breaches = [...readings].flatMap(([file, reading]) => judgeFile(file, reading));
  return [...breaches, ...circlesIn(readings, namesIn(root))].sort(
    (a, b) => compareText(a.file, b.file) || a.line - b.line || compareText(a.says, b.says),
  );
}

function sourcesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .sort((a, b) => compareText(a.name, b.name))
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return sourcesIn(path);
      return /\.tsx?$/.test(entry.name) ? [path] : [];
    });
}

/** `imports` of package.json: what a name such as #craft/* stands for. */
function namesIn(root: string): ReadonlyMap<string, string> {
  const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { imports?: Record<string, string> };
  return new Map(Object.entries(manifest.imports ?? {}));
}

function judgeFile(file: string, reading: Reading): Breach[] {
  const layer = layers.find((each) => file.startsWith(`src/${each.name}/`));
  if (!layer) return [{ file, line: 1, says: 'belongs to no layer of scripts/law/layers.ts' }];
  const isTest = file.endsWith('.test.ts');
  const imports = reading.imports.flatMap(({ line, from }) => {
    const says = from === null ? null : judgeImport(from, layer, isTest);
    return says ? [{ line, says }] : [];
  });
  const impurities = layer.pure && !isTest ? reading.impurities : [];
  return [...judgeName(file), ...imports, ...reading.faults, ...impurities].map((fault) => ({ file, ...fault }));
}

function judgeName(file: string): { line: number; says: string }[] {
  const words = file.split(/[/.-]/);
  const bad = words.find((word) => notNames.includes(word) || notNames.includes(word.replace(/s$/, '')));
  return bad ? [{ line: 1, says: `"${bad}" in its path names no idea` }] : [];
}

/** What documents the tests of every layer are about stands in one place. */
const testDocuments = '#documents';

/** What is wrong with importing `from` in this layer, or null. A unit test may use any package and Node itself. */
function judgeImport(from: string, layer: Layer, isTest: boolean): string | null {
  if (from.startsWith('..')) return `${from} climbs out of its folder: cross folders by name`;
  if (from.startsWith('.')) {
    const inFolder = dirname(from) === '.' && /\.(tsx?|css)$/.test(basename(from));
    return inFolder ? null : `${from} is no file of this folder: write ./x.ts, or cross folders by name`;
  }
  if (isTest && from === testDocuments) return null;
  if (from.startsWith('#')) return judgeCrossing(from, layer);
  if (isTest) return null;
  if (isBuiltin(from)) return layer.pure ? `${from} is of the machine, which ${layer.name} may not touch` : null;
  const name = from.split('/', from.startsWith('@') ? 2 : 1).join('/');
  return layer.packages.includes(name) ? null : `${layer.name} may not import the package ${name}`;
}

function judgeCrossing(from: string, layer: Layer): string | null {
  const [target = '', ...inside] = from.slice(1).split('/');
  if (!layers.some((each) => each.name === target)) return `${from} names no layer`;
  if (inside.length > 1) return `${from} reaches past the door: import #${target}/${inside[0]}`;
  if (target === layer.name || layer.restsOn.includes(target)) return null;
  return `${from} goes upward: ${layer.name} may import ${layer.restsOn.join(', ') || 'no other layer'}`;
}

/** By code unit, so that every machine lists alike. */
const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
