// Keeps dist/workroom, the page of the workroom, as new as its sources: they are known by a hash of all of them.

import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import { alone } from './alone.mjs';
import { installPackages } from './packages.mjs';

const layers = ['ground', 'craft', 'paper', 'wire', 'solver', 'workroom'];
const demos = [
  'harvest-home-throw',
  'lantern-lane',
  'twelve-fields',
  'heron-hanging',
  'kettle-bank',
  'mill-pond',
  'weir-street',
  'lamp-street',
  'ferry-landing',
];
const demoFile = (demo) => `examples/${demo}.quilt.json`;

/**
 * Installs and builds only what is stale.
 *
 * @param root  the checkout
 * @param say   takes a line for the person who waits
 * @returns folder of the page
 */
export async function readyWorkroom(root, say) {
  const folder = join(root, 'dist', 'workroom');
  const note = join(root, 'dist', 'workroom.sources');
  installPackages(root, say);
  const wanted = hashOf(root);
  if (isBuilt(folder, note, wanted)) return folder;
  say('Building the workroom ...');
  const fresh = `${folder}.${process.pid}`;
  try {
    await build(root, fresh);
    compressIn(fresh);
    alone(join(root, '.cache', 'workroom'), () => {
      if (isBuilt(folder, note, wanted)) return; // another run has just built it
      rmSync(folder, { recursive: true, force: true });
      renameSync(fresh, folder);
      writeFileSync(note, wanted);
    });
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
  return folder;
}

const isBuilt = (folder, note, wanted) =>
  existsSync(join(folder, 'index.html')) && existsSync(note) && readFileSync(note, 'utf8') === wanted;

function hashOf(root) {
  const hash = createHash('sha256');
  const own = fileURLToPath(import.meta.url);
  const sources = layers.flatMap((layer) => filesIn(join(root, 'src', layer)));
  const others = ['package.json', 'package-lock.json', ...demos.map(demoFile)].map((file) => join(root, file));
  for (const file of [...sources, ...others, own])
    hash.update(`${file.slice(root.length)}\n`).update(readFileSync(file));
  return hash.digest('hex');
}

const filesIn = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.endsWith('.test.ts'))
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .sort();

/** Letters come from the same packages that the printed pages take them from. */
function letters(root) {
  const { resolve } = createRequire(join(root, 'package.json'));
  const cut = (family, name, file) => join(dirname(resolve(`@expo-google-fonts/${family}/package.json`)), name, file);
  return {
    '@letters/sans.ttf': cut('source-sans-3', '400Regular', 'SourceSans3_400Regular.ttf'),
    '@letters/sans-semibold.ttf': cut('source-sans-3', '600SemiBold', 'SourceSans3_600SemiBold.ttf'),
    '@letters/serif-semibold.ttf': cut('source-serif-4', '600SemiBold', 'SourceSerif4_600SemiBold.ttf'),
  };
}

async function build(root, outDir) {
  const { build: buildWith } = await import('vite');
  const { default: react } = await import('@vitejs/plugin-react');
  await buildWith({
    configFile: false,
    root: join(root, 'src/workroom/page'),
    base: './',
    logLevel: 'error',
    plugins: [react()],
    resolve: { alias: letters(root) },
    worker: { format: 'es' },
    // workers begin with a script of this very size; the warning would say so each time
    build: { outDir, emptyOutDir: true, target: 'es2022', chunkSizeWarningLimit: 1500, assetsInlineLimit: 0 },
  });
  mkdirSync(join(outDir, 'demos'));
  for (const demo of demos) cpSync(join(root, demoFile(demo)), join(outDir, 'demos', `${demo}.quilt.json`));
}

/** Beside each file its compressed forms, which the server gives to a browser that takes them. */
function compressIn(folder) {
  for (const file of filesIn(folder)) {
    if (!/\.(js|css|html|svg|json|ttf|wasm)$/.test(file)) continue;
    const bytes = readFileSync(file);
    writeFileSync(`${file}.gz`, gzipSync(bytes, { level: 9 }));
    const quality = { [constants.BROTLI_PARAM_QUALITY]: 9 };
    writeFileSync(`${file}.br`, brotliCompressSync(bytes, { params: quality }));
  }
}
