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
  'top',
  'finishing',
  'templates',
  'boards',
  'swatches',
  'colouring',
  'labels',
  'glossary',
  'cautions',
  'corrections',
  'run-sheet',
] as const;

export type Chapter = (typeof chapters)[number];

/** Sheets to work on rather than to read, printed when they are asked for. */
const onRequest: readonly Chapter[] = ['boards', 'swatches', 'colouring', 'labels', 'run-sheet', 'handout'];

/** What a pattern has when nothing else is asked for. */
export const usualChapters: readonly Chapter[] = chapters.filter((chapter) => !onRequest.includes(chapter));
