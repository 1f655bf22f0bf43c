// Good strips that the search came across, however they were found: what an integer program may choose from.
import { giveKey, type Strip, worthOf } from './strip.ts';

export interface Pool {
  readonly add: (strip: Strip) => void;
  /** The so many strips whose pieces are worth most for their height, best first. */
  readonly best: (worth: Float64Array, most: number) => readonly Strip[];
  /** Grows with every strip that was not known. */
  readonly size: () => number;
}

/** Beyond so many strips the half that is worth least is forgotten. */
const mostKept = 6000;

export const poolFor = (worthNow: () => Float64Array): Pool => {
  let known = new Map<string, Strip>();
  let seen = 0;
  const ranked = (worth: Float64Array): readonly Strip[] => {
    const all = [...known.values()].map((strip) => ({ strip, excess: strip.height - worthOf(strip, worth) }));
    return all.sort((a, b) => a.excess - b.excess).map((of) => of.strip);
  };
  return {
    add: (strip) => {
      const key = giveKey(strip);
      if (known.has(key)) return;
      known.set(key, strip);
      seen++;
      if (known.size <= mostKept) return;
      known = new Map(
        ranked(worthNow())
          .slice(0, mostKept / 2)
          .map((s) => [giveKey(s), s]),
      );
    },
    best: (worth, most) => ranked(worth).slice(0, most),
    size: () => seen,
  };
};
