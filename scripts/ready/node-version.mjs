// Says plainly that this Node is too old, before newer syntax says it obscurely.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Compares the running Node with `engines.node` of package.json, which is written ">=major.minor". */
export function requireNode(root) {
  const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const [major, minor] = engines.node.replace('>=', '').split('.').map(Number);
  const [ourMajor, ourMinor] = process.versions.node.split('.').map(Number);
  if (ourMajor > major || (ourMajor === major && ourMinor >= minor)) return;
  console.error(`Seamstead needs Node ${major}.${minor} or newer; this is Node ${process.versions.node}.`);
  process.exit(1);
}
