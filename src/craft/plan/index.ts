// The plan: everything that is computed from one quilt document, as facts and codes, and what its maker should know of it.

export type { Note, NotMade, ReadingAlike } from './notes.ts';
export type * from './plan.ts';
