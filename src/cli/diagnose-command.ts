// seamstead diagnose FILE --block BLOCK --measured SIZES: why a block, or the top, comes out the wrong size, and what can be saved; or
// --seam-test SIZES: how wide three strips say that the seams are.
import { type BlockPlan, planQuilt, type QuiltPlan } from '#craft';
import { diagnose, diagnoseTop, readSeamTest } from '#craft/diagnosis';
import { type Length, length, type Unit, usualSewing } from '#craft/measure';
import { toNumber } from '#ground/exact';
import {
  blockPartNames,
  diagnosisText,
  seamTestText,
  toDiagnosisFile,
  topPartNames,
  toSeamTestFile,
} from '#paper/diagnosis';
import { instead, readingProblemText, seamTestProblemText } from '#paper/words';
import { calledName, readDocument } from './documents.ts';
import { problemLines, textLines } from './problems.ts';
import { exits, print, type Terminal, WrongUse } from './terminal.ts';

export interface DiagnoseWishes {
  /** Null: none, which does for a seam test. */
  readonly file: string | null;
  readonly block: string | null;
  /** As written. */
  readonly measured: string | null;
  readonly seamTest: string | null;
  readonly json: boolean;
}

export const runDiagnose = async (wishes: DiagnoseWishes, terminal: Terminal): Promise<number> => {
  const { measured, seamTest } = wishes;
  if ((measured === null) === (seamTest === null)) {
    throw new WrongUse(
      'Say what was measured: --measured "1: 3 3/8 x 2 1/2; 4: 4 7/16" of a block, or --seam-test "middle 15/16, total 3 3/8" of three strips.',
    );
  }
  if (wishes.file === null && measured !== null)
    throw new WrongUse('Name the document of the quilt whose block was measured.');
  const plan = wishes.file === null ? null : await planOf(wishes.file, terminal);
  if (plan === null && wishes.file !== null) return exits.problems;
  const sewn = plan === null ? usualIn('in') : sewnIn(plan);
  if (seamTest !== null) return testSeam(seamTest, { ...sewn, json: wishes.json }, terminal);
  return diagnoseBlock({ ...wishes, measured: measured as string, ...sewn, plan: plan as QuiltPlan }, terminal);
};

interface Sewn {
  readonly seam: Length;
  readonly unit: Unit;
}

const usualIn = (unit: Unit): Sewn => ({ seam: length(toNumber(usualSewing[unit].seam)), unit });

const sewnIn = ({ quilt: { seam, unit } }: QuiltPlan): Sewn => ({ seam: length(toNumber(seam)), unit });

/** Nothing is bought here: layouts are not searched for. */
const planOf = async (file: string, terminal: Terminal): Promise<QuiltPlan | null> => {
  const planned = planQuilt(await readDocument(file, terminal), { budget: { steps: 0 }, fold: 'where-asked' });
  if (planned.ok) return planned.value;
  await print(terminal.stderr, problemLines(calledName(file), planned.problems, planned.more));
  return null;
};

const testSeam = async (
  written: string,
  { seam, unit, json }: Sewn & { readonly json: boolean },
  terminal: Terminal,
): Promise<number> => {
  const found = readSeamTest(written, { seam, unit });
  if (!found.ok) {
    await print(terminal.stderr, textLines('--seam-test', found.problems.map(seamTestProblemText), found.more));
    return exits.wrongUse;
  }
  const text = json
    ? JSON.stringify(toSeamTestFile(found.value, seam, unit), null, 2)
    : seamTestText(found.value, seam, unit);
  await print(terminal.stdout, text);
  return exits.done;
};

const diagnoseBlock = async (
  of: DiagnoseWishes & Sewn & { readonly measured: string; readonly plan: QuiltPlan },
  terminal: Terminal,
): Promise<number> => {
  const block = isTop(of.plan, of) ? null : blockIn(of.plan, of);
  const { top, blocks } = of.plan;
  const found = block === null ? diagnoseTop({ ...of, top, blocks }) : diagnose({ ...of, block });
  if (!found.ok) {
    await print(terminal.stderr, textLines('--measured', found.problems.map(readingProblemText), found.more));
    return exits.wrongUse;
  }
  const names = block === null ? topPartNames(of.plan) : blockPartNames;
  const text = of.json
    ? JSON.stringify(toDiagnosisFile(block?.id ?? 'top', found.value, names), null, 2)
    : diagnosisText(block?.title ?? 'The top', found.value, names);
  await print(terminal.stdout, text);
  return exits.done;
};

/** A block of that name is itself. */
const isTop = ({ blocks, top }: QuiltPlan, { block }: DiagnoseWishes): boolean =>
  block === 'top' && top.steps.length > 0 && blocks.every(({ id }) => id !== block);

/** Sewn blocks only; the one there is, where none is named. */
const blockIn = (plan: QuiltPlan, { block, file }: DiagnoseWishes): BlockPlan => {
  const sewn = plan.blocks.filter(({ steps }) => steps.length > 0);
  const known = [...new Set(sewn.map(({ id }) => id))];
  if (block === null) {
    const [only, ...others] = known;
    if (only === undefined) throw new WrongUse(`${file} has no block that is sewn of pieces.`);
    if (others.length > 0)
      throw new WrongUse(`Say which block was measured, with --block; or --block top. ${instead('', known)}`);
  }
  const found = sewn.find(({ id }) => id === (block ?? known[0]));
  if (found === undefined)
    throw new WrongUse(`The quilt has no sewn block “${block}”. ${instead(block as string, known)}`);
  return found;
};
