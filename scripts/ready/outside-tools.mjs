// Programs outside npm that the tests of PDF and browser look through. They are for testing only.

import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Any one of `programs` will do; `env` may name another. */
const tools = [
  { programs: ['pdftotext'], debian: 'poppler-utils' },
  { programs: ['pdftoppm'], debian: 'poppler-utils' },
  { programs: ['pdfinfo'], debian: 'poppler-utils' },
  { programs: ['qpdf'], debian: 'qpdf' },
  { programs: ['chromium', 'chromium-browser', 'google-chrome'], debian: 'chromium', env: 'CHROMIUM_PATH' },
];

/** Installs what is missing where it may (root on Debian), else throws an Error that says what to install. */
export function readyOutsideTools(say) {
  const packages = missingPackages();
  if (packages.length === 0) return;
  const names = packages.join(' ');
  if (process.getuid?.() !== 0 || !isOnPath('apt-get')) {
    throw new Error(`These programs are needed for the tests of PDF and browser; please install them: ${names}`);
  }
  say(`Installing ${names} (apt-get) ...`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const step of [['update'], ['install', '-y', '--no-install-recommends', ...packages]]) {
    spawnSync('apt-get', ['-qq', ...step], { env, stdio: ['ignore', 2, 2] });
  }
  const still = missingPackages();
  if (still.length > 0) throw new Error(`apt-get could not install ${still.join(' ')}; its own words stand above.`);
}

function missingPackages() {
  const missing = tools.filter(({ programs, env }) => !(process.env[env ?? ''] || programs.some(isOnPath)));
  return [...new Set(missing.map(({ debian }) => debian))];
}

function isOnPath(program) {
  return (process.env.PATH ?? '').split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, program), constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}
