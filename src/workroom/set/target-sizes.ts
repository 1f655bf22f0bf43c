// How many rows and columns, and how wide an outer border, bring a quilt to a wanted size?

export type Size = readonly [width: number, height: number];

export interface Drawn {
  /** Finished, without borders. */
  readonly middle: Size;
  readonly rows: number;
  readonly columns: number;
  /** How much the middle is longer than its lines of blocks, each with one sash: a sash where sashing goes round the outside too, less by one where not. */
  readonly over: Size;
  /** What the borders but the outer strip add, on both sides together. */
  readonly fixed: Size;
  /** Whether there is an outer strip already: it may change its width, and stays. */
  readonly strip: 'stays' | 'may-be-added';
}

export interface TargetChoice {
  readonly rows: number;
  readonly columns: number;
  /** Of the outer strip; 0 for none. */
  readonly border: number;
  readonly size: Size;
}

interface Wish {
  readonly drawn: Drawn;
  readonly wanted: Size;
  /** Widths of a border are whole steps. */
  readonly step: number;
  /** Widest border that is offered. */
  readonly widest: number;
  readonly most: number;
}

/** Counts more and fewer than the nearest that are looked at. */
const around = 3;
const shown = 3;

/**
 * The nearest first, each with other counts. Widths: W(n) = n · (middle − over) / count + over, and the border takes half of what
 * is missing, the same on all sides: the mean of what both ways want, in whole steps.
 */
export const targetSizes = (wish: Wish): readonly TargetChoice[] => {
  const { drawn, wanted } = wish;
  const choices: TargetChoice[] = [];
  for (const columns of countsNear(wish, 0)) {
    for (const rows of countsNear(wish, 1)) {
      const bare = ([columns, rows] as const).map((count, i) => lengthOf(drawn, i as 0 | 1, count)) as unknown as Size;
      const border = borderFor(wish, bare);
      if (border === null) continue;
      choices.push({ rows, columns, border, size: [bare[0] + 2 * border, bare[1] + 2 * border] });
    }
  }
  return choices.toSorted((a, b) => missOf(a, wanted) - missOf(b, wanted)).slice(0, shown);
};

/** With all borders but the outer strip. */
const lengthOf = ({ middle, rows, columns, over, fixed }: Drawn, way: 0 | 1, count: number): number => {
  const pitch = (middle[way] - over[way]) / (way === 0 ? columns : rows);
  return count * pitch + over[way] + fixed[way];
};

const countsNear = ({ drawn, wanted, most }: Wish, way: 0 | 1): readonly number[] => {
  const one = lengthOf(drawn, way, 1);
  const pitch = lengthOf(drawn, way, 2) - one;
  const nearest = 1 + Math.round((wanted[way] - one) / pitch);
  return Array.from({ length: 2 * around + 1 }, (_, i) => nearest - around + i).filter((n) => n >= 1 && n <= most);
};

/** Null where it would be wider than is offered, or nothing where there must be a strip. */
const borderFor = ({ drawn, wanted, step, widest }: Wish, bare: Size): number | null => {
  const missing = (wanted[0] - bare[0] + (wanted[1] - bare[1])) / 4;
  const border = Math.max(0, Math.round(missing / step) * step);
  // a strip of half a step is none
  if (border > widest + 1e-9 || (border === 0 && drawn.strip === 'stays')) return null;
  return border;
};

/** The larger difference counts most; of two alike the one with the narrower border. */
const missOf = ({ size, border }: TargetChoice, wanted: Size): number => {
  const [x, y] = [Math.abs(size[0] - wanted[0]), Math.abs(size[1] - wanted[1])];
  return Math.max(x, y) + Math.min(x, y) / 10 + border / 1000;
};
