// npm run soak: does a press that prints one document after another keep its memory? 300 documents on one press, or as many as the
// first word says. Fails where memory grows after the first fifth.

import { patternPages } from '#paper';
import { openPress } from '#print';
import { exampleNames, planWithoutSearch } from './example-plans.ts';
import { printTable } from './table.ts';

const documents = Number(process.argv[2] ?? 300);
if (!Number.isInteger(documents) || documents < 20) throw new Error('npm run soak -- NUMBER, of at least 20 documents');
const looks = 20;
const mostMb = 40;

const megabytes = (bytes: number): number => bytes / 2 ** 20;
const plans = exampleNames.map(planWithoutSearch);
const press = openPress();
const seen: { readonly printed: number; readonly residentMb: number; readonly heapMb: number }[] = [];
let pages = 0;
for (let printed = 1; printed <= documents; printed++) {
  const plan = plans[printed % plans.length];
  if (plan) pages += (await press.pdf(patternPages(plan), { paper: printed % 2 === 0 ? 'letter' : 'a4' })).pages;
  if (printed % Math.floor(documents / looks) !== 0) continue;
  globalThis.gc?.();
  const { rss, heapUsed } = process.memoryUsage();
  seen.push({ printed, residentMb: megabytes(rss), heapMb: megabytes(heapUsed) });
}
press.close();

printTable([
  ['printed', 'resident', 'heap'],
  ...seen.map(({ printed, residentMb, heapMb }) => [
    `${printed}`,
    `${residentMb.toFixed(0)} MB`,
    `${heapMb.toFixed(1)} MB`,
  ]),
]);

// the machine has taken what it keeps by then
const settled = seen.slice(Math.floor(seen.length / 4));
const mean = (some: typeof seen): number => some.reduce((sum, { residentMb }) => sum + residentMb, 0) / some.length;
const half = Math.floor(settled.length / 2);
const grownMb = mean(settled.slice(-half)) - mean(settled.slice(0, half));
console.log(
  `\n${documents} documents, ${pages} pages. After the first quarter the mean moved by ${grownMb.toFixed(1)} MB (at most ${mostMb}).`,
);
if (grownMb > mostMb) throw new Error('the press keeps more memory with every document');
