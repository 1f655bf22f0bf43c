// A whole layout, one strip after the other: choose a height and a piece that must go in, fill the strip with the pieces left
// that are worth most, go on. Worths come from outside; chance chooses among heights.
import type { Chance } from '#ground/chance';
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import { type Pile, type Strip, takeFrom, timesWithin, worthOf } from './strip.ts';

export interface Manner {
  /** Of one piece of each kind. */
  readonly worth: Float64Array;
  readonly chance: Chance;
  /** Strips filled for each one that is kept. */
  readonly tries: number;
  /** How often, of one, a strip does not begin with a piece that needs the greatest height. */
  readonly stray: number;
  /** How often, of one, a strip is made higher by one more piece than it begins with, and again, where heights are free. */
  readonly rise: number;
  /** How often, of one, a strip need not hold the piece that set its height. */
  readonly loose: number;
  /** Whether a strip is cut again as long as pieces suffice. */
  readonly repeat: 'repeat' | 'once';
}

export interface Sequence {
  readonly lies: Lies;
  readonly filler: Filler;
  /** Pieces of each kind; all are laid, so it ends empty unless the sequence is given up. */
  readonly left: Int32Array;
  readonly manner: Manner;
  /** Layouts as long as this are given up, in units of height. */
  readonly limit: number;
  /** Strips that are filled up before new ones are begun. */
  readonly open?: readonly OpenStrip[];
}

/** A strip that some parts stand in already; their pieces are not among those left. */
export interface OpenStrip {
  readonly height: number;
  readonly kept: readonly Pile[];
}

/** @returns null when every layout that goes on from here reaches the limit */
export const sequenceOf = ({ lies, filler, left, manner, limit, open }: Sequence): readonly Strip[] | null => {
  const strips: Strip[] = [];
  let length = 0;
  let area = 0;
  for (const { height, kept } of open ?? []) {
    const strip = filler.fill({ left, worth: manner.worth, height, first: -1, kept });
    if (strip === null) continue;
    strips.push(strip);
    length += strip.height;
  }
  for (let k = 0; k < lies.kinds; k++) area += (left[k] as number) * (lies.area[k] as number);
  while (area > 0) {
    if (length + Math.ceil(area / lies.width - 1e-9) >= limit) return null;
    const strip = nextStrip({ lies, filler, left, manner, room: limit - length - 1 });
    const more = manner.repeat === 'repeat' ? timesWithin(strip, left) : 0;
    if (more > 0) takeFrom(strip, left, more);
    for (let i = 0; i <= more; i++) strips.push(strip);
    length += strip.height * (1 + more);
    area -= strip.filled * (1 + more);
  }
  return length < limit ? strips : null;
};

interface Next extends Omit<Sequence, 'limit' | 'open'> {
  /** Height that there is before the layout is given up. */
  readonly room: number;
}

/** How often, of one, where strips may rise at all, one is made as high as there is room: everything in one strip. */
const wholeShare = 0.2;
/** Strips higher than this take too long to fill to be tried on chance. */
const highestWhole = 1500;

/** The most worth for its height among so many strips filled; its pieces are taken. */
const nextStrip = ({ lies, filler, left, manner, room }: Next): Strip => {
  let best: Strip | null = null;
  let most = -1;
  for (let i = 0; i < manner.tries; i++) {
    const begin = beginning({ lies, left, manner, room });
    const strip = filler.fill({ left, worth: manner.worth, ...begin });
    if (strip === null) continue;
    takeFrom(strip, left, -1);
    const rate = worthOf(strip, manner.worth) / strip.height;
    if (rate > most) {
      most = rate;
      best = strip;
    }
  }
  if (best === null) throw new Error('a piece that is left fits no strip');
  takeFrom(best, left);
  return best;
};

/** Which piece a strip begins with, and how high it may be. */
const beginning = (of: Omit<Next, 'filler'>): { readonly height: number; readonly first: number } => {
  const { lies, left, manner, room } = of;
  const { chance } = manner;
  let needed = 0;
  for (let k = 0; k < lies.kinds; k++) if ((left[k] as number) > 0) needed = Math.max(needed, lies.flat[k] as number);
  const stray = chance() < manner.stray;
  const first = drawn(lies, chance, (lie) => {
    const kind = lies.kind[lie] as number;
    if ((left[kind] as number) === 0) return false;
    const tall = lies.tall[lie] as number;
    return stray ? tall >= needed || lies.flat[kind] === tall : tall === needed;
  });
  let height = lies.tall[first] as number;
  if (lies.stripHeights === 'any' && manner.rise > 0 && chance() < wholeShare && room < highestWhole)
    return { first, height: Math.max(height, room) };
  if (lies.stripHeights === 'any')
    while (chance() < manner.rise) {
      const above = drawn(lies, chance, (lie) => (left[lies.kind[lie] as number] as number) > (lie === first ? 1 : 0));
      if (above < 0) break;
      height += lies.tall[above] as number;
    }
  return { height, first: chance() < manner.loose ? -1 : first };
};

/** One of the ways of lying that qualify, each as likely; -1 when there is none. */
const drawn = (lies: Lies, chance: Chance, qualifies: (lie: number) => boolean): number => {
  let found = -1;
  let n = 0;
  for (let lie = 0; lie < lies.size; lie++) {
    if (!qualifies(lie)) continue;
    n++;
    if (chance() * n < 1) found = lie;
  }
  return found;
};
