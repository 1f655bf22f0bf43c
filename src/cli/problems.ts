// Problems and notes as lines for the terminal: the same words as on every page and screen.
import type { Note, Problem } from '#craft';
import type { Unit } from '#craft/measure';
import { counted, noteText, type ProblemText, problemText } from '#paper/words';

export const problemLines = (file: string, problems: readonly Problem[], more: number): string =>
  textLines(file, problems.map(problemText), more);

/** Each with its place, what is wrong, and what to do. */
export const textLines = (file: string, problems: readonly ProblemText[], more: number): string => {
  const count = problems.length + more;
  const lines = problems.map(
    ({ where, what, mend }) => `  ${where === '' ? 'the whole document' : where}\n    ${what}\n    ${mend}`,
  );
  const rest = more > 0 ? [`  … and ${more} more.`] : [];
  return [`${file}: ${counted(count, 'problem')}`, ...lines, ...rest].join('\n');
};

export const noteLines = (notes: readonly Note[], unit: Unit): string =>
  notes
    .map((note) => `  ${note.level === 'warning' ? 'Warning' : 'Note'} ${note.path}: ${noteText(note, unit)}`)
    .join('\n');
