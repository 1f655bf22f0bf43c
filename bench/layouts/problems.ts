// Layout problems of a quilt's size and of a kit's, drawn by chance: the same seed always gives the same problem. Units are
// eighths of an inch on cloth with 42 in of width.

import type { Job, Kind } from '#craft/strips';
import { type Chance, chanceFrom } from '#ground/chance';

export type Turning = 'free' | 'fixed';

export interface QuiltClass {
  readonly name: string;
  readonly kinds: number;
  /** Fewest and most pieces of all kinds together. */
  readonly pieces: readonly [least: number, most: number];
}

/** The classes that the figures are given for. */
export const quiltClasses: readonly QuiltClass[] = [
  { name: '10 kinds', kinds: 10, pieces: [20, 50] },
  { name: '20 kinds', kinds: 20, pieces: [110, 260] },
  { name: '40 kinds', kinds: 40, pieces: [370, 560] },
];

/** 42 in, in eighths. */
export const clothWidth = 336;

/** 1/8 yd; squaring takes 1 in at either end. In eighths. */
export const shopStep = { step: 36, before: 16 } as const;

export interface ProblemWish {
  readonly seed: number;
  readonly turning: Turning;
}

/** One cloth of a quilt: squares, rectangles and strips of sides that a quilter cuts, many of one height. */
export const quiltProblem = (wish: ProblemWish & Omit<QuiltClass, 'name'>): Job => {
  const { kinds, pieces, seed, turning } = wish;
  const chance = chanceFrom(seed);
  const sizes = sizesFor(kinds, chance);
  const total = Math.max(kinds, between(chance, pieces));
  const counts = sharesOf({ total, parts: kinds, chance });
  return jobOf({ sizes, counts, turning });
};

/** A quilt's cloth with four borders cut along the selvage: longer than the cloth is wide, so that they never turn. */
export const borderProblem = ({ seed, turning }: ProblemWish): Job => {
  const chance = chanceFrom(seed);
  const sizes = sizesFor(12, chance);
  const counts = sharesOf({ total: between(chance, [80, 150]), parts: 12, chance });
  const width = 4 * between(chance, [5, 15]);
  const long = 8 * between(chance, [48, 80]);
  const short = long - 8 * between(chance, [2, 5]);
  return jobOf({ sizes: [...sizes, [width, long], [width, short]], counts: [...counts, 2, 2], turning });
};

/** All kits of a run cut together: every count is a multiple of the number of kits, 6000 to 8400 pieces in all. */
export const kitProblem = ({ kinds, seed, turning }: ProblemWish & { readonly kinds: number }): Job => {
  const chance = chanceFrom(seed);
  const sizes = sizesFor(kinds, chance);
  const kits = 20 * between(chance, [2, 6]);
  const each = sharesOf({ total: Math.floor(between(chance, [6000, 8400]) / kits), parts: kinds, chance });
  return jobOf({ sizes, counts: each.map((count) => count * kits), turning });
};

/** The same pieces many times over. */
export const timesOver = (job: Job, times: number): Job => ({
  ...job,
  kinds: job.kinds.map((kind) => ({ ...kind, count: kind.count * times })),
});

type Size = readonly [width: number, height: number];

/** A whole number from least to most. */
const between = (chance: Chance, [least, most]: readonly [number, number]): number =>
  least + Math.floor(chance() * (most - least + 1));

/** Finished sizes on half inches with a seam on both sides; squares cut into triangles; quarter inches; a few large ones. */
const sideBy = (chance: Chance): number => {
  const draw = chance();
  if (draw < 0.5) return 4 * between(chance, [3, 18]);
  if (draw < 0.75) return 4 * between(chance, [3, 19]) + 3;
  if (draw < 0.9) return 2 * between(chance, [7, 38]);
  return 4 * between(chance, [18, 25]);
};

/** Different sizes, told apart even when turned; about one in three is square. */
const sizesFor = (kinds: number, chance: Chance): readonly Size[] => {
  const sides = Array.from({ length: 4 + Math.ceil(0.8 * kinds) }, () => sideBy(chance));
  const known = new Set<string>();
  const sizes: Size[] = [];
  const side = (): number => sides[Math.floor(chance() * sides.length)] as number;
  for (let tries = 0; sizes.length < kinds; tries++) {
    if (tries % 50 === 49) sides.push(sideBy(chance));
    const width = side();
    const height = chance() < 0.35 ? width : side();
    const key = [width, height].sort((a, b) => a - b).join('x');
    if (!known.has(key)) sizes.push([width, height]);
    known.add(key);
  }
  return sizes;
};

/** Whole numbers above zero that add up to the total; some parts get several times as much as others. */
const sharesOf = (of: {
  readonly total: number;
  readonly parts: number;
  readonly chance: Chance;
}): readonly number[] => {
  const weights = Array.from({ length: of.parts }, () => 0.1 + of.chance() ** 1.5);
  const all = weights.reduce((a, b) => a + b, 0);
  const spare = Math.max(0, of.total - of.parts);
  const shares = weights.map((weight) => 1 + Math.floor((spare * weight) / all));
  let left = of.total - shares.reduce((a, b) => a + b, 0);
  for (let i = 0; left > 0; i = (i + 1) % of.parts, left--) shares[i] = (shares[i] as number) + 1;
  return shares;
};

/** Free pieces lie with the short side across, as a job wants them. */
const jobOf = (of: {
  readonly sizes: readonly Size[];
  readonly counts: readonly number[];
  readonly turning: Turning;
}): Job => ({
  width: clothWidth,
  kinds: of.sizes.map(([width, height], i): Kind => {
    const count = of.counts[i] as number;
    const mayTurn = of.turning === 'free' && width !== height && Math.max(width, height) <= clothWidth;
    return mayTurn
      ? { width: Math.min(width, height), height: Math.max(width, height), count, mayTurn }
      : { width, height, count, mayTurn };
  }),
});
