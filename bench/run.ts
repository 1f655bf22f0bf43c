// npm run bench: what plans and layouts cost, in at most ten minutes. npm run bench:full: the same on all problems and a
// hundred seeds, about two hours. A word or more names the parts to run: npm run bench -- purchases kits.

import { parseArgs } from 'node:util';
import { openSolver } from '#solver';
import { printDiagnosis } from './diagnosis.ts';
import { printJoining } from './joining/growth.ts';
import { printExamples } from './layouts/example-quilts.ts';
import { printGrowth } from './layouts/growth.ts';
import { printInBrowser } from './layouts/in-browser.ts';
import { deep, everyClass, flat, kitSized, printGaps, printPurchases, quiltSized } from './layouts/quilt-sized.ts';
import { printReference } from './layouts/reference.ts';
import { printSheets } from './layouts/sheet-sized.ts';
import { examplePlans, printPlans } from './plans.ts';
import { printPressing } from './pressing.ts';
import { printPrinting } from './printing/speed.ts';
import { printWays } from './ways.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { full: { type: 'boolean', default: false }, problems: { type: 'string' } },
});
const isFull = values.full;
/** Seeded problems of each class: few, or as many as the figures are promised for. */
const problemsFor = (few: number, many: number): number => Number(values.problems ?? (isFull ? many : few));

/** Of the reference problems, one of each family and kind of source. */
const few: Readonly<Record<string, readonly string[]>> = {
  'q-small-a': ['strip2-r', 'strip3-r', 'sheets2-r'],
  'q-mid-a': ['strip2-o', 'strip3r-o'],
  'q-border-a': ['strip3-o'],
  'setc-cu2': ['strip2-o', 'sheets2-o'],
  gcut1d: ['strip2-r'],
  'bwmv-c03-n60-3': ['strip2-r', 'bins3-o'],
};

const solver = await openSolver();

const parts: readonly { readonly name: string; readonly title: string; readonly run: () => unknown }[] = [
  { name: 'plans', title: 'Plans of the example quilts', run: () => printPlans(solver) },
  { name: 'pressing', title: 'Seams that nest in the example quilts', run: () => printPressing() },
  { name: 'ways', title: 'Ways to make: the front', run: () => printWays() },
  {
    name: 'diagnosis',
    title: 'Diagnosis: how often limits hold and slips are named, in 100',
    run: () => printDiagnosis(problemsFor(20, 2_000)),
  },
  { name: 'joining', title: 'Orders of joining', run: () => printJoining() },
  { name: 'printing', title: 'Printed patterns', run: () => printPrinting() },
  {
    name: 'examples',
    title: 'Cloths of the example quilts, beside each kind of piece on strips of its own',
    run: () => printExamples(examplePlans(solver), solver),
  },
  {
    name: 'two-stages',
    title: 'Two stages: the gap to the bound',
    run: () => printGaps({ classes: everyClass, problems: problemsFor(3, 20), cutting: flat, solver }),
  },
  {
    name: 'three-stages',
    title: 'Three stages: the gap to the bound',
    run: () => printGaps({ classes: everyClass, problems: problemsFor(2, 20), cutting: deep, solver }),
  },
  {
    name: 'purchases',
    title: 'Two stages: what is bought, in steps of 1/8 yd, is proven least',
    run: () => printPurchases({ classes: quiltSized, problems: problemsFor(10, 100), cutting: flat, solver }),
  },
  {
    name: 'kits',
    title: 'Kits, two stages: what is bought is proven least',
    run: () => printPurchases({ classes: kitSized, problems: problemsFor(2, 20), cutting: flat, solver }),
  },
  {
    name: 'sheets',
    title: 'Sheets: fat quarters, squares and two remnants together; fat quarters alone',
    run: () => printSheets({ solver, problems: problemsFor(1, 10) }),
  },
  {
    name: 'reference',
    title: `Reference problems, ${isFull ? 8 : 2} s each`,
    run: () =>
      printReference({
        solver,
        ms: isFull ? 8000 : 2000,
        isWanted: (instance, problem) => isFull || (few[instance]?.includes(problem) ?? false),
      }),
  },
  { name: 'growth', title: 'Growth with the demand and with the number of kinds', run: () => printGrowth(solver) },
  {
    name: 'browser',
    title: 'The same searches in a worker of a browser',
    run: () => printInBrowser({ problems: problemsFor(1, 5) }),
  },
];

const unknown = positionals.filter((word) => !parts.some(({ name }) => name === word));
if (unknown.length > 0)
  throw new Error(`no part ${unknown.join(', ')}: there are ${parts.map(({ name }) => name).join(', ')}`);
for (const { name, title, run } of parts) {
  if (positionals.length > 0 && !positionals.includes(name)) continue;
  const begun = performance.now();
  console.log(`\n${title}\n`);
  await run();
  console.log(`(${name}: ${((performance.now() - begun) / 1000).toFixed(0)} s)`);
}
