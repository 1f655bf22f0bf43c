// Where in the sewing one is: nowhere yet, at an entry, or at a step of it, seen on the board, at the machine or both, in large type
// or not. Each has its address.
import type { Within } from '#workroom/room';

export type SewSight = 'both' | 'board' | 'machine';

export interface SewPlace {
  readonly entry: string | null;
  /** From 1; null before the first seam. */
  readonly step: number | null;
  readonly sight: SewSight;
  /** To be read beside the machine: it fills the screen. */
  readonly type: 'usual' | 'large';
}

/** The chains over all blocks stand among the entries: their batches are numbered as steps are. No id of a block holds the sign. */
export const chainsEntry = '~chains';

/** Which round of the chains is looked at before any batch. */
export const roundIn = ([entry, round]: Within): number | null => {
  const found = entry === chainsEntry ? /^round-([1-9]\d{0,4})$/.exec(round ?? '') : null;
  return found === null ? null : Number(found[1]);
};

export const withinRound = (round: number): Within => [chainsEntry, `round-${round}`];

export const sewPlaceIn = ([entry, step, ...how]: Within): SewPlace => ({
  entry: entry ?? null,
  step: step !== undefined && /^[1-9]\d{0,4}$/.test(step) ? Number(step) : null,
  sight: how.includes('board') ? 'board' : how.includes('machine') ? 'machine' : 'both',
  type: how.includes('large') ? 'large' : 'usual',
});

/** The picture of how an entry is pressed: nothing chosen, or one of its steps; and which way of two. */
export interface PressingPlace {
  readonly entry: string;
  readonly chosen: number | null;
  readonly way: 'first' | 'other';
}

/** Null where the address is none of pressing. */
export const pressingPlaceIn = ([entry, what, ...more]: Within): PressingPlace | null => {
  if (entry === undefined || what !== 'pressing') return null;
  const chosen = more.find((word) => /^[1-9]\d{0,4}$/.test(word));
  return {
    entry,
    chosen: chosen === undefined ? null : Number(chosen),
    way: more.includes('other-way') ? 'other' : 'first',
  };
};

export const withinPressing = ({ entry, chosen, way }: PressingPlace): Within => [
  entry,
  'pressing',
  ...(way === 'other' ? ['other-way'] : []),
  ...(chosen === null ? [] : [String(chosen)]),
];

/** Where the sizes of an entry are written down that came out wrong. */
export const wrongSizeWithin = (entry: string): Within => [entry, wrongSize];

export const isWrongSize = ([, step]: Within): boolean => step === wrongSize;

const wrongSize = 'size';

export const withinOf = ({ entry, step, sight, type }: SewPlace): Within => [
  ...(entry === null ? [] : [entry]),
  ...(entry === null || step === null ? [] : [String(step)]),
  ...(step === null || sight === 'both' ? [] : [sight]),
  ...(step === null || type === 'usual' ? [] : ['large']),
];
