// In which ways can the pieces of a job lie, and how high may a strip be? The job in the coarsest whole units that carry
// it: all widths are divided by what divides every width, heights likewise.
import { attainableWithin, gcdOf, heightOf, type Job, type Kind, widthOf } from '#craft/strips';

/** Each way that a piece can lie within the cloth, from the narrowest to the widest; tables run side by side. */
export interface Lies {
  readonly job: Job;
  /** Of the cloth, in units of width; no more than pieces side by side can fill. */
  readonly width: number;
  readonly kinds: number;
  /** Pieces of each kind. */
  readonly demand: Int32Array;
  readonly size: number;
  readonly kind: Int32Array;
  readonly turned: Uint8Array;
  readonly wide: Int32Array;
  readonly tall: Int32Array;
  /** Least height that a kind can lie in. */
  readonly flat: Int32Array;
  /** Area of one piece of a kind, in units of width times units of height. */
  readonly area: Float64Array;
  /** Heights of pieces, rising: the heights of strips where these must be some piece's. */
  readonly heights: Int32Array;
  readonly stripHeights: StripHeights;
  /** What one unit of height is in the job's own units. */
  readonly heightUnit: number;
}

export type StripHeights = 'piece' | 'any';

export const liesOf = (job: Job, stripHeights: StripHeights): Lies => {
  const ways = job.kinds.flatMap((kind, index) =>
    (kind.mayTurn && kind.width !== kind.height ? [false, true] : [false])
      .map((turned) => ({ index, turned, wide: widthOf(kind, turned), tall: heightOf(kind, turned) }))
      .filter((way) => way.wide <= job.width),
  );
  const across = gcdOf(ways.map((way) => way.wide));
  const heightUnit = gcdOf(ways.map((way) => way.tall));
  ways.sort((a, b) => a.wide - b.wide || a.tall - b.tall || a.index - b.index);
  const kinds = job.kinds.length;
  const wide = Int32Array.from(ways, (way) => way.wide / across);
  const tall = Int32Array.from(ways, (way) => way.tall / heightUnit);
  const flat = new Int32Array(kinds).fill(2 ** 30);
  const area = new Float64Array(kinds);
  ways.forEach((way, i) => {
    flat[way.index] = Math.min(flat[way.index] as number, tall[i] as number);
    area[way.index] = (wide[i] as number) * (tall[i] as number);
  });
  return {
    job,
    width: attainableWithin(
      Math.floor(job.width / across),
      ways.map((way, i) => ({ size: wide[i] as number, most: (job.kinds[way.index] as Kind).count })),
    ),
    kinds,
    demand: Int32Array.from(job.kinds, (kind) => kind.count),
    size: ways.length,
    kind: Int32Array.from(ways, (way) => way.index),
    turned: Uint8Array.from(ways, (way) => (way.turned ? 1 : 0)),
    wide,
    tall,
    flat,
    area,
    heights: Int32Array.from(new Set(tall)).sort(),
    stripHeights,
    heightUnit,
  };
};

/** The height that a strip with so tall a part is cut at. */
export const stripHeightFor = (lies: Lies, tallest: number): number => {
  if (lies.stripHeights === 'any') return tallest;
  for (const height of lies.heights) if (height >= tallest) return height;
  return tallest;
};
