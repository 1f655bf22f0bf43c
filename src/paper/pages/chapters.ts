// Which chapters can a pattern have? In the order of the job; each can be left out.

export const chapters = [
  'cover',
  'handout',
  'quilt',
  'cloth',
  'colourways',
  'cutting',
  'pieces',
  'blocks',
  'chains',
  'top',
  'finishing',
  'templates',
  'seam-test',
  'boards',
  'foundations',
  'swatches',
  'colouring',
  'labels',
  'glossary',
  'cautions',
  'corrections',
  'run-sheet',
] as const;

export type Chapter = (typeof chapters)[number];

/** What a pattern can have: all but the head of a handout, which belongs to one block. */
export const patternChapters: readonly Chapter[] = chapters.filter((chapter) => chapter !== 'handout');

/** Sheets to work on rather than to read, printed when they are asked for. */
const onRequest: readonly Chapter[] = [
  'chains',
  'seam-test',
  'boards',
  'foundations',
  'swatches',
  'colouring',
  'labels',
  'run-sheet',
];

/** What a pattern has when nothing else is asked for. */
export const usualChapters: readonly Chapter[] = patternChapters.filter((chapter) => !onRequest.includes(chapter));

/** @param of.foundations whether blocks of the quilt are pieced on them: their sheets are needed then */
export const usualFor = ({ foundations }: { readonly foundations: boolean }): readonly Chapter[] =>
  foundations ? patternChapters.filter((one) => one === 'foundations' || usualChapters.includes(one)) : usualChapters;
