// Where do seams come together across a later one? Each seam that ends on another, from either side, and which two of them
// are one line there: those meet, and their allowances lock when they lie in opposite directions.
import { distance, dot, type Point, type Polygon, unitVector } from '#ground/plane';

/** A seam as it lies. */
export interface LaidSeam {
  readonly path: Polygon;
  /** Where the second part lies, square to the seam: degrees clockwise, 0 to the right. */
  readonly heading: number;
}

/** One end of a seam; `of` says whose. */
export interface SeamEnd<Whose> {
  readonly at: Point;
  /** Unit vector from the end into its seam. */
  readonly into: Point;
  /** Unit vector square to the seam at its end, toward the second part. */
  readonly toward: Point;
  readonly of: Whose;
}

/** Whose end it is: a step's. */
export interface StepEnd {
  readonly step: number;
  /** The way at this end when the seam is spun clockwise: 1 toward its second part. */
  readonly clockwise: 1 | -1;
}

/** Seams that end at one point of a later seam, which runs on to both sides of it. */
export interface Spot<Whose> {
  /** The later seam, by its place in the list. */
  readonly over: number;
  readonly at: Point;
  /** Unit vector along the later seam. */
  readonly along: Point;
  /** By the side that they come from. */
  readonly ends: readonly [readonly SeamEnd<Whose>[], readonly SeamEnd<Whose>[]];
  readonly meetings: readonly Meeting<Whose>[];
}

export interface Meeting<Whose> {
  readonly ends: readonly [SeamEnd<Whose>, SeamEnd<Whose>];
  /** Whether the two nest when both are pressed toward their second parts (or both toward their first), or when they differ. */
  readonly nests: 'alike' | 'unlike';
}

/**
 * Both ends of a seam, first and last.
 *
 * @param whose is told whether there, seen from the middle of the seam, the second part lies clockwise (1) or counterclockwise (-1)
 */
export const endsOf = <Whose>(seam: LaidSeam, whose: (clockwise: 1 | -1) => Whose): readonly SeamEnd<Whose>[] => {
  const { path } = seam;
  const hand = handOf(seam);
  const legs = [
    [path[0], path[1]],
    [path.at(-1), path.at(-2)],
  ] as readonly (readonly [Point, Point])[];
  return legs.map(([at, next], end) => {
    const into = unitVector(at, next);
    // the last leg is walked backwards
    const by = end === 0 ? hand : -hand;
    return { at, into, toward: { x: -into.y * by, y: into.x * by }, of: whose(by === 1 ? -1 : 1) };
  });
};

/** 1: the second part lies to the right hand of one who walks along the path; -1: to the left. */
const handOf = ({ path, heading }: LaidSeam): 1 | -1 => {
  const radians = (heading * Math.PI) / 180;
  const way = { x: Math.cos(radians), y: Math.sin(radians) };
  let most = 0;
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i] as Point, path[i + 1] as Point];
    const across = (b.x - a.x) * way.y - (b.y - a.y) * way.x;
    if (Math.abs(across) > Math.abs(most)) most = across;
  }
  return most < 0 ? -1 : 1;
};

/**
 * Every point of a seam, its own ends left out, at which others end. Ends lie on later seams by nature: which seam is sewn
 * when need not be asked.
 *
 * @param slack points nearer than this are one
 */
