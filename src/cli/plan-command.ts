// seamstead plan FILE: the whole job on one document. Everything is made before anything is written, and
// each file is put in place whole.
import { join } from 'node:path';
import { planQuilt } from '#craft';
import { defaultBudget } from '#craft/cutting';
import { purchaseChanges } from '#craft/shopping';
import { type Chapter, type Hand, lessonsOf, planFileText, summaryText } from '#paper';
import { type QuiltFile, quiltFiles, sizesPlanned } from '#paper/files';
import { missingSignsText } from '#paper/words';
import { fileMade, openPress, type Paper } from '#print';
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
  /** For which pattern and handouts are drawn. */
  readonly hand: Hand;
  /** Print the plan alone and write nothing. */
  readonly json: boolean;
}

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
  const sized = sizesPlanned({ plan, ids, solver, say: progress.say });
  if (!sized.ok) {
    progress.clear();
    await print(terminal.stderr, problemLines(calledName(wishes.file), sized.problems, sized.more));
    return exits.problems;
  }
  progress.say('Looking what would change the purchase …');
  const changes = purchaseChanges({ plan, search: { steps: defaultBudget.steps, solver } });
  const { chapters, runSheet, hand } = wishes;
  const search = { steps: defaultBudget.steps, solver };
  const wished = { plan, sizes: sized.value, changes: () => changes, chapters, handouts, runSheet, hand, search };
  const { files, missingSigns } = await allMade(quiltFiles(wished), { paper: wishes.paper, say: progress.say });
  progress.clear();
  await writeAll(folder, files);
  await print(terminal.stdout, summaryText(plan, changes));
  if (missingSigns.length > 0) await print(terminal.stderr, `  Note: ${missingSignsText(missingSigns)}`);
  if (hand === 'left') await print(terminal.stdout, '\nThe pages are drawn for the left hand.');
  await print(terminal.stdout, `\nWritten to ${folder}: ${[...files.keys()].join(', ')}`);
  return exits.done;
};

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

const allMade = async (
  files: readonly QuiltFile[],
  { paper, say }: { readonly paper: Paper; readonly say: (what: string) => void },
) => {
  const made = new Map<string, string | Uint8Array>();
  const missing = new Set<string>();
  const press = openPress();
  try {
    for (const file of files) {
      say(`${file.making} …`);
      const { content, missingSigns } = await fileMade(file, { press, paper });
      made.set(file.name, content);
      for (const sign of missingSigns) missing.add(sign);
    }
    return { files: made, missingSigns: [...missing] };
  } finally {
    press.close();
  }
};
