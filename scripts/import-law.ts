// npm run law: prints every breach of the import law as file:line, and fails if there is one.

import { fileURLToPath } from 'node:url';
import { breachesIn } from './law/judging.ts';

const root = process.argv[2] ?? fileURLToPath(new URL('..', import.meta.url));
const breaches = breachesIn(root);
for (const { file, line, says } of breaches) console.log(`${file}:${line}  ${says}`);
if (breaches.length > 0) process.exitCode = 1;
