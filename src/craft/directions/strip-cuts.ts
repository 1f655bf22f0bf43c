// In which order is one strip cut, what is the ruler set to, and what falls off? From the strip as it is laid out; by
// the same count as effort (docs/formulas.md#effort).
import type { Strip, StripPart } from '#craft/cutting';
import { partsToNarrow } from '#craft/ease';
import { type Length, tidy } from '#craft/measure';

/** Pieces of one size one below another in a part. */
export interface PartRun {
  /** Place in the cloth's list of pieces. */
  readonly of: number;
  /** As it lies: across, along. */
  readonly cut: readonly [Length, Length];
  readonly turned: boolean;
  readonly count: number;
  /** Strokes across the part below its pieces: one less than pieces where the last ends with the strip. */
  readonly below: number;
  /** It is narrower than the part, and the run above it is not of its width: one stroke along it. */
  readonly trimmed: boolean;
}

/** `narrow`: one stroke along the rest of the strip. `parts`: so many sub-cuts of one width, filled alike. */
export type StripCut =
  | { readonly cut: 'narrow'; readonly at: Length; readonly to: Length }
  | {
      readonly cut: 'parts';
      readonly at: Length;
      readonly width: Length;
      readonly count: number;
      /** One less than parts where the last ends with the cloth. */
      readonly strokes: number;
      readonly runs: readonly PartRun[];
    };

/** Cloth that falls off, from the strip's upper left corner. */
export interface Offcut {
  readonly from: 'end' | 'narrowing' | 'below' | 'beside';
  readonly at: readonly [Length, Length];
  readonly size: readonly [Length, Length];
}

export interface StripCuts {
  readonly cuts: readonly StripCut[];
  readonly offcuts: readonly Offcut[];
}

/** Where a strip ends on the right: a fold is no edge, and what ends at it is cut along it. */
export type RightEnd = 'edge' | 'fold';

const near = 1e-9;
const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= near;

/** @param width usable, of the cloth or sheet as it lies */
export const stripCutsFor = (
  strip: Strip,
  { width, end }: { readonly width: Length; readonly end: RightEnd },
): StripCuts => {
  const cuts: StripCut[] = [];
  const offcuts: Offcut[] = [];
  let rest = strip.height as number;
  let across = 0;
  const groups = likeParts(strip.parts);
  groups.forEach((parts, i) => {
    const toCome = groups.slice(i).flat();
    const tallest = Math.max(...toCome.map(depthOf));
    const least = partsToNarrow(rest, tallest);
    if (tallest < rest - near && toCome.filter((part) => depthOf(part) >= least).length >= 2) {
      cuts.push({ cut: 'narrow', at: tidy(across), to: tidy(tallest) });
      offcuts.push(offcut('narrowing', [across, tallest], [width - across, rest - tallest]));
      rest = tallest;
    }
    const [part] = parts as [StripPart];
    const at = across;
    across += parts.length * part.width;
    const endsCloth = end === 'edge' && i === groups.length - 1 && isSame(across, width);
    const beside = endsCloth ? parts.length - 1 : parts.length;
    const runs = runsIn(part, rest);
    cuts.push({ cut: 'parts', at: tidy(at), width: part.width, count: parts.length, strokes: beside, runs });
    parts.forEach((_, n) => {
      offcuts.push(...offcutsIn({ part, runs, rest, at: at + n * part.width }));
    });
  });
  if (width - across > near) offcuts.push(offcut('end', [across, 0], [width - across, rest]));
  return { cuts, offcuts };
};

const offcut = (from: Offcut['from'], at: readonly [number, number], size: readonly [number, number]): Offcut => ({
  from,
  at: [tidy(at[0]), tidy(at[1])],
  size: [tidy(size[0]), tidy(size[1])],
});

const depthOf = ({ pieces }: StripPart): number =>
  pieces.reduce((deepest, piece) => Math.max(deepest, piece.at + piece.cut[1]), 0);

/** Neighbours of one width that hold the same pieces. */
const likeParts = (parts: readonly StripPart[]): readonly (readonly StripPart[])[] => {
  const groups: StripPart[][] = [];
  let before = '';
  for (const part of parts) {
    const key = JSON.stringify([part.width, part.pieces.map(({ of, cut }) => [of, cut])]);
    if (key === before) groups.at(-1)?.push(part);
    else groups.push([part]);
    before = key;
  }
  return groups;
};

const runsIn = (part: StripPart, rest: number): readonly PartRun[] => {
  const runs: (PartRun & { readonly count: number })[] = [];
  let above = part.width as number;
  for (const piece of part.pieces) {
    const last = runs.at(-1);
    const below = isSame(piece.at + piece.cut[1], rest) ? 0 : 1;
    if (last !== undefined && last.of === piece.of && last.turned === piece.turned) {
      runs[runs.length - 1] = { ...last, count: last.count + 1, below: last.below + below };
    } else {
      const { of, cut, turned } = piece;
      const trimmed = cut[0] < part.width - near && !isSame(cut[0], above);
      runs.push({ of, cut, turned, count: 1, below, trimmed });
    }
    above = piece.cut[0];
  }
  return runs;
};

const offcutsIn = (of: {
  readonly part: StripPart;
  readonly runs: readonly PartRun[];
  readonly rest: number;
  readonly at: number;
}): readonly Offcut[] => {
  const { part, runs, rest, at } = of;
  const found: { y: number; width: number; height: number }[] = [];
  let y = 0;
  for (const { cut, count } of runs) {
    const height = count * cut[1];
    const last = found.at(-1);
    // runs of one width are trimmed with one stroke, and leave one piece
    if (last !== undefined && isSame(last.width, cut[0]) && isSame(last.y + last.height, y)) last.height += height;
    else found.push({ y, width: cut[0], height });
    y += height;
  }
  return [
    ...found
      .filter(({ width }) => part.width - width > near)
      .map((run) => offcut('beside', [at + run.width, run.y], [part.width - run.width, run.height])),
    ...(rest - y > near ? [offcut('below', [at, y], [part.width, rest - y])] : []),
  ];
};
