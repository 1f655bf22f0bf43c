// seamstead plan FILE: the whole job on one document. Everything is made before anything is written, and
// each file is put in place whole.
import { join } from 'node:path';
import { planQuilt, planSize, type QuiltPlan } from '#craft';
import { defaultBudget } from '#craft/cutting';
import { type PurchaseChange, purchaseChanges } from '#craft/shopping';
import type { IntegerSolver } from '#craft/strips';
import {
  type Chapter,
  clothSignsFor,
  cuttingCsv,
  drawQuilt,
  handoutPages,
  lessonsOf,
  patternPages,
  planFileText,
  summaryText,
} from '#paper';
import { quiltAlt } from '#paper/pages';
import { sizeText } from '#paper/words';
import { openPress, type Paper, pngOf } from '#print';
import { openSolver } from '#solver';
import { calledName, nameOf, readDocument } from './documents.ts';
import { problemLines } from './problems.ts';
import { exits, print, progressOn, type Terminal, WrongUse } from './terminal.ts';
import { writeAll } from './write-all.ts';

export interface PlanWishes {
  readonly file: string;
  /** Folder for the files; null: out/NAME here. */
  readonly out: string | null;
  readonly paper: Paper;
  /** Of the pattern; null: the usual ones. */
  readonly chapters: readonly Chapter[] | null;
  /** Ids of blocks to print a handout of, or every block to sew. */
  readonly handouts: readonly string[] | 'all';
  /** Ids of other sizes to print in the same pattern, or every one that the document has. */
  readonly sizes: readonly string[] | 'all';
  /** Whether the educator's run sheets are printed. */
  readonly runSheet: 'printed' | 'none';
  /** Print the plan alone and write nothing. */
  readonly json: boolean;
}

const picturePt = [720, 720] as const;
const pictureWidthPx = 1600;

export const runPlan = async (wishes: PlanWishes, terminal: Terminal): Promise<number> => {
  const progress = progressOn(terminal.stderr);
  const text = await readDocument(wishes.file, terminal);
  progress.say('Planning …');
  const solver = await openSolver();
  const planned = planQuilt(text, { solver });
  progress.clear();
  if (!planned.ok) {
    await print(terminal.stderr, problemLines(calledName(wishes.file), planned.problems, planned.more));
    return exits.problems;
  }
  const plan = planned.value;
  if (wishes.json) {
    await print(terminal.stdout, planFileText(plan));
    return exits.done;
  }
  const folder = wishes.out ?? join('out', nameOf(wishes.file));
  const handouts = chosenOf({
    wanted: wishes.handouts,
    all: lessonsOf(plan),
    option: '--handout',
    noun: 'block to sew',
  });
  const ids = chosenOf({
    wanted: wishes.sizes,
    all: plan.quilt.sizes.map(({ id }) => id),
    option: '--sizes',
    noun: 'size',
  });
  const sizes: SizedPlan[] = [];
  for (const id of ids) {
    progress.say(`Planning the size ${id} …`);
    const sized = planSize({ quilt: plan.quilt, id, options: { solver } });
    if (!sized.ok) {
      progress.clear();
      await print(terminal.stderr, problemLines(calledName(wishes.file), sized.problems, sized.more));
      return exits.problems;
    }
    sizes.push({ id, title: plan.quilt.sizes.find((size) => size.id === id)?.title ?? id, plan: sized.value });
  }
  progress.say('Looking what would change the purchase …');
  const changes = purchaseChanges({ plan, search: { steps: defaultBudget.steps, solver } });
  const { files, missingSigns } = await filesOf({ plan, sizes, changes, wishes, handouts, solver }, progress.say);
  progress.clear();
  await writeAll(folder, files);
  await print(terminal.stdout, summaryText(plan, changes));
  if (missingSigns.length > 0) {
    const signs = missingSigns.join(' ');
    await print(
      terminal.stderr,
      `  Note: the pattern's fonts have no sign for ${signs}; an empty square stands in its place.`,
    );
  }
  await print(terminal.stdout, `\nWritten to ${folder}: ${[...files.keys()].join(', ')}`);
  return exits.done;
};

interface SizedPlan {
  readonly id: string;
  readonly title: string;
  readonly plan: QuiltPlan;
}

interface Planned {
  readonly plan: QuiltPlan;
  readonly sizes: readonly SizedPlan[];
  readonly changes: readonly PurchaseChange[];
  readonly wishes: PlanWishes;
  readonly handouts: readonly string[];
  readonly solver: IntegerSolver;
}

/** @throws WrongUse where one is wanted that the quilt has not */
const chosenOf = (of: {
  readonly wanted: readonly string[] | 'all';
  readonly all: readonly string[];
  readonly option: string;
  readonly noun: string;
}): readonly string[] => {
  const { wanted, all } = of;
  if (wanted === 'all') return all;
  const unknown = wanted.filter((id) => !all.includes(id));
  if (unknown.length === 0) return wanted;
  throw new WrongUse(
    `${of.option}: this quilt has no ${of.noun} ${unknown.join(', ')}. ${all.length === 0 ? 'It has none at all.' : `It has ${all.join(', ')}.`}`,
  );
};

const filesOf = async ({ plan, sizes, changes, wishes, handouts, solver }: Planned, say: (what: string) => void) => {
  const { paper, chapters } = wishes;
  const files = new Map<string, string | Uint8Array>();
  say('Writing the plan …');
  files.set('plan.json', planFileText(plan));
  files.set('cutting.csv', cuttingCsv(plan));
  for (const { id, plan: own } of sizes) {
    files.set(`plan-${id}.json`, planFileText(own));
    files.set(`cutting-${id}.csv`, cuttingCsv(own));
  }
  say('Drawing the quilt …');
  const { svg } = drawQuilt({
    plan,
    signs: clothSignsFor(plan),
    fitPt: picturePt,
    fill: 'colour',
    alt: quiltAlt(plan, finishedSize(plan)),
  });
  files.set('quilt.svg', svg);
  files.set('quilt.png', await pngOf(svg, { widthPx: pictureWidthPx }));
  say('Printing the pattern …');
  const press = openPress();
  try {
    const { bytes, missingSigns } = await press.pdf(
      patternPages(plan, { changes, sizes, ...(chapters === null ? {} : { chapters }) }),
      { paper },
    );
    files.set('pattern.pdf', bytes);
    for (const block of handouts) {
      say(`Printing the handout of ${block} …`);
      const search = { steps: defaultBudget.steps, solver };
      const pages = handoutPages({ plan, block, search });
      if (pages !== null) files.set(`handout-${block}.pdf`, (await press.pdf(pages, { paper })).bytes);
    }
    if (wishes.runSheet === 'printed') {
      say('Printing the run sheets …');
      const pages = patternPages(plan, { chapters: ['run-sheet'] });
      files.set('run-sheet.pdf', (await press.pdf(pages, { paper })).bytes);
    }
    return { files, missingSigns };
  } finally {
    press.close();
  }
};

const finishedSize = ({ quilt, top }: QuiltPlan): string => sizeText([top.set.width, top.set.height], quilt.unit);
