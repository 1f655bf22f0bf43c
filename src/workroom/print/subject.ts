// What is looked at and printed, by the address of the view: the pattern, the handout of a block, the run sheets.
import { chapterTitles } from '#paper/words';
import type { Seen } from '#workroom/compute';
import type { Within } from '#workroom/room';

export type Subject =
  | { readonly kind: 'pattern' }
  | { readonly kind: 'handout'; readonly block: string }
  | { readonly kind: 'run-sheet' };

export const subjectIn = ([kind, block]: Within): Subject => {
  if (kind === 'handout' && block !== undefined) return { kind, block };
  return kind === 'run-sheet' ? { kind } : { kind: 'pattern' };
};

export const withinOf = (subject: Subject): Within => {
  switch (subject.kind) {
    case 'pattern':
      return [];
    case 'handout':
      return ['handout', subject.block];
    case 'run-sheet':
      return ['run-sheet'];
  }
};

/** As the command line names it. */
export const fileOf = (subject: Subject): string => {
  switch (subject.kind) {
    case 'pattern':
      return 'pattern.pdf';
    case 'handout':
      return `handout-${subject.block}.pdf`;
    case 'run-sheet':
      return 'run-sheet.pdf';
  }
};

/** All that a quilt has, with the one that is looked at, whatever the quilt has. */
export const subjectsOf = (
  prints: Seen<'prints'> | null,
  here: Subject = { kind: 'pattern' },
): readonly { readonly within: Within; readonly words: string }[] => {
  const handouts = prints?.handouts ?? [];
  const missing = here.kind === 'handout' && !handouts.some(({ id }) => id === here.block) ? [here.block] : [];
  return [
    { within: [], words: 'The pattern' },
    ...[...handouts, ...missing.map((id) => ({ id, title: id }))].map(({ id, title }) => ({
      within: ['handout', id],
      words: `${chapterTitles.handout}, ${title}`,
    })),
    { within: ['run-sheet'], words: `${chapterTitles['run-sheet']}, for who teaches` },
  ];
};
