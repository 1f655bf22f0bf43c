// npm run check: what must be green before a commit, in under two minutes on two cores: all but the tests that take long. Stops at the
// first red part.

import { fileURLToPath } from 'node:url';
import { partsOf, runPart } from './parts.mjs';
import { giveUp } from './ready/giving-up.mjs';

const checked = ['format and lint', 'types', 'import law', 'unit', 'worked', 'golden', 'docs'];

const root = fileURLToPath(new URL('..', import.meta.url));
const begun = performance.now();
for (const part of partsOf(root, { long: false }).filter(({ name }) => checked.includes(name))) {
  const { failed } = await runPart(part);
  if (failed > 0) giveUp(new Error(`\nThe check stops at "${part.name}": what is wrong stands above.`));
}
console.log(`\nAll green in ${((performance.now() - begun) / 1000).toFixed(1)} s.`);