export const spotsOn = <Whose>(
  seams: readonly Pick<LaidSeam, 'path'>[],
  ends: readonly SeamEnd<Whose>[],
  slack: number,
): readonly Spot<Whose>[] => {
  const near = endsNear(ends, slack);
  return seams.flatMap(({ path }, over) => {
    const first = path[0] as Point;
    const last = path.at(-1) as Point;
    const within = ({ at }: SeamEnd<Whose>): boolean => distance(at, first) > slack && distance(at, last) > slack;
    const met: { readonly along: number; readonly tangent: Point; readonly end: SeamEnd<Whose> }[] = [];
    let before = 0;
    for (let leg = 0; leg + 1 < path.length; leg++) {
      const [a, b] = [path[leg] as Point, path[leg + 1] as Point];
      const tangent = unitVector(a, b);
      const long = distance(a, b);
      for (const end of near(a, b)) {
        const along = (end.at.x - a.x) * tangent.x + (end.at.y - a.y) * tangent.y;
        const off = (end.at.x - a.x) * tangent.y - (end.at.y - a.y) * tangent.x;
        const isOn =
          Math.abs(off) <= slack &&
          along > -slack &&
          (leg === path.length - 2 ? along < long + slack : along < long - slack);
        if (isOn && within(end)) met.push({ along: before + along, tangent, end });
      }
      before += long;
    }
    met.sort((a, b) => a.along - b.along);
    const spots: Spot<Whose>[] = [];
    for (let i = 0; i < met.length; ) {
      const from = met[i] as (typeof met)[number];
      let to = i + 1;
      while (to < met.length && (met[to] as (typeof met)[number]).along - from.along <= 2 * slack) to++;
      const sides: readonly [SeamEnd<Whose>[], SeamEnd<Whose>[]] = [[], []];
      for (const { end, tangent } of met.slice(i, to)) {
        const side = tangent.x * end.into.y - tangent.y * end.into.x;
        if (Math.abs(side) > leastSlant) sides[side < 0 ? 0 : 1].push(end);
      }
      spots.push({
        over,
        at: from.end.at,
        along: from.tangent,
        ends: sides,
        meetings: meetingsOf(sides, from.tangent),
      });
      i = to;
    }
    return spots;
  });
};

/** Sine of the least angle between seams that counts as coming from a side: a degree. */
const leastSlant = 0.0175;
/** Cosine of the greatest bend in what is still one line: a degree. */
const oneLine = -0.99985;

/** Two that are one line meet; and where only one comes from each side, these two. */
const meetingsOf = <Whose>(
  [first, second]: readonly [readonly SeamEnd<Whose>[], readonly SeamEnd<Whose>[]],
  tangent: Point,
): readonly Meeting<Whose>[] => {
  const meeting = (a: SeamEnd<Whose>, b: SeamEnd<Whose>): Meeting<Whose> => ({
    ends: [a, b],
    nests: dot(a.toward, tangent) > 0 === dot(b.toward, tangent) > 0 ? 'unlike' : 'alike',
  });
  const left = [...second];
  const lines = first.flatMap((a) => {
    const place = left.findIndex((b) => dot(a.into, b.into) < oneLine);
    return place < 0 ? [] : [meeting(a, left.splice(place, 1)[0] as SeamEnd<Whose>)];
  });
  if (lines.length > 0) return lines;
  return first.length === 1 && second.length === 1
    ? [meeting(first[0] as SeamEnd<Whose>, second[0] as SeamEnd<Whose>)]
    : [];
};

/** Ends in the box round a line, looked up along the side on which it is narrower. */
const endsNear = <Whose>(
  ends: readonly SeamEnd<Whose>[],
  slack: number,
): ((a: Point, b: Point) => readonly SeamEnd<Whose>[]) => {
  const byX = ends.toSorted((a, b) => a.at.x - b.at.x);
  const byY = ends.toSorted((a, b) => a.at.y - b.at.y);
  return (a, b) => {
    const isUpright = Math.abs(b.x - a.x) < Math.abs(b.y - a.y);
    const sorted = isUpright ? byX : byY;
    const placeOf = (p: Point): number => (isUpright ? p.x : p.y);
    const low = Math.min(placeOf(a), placeOf(b)) - slack;
    const high = Math.max(placeOf(a), placeOf(b)) + slack;
    const from = firstFrom(sorted, low, placeOf);
    let to = from;
    while (to < sorted.length && placeOf((sorted[to] as SeamEnd<Whose>).at) <= high) to++;
    return sorted.slice(from, to);
  };
};

const firstFrom = <Whose>(sorted: readonly SeamEnd<Whose>[], least: number, placeOf: (p: Point) => number): number => {
  let [from, to] = [0, sorted.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (placeOf((sorted[middle] as SeamEnd<Whose>).at) < least) from = middle + 1;
    else to = middle;
  }
  return from;
};
