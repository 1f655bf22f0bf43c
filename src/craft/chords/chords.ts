// Where a unit can be divided by one straight seam: a line made of patch edges that runs from edge to
// edge of the unit and through no patch. Units of a straight-seam block are convex, so a line that
// crosses none of the unit's patches meets the unit in a single seam.
import { type Arc, edgesOf } from '#ground/arc';
import { distance, offLine, type Point, type Polygon } from '#ground/plane';

export interface SeamLine {
  readonly from: Point;
  readonly to: Point;
  /** 0 level, 1 upright, 2 slanted. */
  readonly lie: 0 | 1 | 2;
  /** How far down (level) or right (upright and slanted) it lies, for reading order. */
  readonly place: number;
}

export interface Chord {
  readonly line: SeamLine;
  /** Patches above or left of the line, then those below or right of it; each in rising order. */
  readonly first: readonly number[];
  readonly second: readonly number[];
}

export interface Drawing {
  readonly lines: readonly SeamLine[];
  /** Lines that have an edge of the patch. */
  readonly linesOf: readonly (readonly number[])[];
  /** lines × patches: −1 above or left, 1 below or right, 0 crossed by the line. */
  readonly side: readonly Int8Array[];
}

/** @param arcs of each patch; none where it has no entry. No line runs along the chords that stand for them. */
export const drawingOf = (
  patches: readonly Polygon[],
  slack: number,
  arcs: readonly (readonly Arc[])[] = [],
): Drawing => {
  const known = new Map<string, number[]>();
  const lines: SeamLine[] = [];
  const linesOf = patches.map((points, patch) => {
    const mine = new Set<number>();
    for (const { from, to, arc } of edgesOf({ points, arcs: arcs[patch] ?? [] })) {
      if (arc !== null) continue;
      const line = seamLine(from, to);
      const key = lineKey(line, slack);
      const near = known.get(key) ?? [];
      const index = near.find((one) => isAlong(lines[one] as SeamLine, line, slack)) ?? lines.length;
      if (index === lines.length) {
        known.set(key, [...near, index]);
        lines.push(line);
      }
      mine.add(index);
    }
    return [...mine];
  });
  const side = lines.map((line) => sidesOf(line, patches, slack));
  return { lines, linesOf, side };
};

/** A chord whose unit is not divided yet: by which line, and how many patches lie above or left of it. */
export interface Split {
  readonly index: number;
  readonly line: SeamLine;
  readonly first: number;
}

/** Every chord of a unit, best first: level before upright before slanted, the lowest (or the one furthest right) first. */
export const chordsOf = (drawing: Drawing, unit: readonly number[]): readonly Chord[] =>
  splitsOf(drawing, unit)
    .toSorted(bestFirst)
    .map((split) => chordAlong(drawing, split, unit));

export const bestFirst = (a: Split, b: Split): number =>
  a.line.lie - b.line.lie || b.line.place - a.line.place || b.first - a.first;

/** The same chords as they are met, for who divides the unit along a few of them only. */
export const splitsOf = (drawing: Drawing, unit: readonly number[]): readonly Split[] => {
  const tried = new Uint8Array(drawing.lines.length);
  const found: Tallied[] = [];
  for (const patch of unit) {
    for (const index of drawing.linesOf[patch] as readonly number[]) {
      if (tried[index] === 1) continue;
      tried[index] = 1;
      const split = tallied(drawing, index, unit);
      if (split === null) continue;
      const same = found.findIndex((one) => isSameParts(one, split));
      if (same < 0) found.push(split);
      else found[same] = split;
    }
  }
  return found;
};

/** Lines that only nearly agree can make the same two parts: the sums tell parts apart without writing them out. */
interface Tallied extends Split {
  readonly sum: number;
  readonly squares: number;
}

const isSameParts = (a: Tallied, b: Tallied): boolean =>
  a.first === b.first && a.sum === b.sum && a.squares === b.squares;

/** Null where a line crosses a patch of the unit, or has none on one side. */
const tallied = (drawing: Drawing, index: number, unit: readonly number[]): Tallied | null => {
  const side = drawing.side[index] as Int8Array;
  let [first, sum, squares] = [0, 0, 0];
  for (const patch of unit) {
    const s = side[patch] as number;
    if (s === 0) return null;
    if (s > 0) continue;
    first++;
    sum += patch;
    squares += patch * patch;
  }
  return first === 0 || first === unit.length
    ? null
    : { index, line: drawing.lines[index] as SeamLine, first, sum, squares };
};

export const chordAlong = (drawing: Drawing, split: Split, unit: readonly number[]): Chord => {
  const side = drawing.side[split.index] as Int8Array;
  const first = new Array<number>(split.first);
  const second = new Array<number>(unit.length - split.first);
  let [above, below] = [0, 0];
  for (const patch of unit) {
    if ((side[patch] as number) < 0) first[above++] = patch;
    else second[below++] = patch;
  }
  return { line: split.line, first, second };
};

/** Directed so that what lies above (or left, for upright lines) is on its left hand. */
export const seamLine = (a: Point, b: Point): SeamLine => {
  const dx = Math.abs(b.x - a.x);
  const dy = Math.abs(b.y - a.y);
  const near = 1e-6 * Math.hypot(dx, dy);
  const lie = dy <= near ? 0 : dx <= near ? 1 : 2;
  // a level line runs right: above is on its left hand; an upright or slanted one runs up: left is on its left hand
  const runs = lie === 0 ? a.x < b.x : a.y > b.y;
  const [from, to] = runs ? [a, b] : [b, a];
  const place = lie === 0 ? a.y : lie === 1 ? a.x : (a.x * (b.y - a.y) - a.y * (b.x - a.x)) / (b.y - a.y);
  return { from, to, lie, place };
};

/** Whether the ends of one line lie on the other as nearly as its seam's patches must. */
const isAlong = (line: SeamLine, { from, to }: SeamLine, slack: number): boolean =>
  [from, to].every((p) => Math.abs(offLine(line.from, line.to, p)) < 2 * slack);

const lineKey = (line: SeamLine, slack: number): string => {
  const long = distance(line.from, line.to);
  const nx = (line.to.y - line.from.y) / long;
  const ny = -(line.to.x - line.from.x) / long;
  const away = nx * line.from.x + ny * line.from.y;
  return `${Math.floor(nx * 1e6 + 0.3183)},${Math.floor(ny * 1e6 + 0.3183)},${Math.floor(away / (8 * slack) + 0.3183)}`;
};

const sidesOf = (line: SeamLine, patches: readonly Polygon[], slack: number): Int8Array => {
  const { from, to } = line;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const near = 2 * slack * Math.hypot(dx, dy);
  const sides = new Int8Array(patches.length);
  for (let patch = 0; patch < patches.length; patch++) {
    let least = Number.POSITIVE_INFINITY;
    let most = Number.NEGATIVE_INFINITY;
    for (const { x, y } of patches[patch] as Polygon) {
      const off = dx * (y - from.y) - dy * (x - from.x);
      if (off < least) least = off;
      if (off > most) most = off;
    }
    sides[patch] = least >= -near ? 1 : most <= near ? -1 : 0;
  }
  return sides;
};
