// Installs the packages of package-lock.json when those in node_modules are others. npm keeps its own note of what it
// installed, written last, so an install that was cut short counts as none, and one made by hand counts.

import { spawnSync } from 'node:child_process';
import { existsSync, lstatSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { alone } from './alone.mjs';

export function installPackages(root, say) {
  if (packagesFit(root)) return;
  alone(join(root, '.cache', 'installing'), () => {
    if (packagesFit(root)) return; // another run has just installed them
    refuseLink(join(root, 'node_modules'));
    say('Installing packages (npm ci) ...');
    const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
    // All chatter goes to standard error: standard output belongs to whoever called.
    const { status } = spawnSync(npm, ['ci'], {
      cwd: root,
      stdio: ['ignore', 2, 2],
      shell: process.platform === 'win32',
    });
    if (status !== 0) throw new Error('npm ci failed; its own words stand above.');
  });
}

/** npm ci empties the folder behind a link, which is somebody else's. */
function refuseLink(folder) {
  if (!lstatSync(folder, { throwIfNoEntry: false })?.isSymbolicLink()) return;
  throw new Error(
    'node_modules is a link to a folder whose packages are not those of package-lock.json. Bring them up to date there, or remove the link.',
  );
}

function packagesFit(root) {
  const noted = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(noted)) return false;
  const wanted = packagesIn(join(root, 'package-lock.json'));
  const installed = packagesIn(noted);
  // Builds for other machines are in the lock, marked optional, and never installed here.
  const allThere = Object.entries(wanted).every(([path, { version, optional }]) =>
    path in installed ? installed[path].version === version : path === '' || optional === true,
  );
  return allThere && Object.keys(installed).every((path) => path in wanted);
}

const packagesIn = (lock) => JSON.parse(readFileSync(lock, 'utf8')).packages;
