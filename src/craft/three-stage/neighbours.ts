// A layout made shorter by laying a few of its strips anew: their pieces are set free and filled into strips again, with
// other worths; what is not longer is kept.
import type { Chance } from '#ground/chance';
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import { type Manner, type OpenStrip, sequenceOf } from './sequence.ts';
import { lengthOfStrips, type Strip, stripOf, takeFrom, worthOf } from './strip.ts';

export interface Relaying {
  readonly lies: Lies;
  readonly filler: Filler;
  readonly chance: Chance;
  /** Length that a piece of each kind costs, before chance has its say. */
  readonly worth: Float64Array;
  /** The layout; strips are replaced in place. */
  readonly strips: Strip[];
  /** By how much the layout may get longer, in units of height. */
  readonly slack: number;
  /** Told every strip that is kept. */
  readonly seen: (strip: Strip) => void;
}

/** One attempt. @returns by how much the layout got shorter, in units of height; null when it stayed as it was */
export const relaid = ({ lies, filler, chance, worth, strips, slack, seen }: Relaying): number | null => {
  const left = new Int32Array(lies.kinds);
  const out = someOf({ strips, worth, chance });
  const { open, height } = setFree({ lies, chance, strips: out.map((i) => strips[i] as Strip), left });
  const manner: Manner = {
    worth: shaken(worth, chance, shares[Math.floor(chance() * shares.length)] as number),
    chance,
    tries: 1 + Math.floor(chance() * 3),
    stray: chance() < 0.5 ? 0 : chance() * 0.6,
    rise: chance() < 0.5 ? 0 : chance() * 0.7,
    repeat: 'once',
    loose: 0.2,
  };
  const fresh = sequenceOf({ lies, filler, left, manner, limit: height + 1 + slack, open });
  if (fresh === null) return null;
  out.sort((a, b) => b - a);
  for (const i of out) {
    strips[i] = strips.at(-1) as Strip;
    strips.pop();
  }
  for (const strip of fresh) {
    strips.push(strip);
    seen(strip);
  }
  return height - lengthOfStrips(fresh);
};

/** How often, of one, some parts of the strips stay where they are. Measured on reference problems of few high strips. */
const partlyShare = 0.5;
/** How often, of one, a strip that parts stay in is as high as it was; else as high as these. */
const sameHeightShare = 0.7;

/** The pieces of these strips are set free, all of them or those of some parts. */
const setFree = (of: {
  readonly lies: Lies;
  readonly chance: Chance;
  readonly strips: readonly Strip[];
  /** Raised by what is set free. */
  readonly left: Int32Array;
}): { readonly open: readonly OpenStrip[]; readonly height: number } => {
  const { lies, chance, strips, left } = of;
  const keeping = chance() < partlyShare ? 0.2 + 0.75 * chance() : 0;
  const open: OpenStrip[] = [];
  for (const strip of strips) {
    takeFrom(strip, left, -1);
    const kept = keeping === 0 ? [] : strip.piles.filter(() => chance() < keeping);
    if (kept.length === 0) continue;
    const stays = stripOf(lies, kept);
    takeFrom(stays, left);
    open.push({ kept, height: chance() < sameHeightShare ? strip.height : stays.height });
  }
  return { open, height: lengthOfStrips(strips) };
};

/** How far worths are shaken, drawn anew for each attempt; chosen by trying on a dozen problems. */
const shares: readonly number[] = [0, 0.05, 0.15, 0.4];

/** A few strips, rather those whose pieces are worth little for their height: there is length to be gained. */
const someOf = ({ strips, worth, chance }: Pick<Relaying, 'strips' | 'worth' | 'chance'>): number[] => {
  const most = Math.min(strips.length, 2 + Math.floor(chance() * chance() * 6));
  const out: number[] = [];
  const excess = strips.map((strip) => Math.max(0, strip.height - worthOf(strip, worth)));
  const evenly = 0.5 * (excess.reduce((a, b) => a + b, 0) / strips.length) + 1e-9;
  let all = excess.reduce((a, b) => a + b + evenly, 0);
  while (out.length < most) {
    let at = chance() * all;
    let i = 0;
    for (; i < strips.length - 1; i++) {
      if (out.includes(i)) continue;
      at -= (excess[i] as number) + evenly;
      if (at < 0) break;
    }
    if (out.includes(i)) continue;
    out.push(i);
    all -= (excess[i] as number) + evenly;
  }
  return out;
};

/**
 * Worths changed by chance, each by up to about so great a share, up or down as much. Powers of e differ in their last place from
 * one engine to another, and with them the layout that is found; this fraction is near to them, and the same everywhere.
 */
export const shaken = (worth: Float64Array, chance: Chance, share: number): Float64Array =>
  share === 0
    ? worth
    : worth.map((v) => {
        const half = share * (chance() - 0.5);
        return (v * (1 + half)) / (1 - half);
      });
