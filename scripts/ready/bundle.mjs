// Keeps dist/seamstead.mjs, the command line in one file, as new as its sources.

import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, utimesSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { installPackages } from './packages.mjs';

/**
 * Installs and bundles only what is stale. A fresh bundle costs a look at the times of the sources and nothing more.
 *
 * @param root  the checkout
 * @param say   takes a line for the person who waits
 * @returns path of the bundle
 */
export async function readyBundle(root, say) {
  const bundle = join(root, 'dist', 'seamstead.mjs');
  if (isFresh(root, bundle)) return bundle;
  installPackages(root, say);
  say('Building ...');
  await build(root, bundle);
  return bundle;
}

function isFresh(root, bundle) {
  if (!existsSync(bundle) || !existsSync(join(root, 'node_modules', '.package-lock.json'))) return false;
  const built = statSync(bundle).mtimeMs;
  const sources = ['package.json', 'package-lock.json', 'src'];
  return sources.every((source) => newestIn(join(root, source)) <= built);
}

/** A folder's own time counts too: it changes when a file in it is added, renamed or deleted. */
function newestIn(path) {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found) return 0; // gone since its folder was read
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(found.mtimeMs, ...readdirSync(path).map((name) => newestIn(join(path, name))));
}

async function build(root, bundle) {
  const { build: bundleWith } = await import('esbuild');
  // A source saved while we build must leave the bundle stale, so it is dated before the first file was read.
  const begun = new Date(Date.now() - 20);
  const fresh = `${bundle}.${process.pid}`;
  mkdirSync(dirname(bundle), { recursive: true });
  try {
    await bundleWith({
      entryPoints: [join(root, 'src/cli/index.ts')],
      outfile: fresh,
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      packages: 'external',
      logLevel: 'silent',
    });
    utimesSync(fresh, begun, begun);
    renameSync(fresh, bundle); // at once, so that a run beside this one sees the old bundle or the new one, never half
  } finally {
    rmSync(fresh, { force: true });
  }
}
