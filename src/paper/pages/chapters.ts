// Which chapters can a pattern have? In the order of the job; each can be left out.

export const chapters = ['cover', 'cloth', 'cutting', 'blocks', 'top', 'finishing', 'templates', 'cautions'] as const;

export type Chapter = (typeof chapters)[number];

/** What a whole pattern has when nothing else is asked for. */
export const usualChapters: readonly Chapter[] = chapters;
