// What plans cost, first in cloth and seams, then in milliseconds, beside a baseline taken in the same run.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { planQuilt, type QuiltPlan } from '#craft';
import { parseQuilt } from '#craft/design';
import type { IntegerSolver } from '#craft/strips';
import { chanceFrom } from '#ground/chance';
import { clothSignsFor, drawQuilt, patternPages, planFileText } from '#paper';
import type { ExamplePlan } from './layouts/example-quilts.ts';
import { cabinTop } from './stress.ts';
import { msText as ms, printTable as table } from './table.ts';
import { growthSlope, type Timing, type TimingWish, timed, usual } from './timing.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const ending = '.quilt.json';
const examples = readdirSync(join(root, 'examples'))
  .filter((file) => file.endsWith(ending))
  .map((file) => ({ name: file.slice(0, -ending.length), text: readFileSync(join(root, 'examples', file), 'utf8') }));
const throwText = examples.find(({ name }) => name === 'harvest-home-throw')?.text ?? '';
const [few, many]: readonly [TimingWish, TimingWish] = [{ runs: 20, warmUp: 2 }, usual];
/** What takes seconds. */
const seldom: TimingWish = { runs: 7, warmUp: 1 };
const noSearch = { budget: { steps: 0 } };

const planOf = (document: unknown, options: Parameters<typeof planQuilt>[1]): QuiltPlan => {
  const outcome = planQuilt(document, options);
  if (!outcome.ok) throw new Error(`the bench document is refused: ${outcome.problems[0]?.code}`);
  return outcome.value;
};

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** Cloth of open length in the document's unit; sheets are counted beside it, for a length says nothing of them. */
const clothRow = (label: string, plan: QuiltPlan): readonly string[] => {
  const measures = plan.fabrics.map(({ laid }) =>
    'sheets' in laid
      ? { isSheets: true, used: laid.sheets.length, bound: laid.bound }
      : { isSheets: false, used: laid.layout.length as number, bound: laid.bound as number },
  );
  const lengths = measures.filter(({ isSheets }) => !isSheets);
  const sheets = measures.filter(({ isSheets }) => isSheets);
  const used = sum(lengths.map((one) => one.used));
  const bound = sum(lengths.map((one) => one.bound));
  const counted = (of: 'used' | 'bound') => (sheets.length > 0 ? ` + ${sum(sheets.map((one) => one[of]))} sheets` : '');
  const unit = plan.quilt.unit;
  return [
    label,
    `${used.toFixed(3)} ${unit}${counted('used')}`,
    `${bound.toFixed(3)} ${unit}${counted('bound')}`,
    bound === 0 ? '' : `${((100 * (used - bound)) / bound).toFixed(2)} %`,
    `${measures.filter((one) => one.used - one.bound < 1e-9).length} of ${measures.length}`,
    `${plan.time.seams}`,
  ];
};

/** Every example, planned with the solver. */
export const examplePlans = (solver: IntegerSolver): readonly ExamplePlan[] =>
  examples.map(({ name, text }) => ({ name, plan: planOf(text, { solver }) }));

export const printPlans = async (solver: IntegerSolver): Promise<void> => {
  console.log('Cloth used, all cloths of a quilt together, against the bound that no layout beats\n');
  table([
    ['quilt', 'cloth', 'bound', 'gap', 'least proven', 'seams'],
    ...examples.flatMap(({ name, text }) => [
      clothRow(`${name}, heuristics alone`, planOf(text, noSearch)),
      clothRow(`${name}, search`, planOf(text, {})),
      clothRow(`${name}, search and solver`, planOf(text, { solver })),
    ]),
  ]);

  const chance = chanceFrom(1);
  const numbers = Array.from({ length: 100_000 }, chance);
  const baseline = () => numbers.toSorted((a, b) => a - b);

  const timeRow = (label: string, { medianMs, spreadMs }: Timing, target = ''): readonly string[] => [
    label,
    ms(medianMs),
    `${ms(spreadMs[0])} to ${ms(spreadMs[1])}`,
    target,
  ];

  const throwPlan = planOf(throwText, noSearch);
  const distinct = cabinTop({ columns: 20, rows: 20, blocks: 'distinct' });
  const one = cabinTop({ columns: 20, rows: 20, blocks: 'one' });
  const growth: (readonly [number, Timing])[] = [];
  for (const times of [1, 2, 4, 8]) {
    const document = cabinTop({ columns: 10, rows: 5 * times, blocks: 'distinct' });
    growth.push([50 * times, await timed(() => planOf(document, noSearch), seldom)]);
  }

  const folder = mkdtempSync(join(tmpdir(), 'seamstead-bench-'));
  const command = ['bin/seamstead.mjs', 'plan', 'examples/harvest-home-throw.quilt.json', '--out', folder];
  const wholeProcess = () => {
    const { status, stderr } = spawnSync(process.execPath, command, { cwd: root, encoding: 'utf8' });
    if (status !== 0) throw new Error(`the command failed: ${stderr}`);
  };

  console.log('\nTime, warm, median of 20 (7 where it takes seconds), first to third quartile\n');
  table([
    ['what', 'median', 'spread', 'target'],
    timeRow('baseline: sorting 100 000 numbers', await timed(baseline, many)),
    timeRow('throw: parse', await timed(() => parseQuilt(throwText), many)),
    timeRow('throw: plan, no layout search', await timed(() => planOf(throwText, noSearch), many), '60 ms'),
    timeRow('throw: plan, search', await timed(() => planOf(throwText, {}), few)),
    timeRow('throw: plan, search and solver', await timed(() => planOf(throwText, { solver }), few)),
    timeRow('throw: plan file', await timed(() => planFileText(throwPlan), many)),
    timeRow('throw: picture of the quilt', await timed(() => pictureOf(throwPlan), many)),
    timeRow('throw: pages as Typst and pictures', await timed(() => patternPages(throwPlan), many)),
    timeRow('throw: the command, whole process', await timed(wholeProcess, seldom), '2000 ms'),
    timeRow('400 cabins of one block: plan', await timed(() => planOf(one, noSearch), few), '300 ms'),
    timeRow('400 distinct cabins: plan', await timed(() => planOf(distinct, noSearch), seldom), '300 ms'),
    ...growth.map(([blocks, timing]) => timeRow(`${blocks} distinct cabins: plan`, timing)),
    timeRow('baseline again', await timed(baseline, many)),
  ]);
  rmSync(folder, { recursive: true });

  const slope = growthSlope(growth.map(([blocks, { medianMs }]) => [blocks, medianMs]));
  console.log(`\nGrowth over 1, 2, 4, 8 times the blocks: slope ${slope.toFixed(2)} (target at most 1.2)`);
};

const pictureOf = (plan: QuiltPlan): string =>
  drawQuilt({ plan, signs: clothSignsFor(plan), fitPt: [480, 480], fill: 'colour', alt: '' }).svg;
