// What lies beside pieces that are cut round a motif: columns of other pieces, in a gap as high as the row.
import { length, tidy } from '#craft/measure';
import type { Demand, LaidPiece, StripPart } from './cloth.ts';

export interface Gap {
  readonly from: number;
  readonly to: number;
  readonly height: number;
  readonly demands: readonly Demand[];
  /** By demand: pieces still to be placed; what is placed is taken from it. */
  readonly left: number[];
}

interface Column {
  readonly of: number;
  readonly turned: boolean;
  readonly width: number;
  readonly each: number;
  readonly count: number;
  readonly share: number;
}

/** Column after column, each time the one that leaves least of its cloth, of equal ones the widest. */
export const filledBeside = (gap: Gap): readonly StripPart[] => {
  const parts: StripPart[] = [];
  let at = gap.from;
  for (let column = bestIn(gap, at); column !== null; column = bestIn(gap, at)) {
    const { of, turned, width, each, count } = column;
    const pieces = Array.from(
      { length: count },
      (_, n): LaidPiece => ({ at: tidy(n * each), cut: [length(width), length(each)], turned, of }),
    );
    parts.push({ at: tidy(at), width: length(width), pieces });
    gap.left[of] = (gap.left[of] ?? 0) - count;
    at += width;
  }
  return parts;
};

const bestIn = ({ to, height, demands, left }: Gap, at: number): Column | null => {
  let best: Column | null = null;
  demands.forEach(({ across, along, mayTurn }, of) => {
    for (const turned of mayTurn ? [false, true] : [false]) {
      const [width, each] = turned ? [along, across] : [across, along];
      const count = Math.min(left[of] ?? 0, Math.floor(height / each + 1e-9));
      if (count === 0 || width > to - at + 1e-9) continue;
      const share = (count * each) / height;
      const isBetter =
        best === null || share > best.share + 1e-9 || (share > best.share - 1e-9 && width > best.width + 1e-9);
      if (isBetter) best = { of, turned, width, each, count, share };
    }
  });
  return best;
};
