// seamstead largest FILE --have CLOTH=AMOUNT: the largest quilt of a design that the cloth at hand would make.
import { basename, dirname } from 'node:path';
import { planQuilt } from '#craft';
import { defaultBudget } from '#craft/cutting';
import { toDocument } from '#craft/design';
import { type LargestFound, type LargestTask, readCupboard, searchLargest, type WrittenAmount } from '#craft/shopping';
import { largestText, rowsText, toLargestFile } from '#paper/shopping';
import { cupboardProblemText } from '#paper/words';
import { openSolver } from '#solver';
import { calledName, readDocument } from './documents.ts';
import { problemLines } from './problems.ts';
import { exits, print, progressOn, type Terminal, WrongUse } from './terminal.ts';
import { writeAll } from './write-all.ts';

export interface LargestWishes {
  readonly file: string;
  /** As written: "oat=2 1/2 yd". */
  readonly have: readonly string[];
  /** File for the document of the largest quilt; null: none. */
  readonly out: string | null;
  readonly json: boolean;
}

/** Layouts searched where level heuristics do not come to an answer; a third of a plan's. */
const steps = Math.ceil(defaultBudget.steps / 3);

export const runLargest = async (wishes: LargestWishes, terminal: Terminal): Promise<number> => {
  const progress = progressOn(terminal.stderr);
  if (wishes.have.length === 0) {
    throw new WrongUse('No cloth at hand is named. Name each with --have, like --have oat="2 1/2 yd".');
  }
  const have = wishes.have.map(writtenAmount);
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
  const cupboard = readCupboard(have, plan.quilt);
  if (!cupboard.ok) throw new WrongUse(cupboard.problems.map(problemLine).join('\n'));
  const found = searched({ plan, cupboard: cupboard.value, search: { steps, solver } }, progress.say);
  progress.clear();
  await print(
    terminal.stdout,
    wishes.json ? JSON.stringify(toLargestFile(plan, found), null, 2) : largestText(plan, found),
  );
  if (wishes.out !== null) await writeDocument(wishes.out, found, terminal);
  return exits.done;
};

const searched = (task: LargestTask, say: (what: string) => void): LargestFound => {
  const search = searchLargest(task);
  for (let at = search.next(); ; at = search.next()) {
    if (at.done) return at.value;
    say(`Trying ${rowsText(at.value)} …`);
  }
};

const writtenAmount = (written: string): WrittenAmount => {
  const [, fabric, amount] = /^([^=]+)=(.+)$/su.exec(written) ?? [];
  if (fabric === undefined || amount === undefined) {
    throw new WrongUse(
      `--have ${written}: this does not say which cloth, and how much of it.\nWrite the cloth's id, = and an amount, like --have oat="2 1/2 yd".`,
    );
  }
  return { fabric: fabric.trim(), amount: amount.trim(), path: `--have ${written}` };
};

const problemLine = (problem: Parameters<typeof cupboardProblemText>[0]): string => {
  const { where, what, mend } = cupboardProblemText(problem);
  return `${where}\n  ${what}\n  ${mend}`;
};

const writeDocument = async (out: string, { best }: LargestFound, terminal: Terminal): Promise<void> => {
  if (best === null) {
    await print(terminal.stderr, `Nothing is written to ${out}: the cloth does for no size.`);
    return;
  }
  const document = `${JSON.stringify(toDocument(best.quilt), null, 2)}\n`;
  await writeAll(dirname(out), new Map([[basename(out), document]]));
  await print(terminal.stderr, `Its document is written to ${out}.`);
};
