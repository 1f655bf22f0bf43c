// How long does a pattern take, from the start of a process and in one that is warm?

import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { QuiltPlan } from '#craft';
import { patternChapters, patternPages } from '#paper';
import { openPress, type Press } from '#print';
import { exampleNames, planWithoutSearch } from '../example-plans.ts';
import { msText, printTable } from '../table.ts';
import type { Once } from './print-once.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const printed = ['biscuit-box', 'harvest-home-throw', 'orchard-gate', 'twelve-fields'];
const runs = 5;
const rounds = 3;

interface Took {
  readonly wallMs: number;
  readonly processorMs: number;
}

const median = (numbers: readonly number[]): number =>
  numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] as number;

const medianOf = (all: readonly Took[]): Took => ({
  wallMs: median(all.map(({ wallMs }) => wallMs)),
  processorMs: median(all.map(({ processorMs }) => processorMs)),
});

export const printPrinting = async (): Promise<void> => {
  mkdirSync(join(root, '.cache'), { recursive: true });
  const folder = mkdtempSync(join(root, '.cache/printing-'));
  try {
    const program = join(folder, 'print-once.mjs');
    await build({
      entryPoints: [join(root, 'bench/printing/print-once.ts')],
      outfile: program,
      bundle: true,
      platform: 'node',
      format: 'esm',
      packages: 'external',
      logLevel: 'silent',
    });
    const warm = await warmOf();
    const rows = printed.map((name) => {
      const document = join(root, `examples/${name}.quilt.json`);
      const whole = Array.from(
        { length: runs },
        () =>
          JSON.parse(
            execFileSync(process.execPath, [program, document, 'letter', join(folder, 'pages.pdf')], {
              encoding: 'utf8',
            }),
          ) as Once,
      );
      const cold = medianOf(whole);
      const { first, again } = warm.get(name) ?? { first: cold, again: cold };
      const took = [cold, first, again].flatMap(({ wallMs, processorMs }) => [wallMs, processorMs]).map(msText);
      return [`${name}, all chapters`, `${whole[0]?.pages}`, ...took];
    });
    const head = ['whole process', 'processor', 'warm', 'processor', 'again', 'processor'];
    printTable([['pattern', 'pages', ...head], ...rows]);
    console.log(
      '\nTargets: 24 pages in at most 2000 ms as a whole process and 500 ms warm. Medians; planned without a search.' +
        '\nWarm: on a press that has printed the other examples since. Again: once more at once, as after a small change.',
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
};

/** Drawing, setting and writing, of plans that are there: one example after another, each twice. */
const warmOf = async (): Promise<ReadonlyMap<string, { readonly first: Took; readonly again: Took }>> => {
  const press = openPress();
  const plans = exampleNames.map((name) => ({ name, plan: planWithoutSearch(name) }));
  const took = new Map(exampleNames.map((name) => [name, { first: [] as Took[], again: [] as Took[] }]));
  for (let round = -1; round < rounds; round++) {
    for (const { name, plan } of plans) {
      const [first, again] = [await printedOnce(press, plan), await printedOnce(press, plan)];
      if (round < 0) continue;
      took.get(name)?.first.push(first);
      took.get(name)?.again.push(again);
    }
  }
  press.close();
  return new Map(
    [...took].map(([name, { first, again }]) => [name, { first: medianOf(first), again: medianOf(again) }]),
  );
};

const printedOnce = async (press: Press, plan: QuiltPlan): Promise<Took> => {
  const begun = performance.now();
  const before = process.cpuUsage();
  await press.pdf(patternPages(plan, { chapters: patternChapters }), { paper: 'letter' });
  const { user, system } = process.cpuUsage(before);
  return { wallMs: performance.now() - begun, processorMs: (user + system) / 1000 };
};
