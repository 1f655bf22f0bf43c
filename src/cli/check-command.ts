// seamstead check FILE…: what is wrong with each document, if anything; nothing is written.
import { planQuilt } from '#craft';
import { calledName, readDocument } from './documents.ts';
import { noteLines, problemLines } from './problems.ts';
import { exits, NotText, print, type Terminal, WrongUse } from './terminal.ts';

export const runCheck = async (files: readonly string[], terminal: Terminal): Promise<number> => {
  if (files.filter((file) => file === '-').length > 1) throw new WrongUse('Standard input (-) can be read once only.');
  let exit: number = exits.done;
  for (const file of files) {
    const name = calledName(file);
    const text = await readDocument(file, terminal).catch((error: unknown) => {
      if (error instanceof NotText) return error;
      throw error;
    });
    if (text instanceof NotText) {
      await print(terminal.stdout, text.message);
      exit = exits.problems;
      continue;
    }
    const outcome = planQuilt(text, { budget: { steps: 0 } });
    if (outcome.ok) {
      const { notes, quilt } = outcome.value;
      await print(
        terminal.stdout,
        notes.length === 0 ? `${name}: no problems` : `${name}: no problems\n${noteLines(notes, quilt.unit)}`,
      );
    } else {
      await print(terminal.stdout, problemLines(name, outcome.problems, outcome.more));
      exit = exits.problems;
    }
  }
  return exit;
};
