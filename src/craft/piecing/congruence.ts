// Which units are one and the same to make: the same kinds of piece lying alike, turned or not.
import { centroid, type Point, type Polygon, signedArea, turned } from '#ground/plane';

export interface UnitForm {
  /** Units of one form share it. */
  readonly form: number;
  /** Clockwise turn, in radians, that brings the form's first unit onto this one. */
  readonly turn: number;
}

interface Mark {
  readonly kind: number;
  readonly p: Point;
}

interface KnownForm {
  readonly form: number;
  readonly marks: readonly Mark[];
}

/**
 * Sorts units into forms as they are met. The first unit met stands for its form.
 *
 * @param patches outlines by patch
 * @param kindOf  kind of piece by patch
 * @param size    the block's larger side; places that differ by less than 1e-5 of it are one
 */
export const formSorter = (drawn: {
  readonly patches: readonly Polygon[];
  readonly kindOf: readonly number[];
  readonly size: number;
}): ((unit: readonly number[]) => UnitForm) => {
  const { patches, kindOf, size } = drawn;
  const areas = patches.map(signedArea);
  const centres = patches.map(centroid);
  const shifted = new Map<string, UnitForm>();
  const buckets = new Map<string, KnownForm[]>();
  let forms = 0;

  return (unit) => {
    const middle = centreOf(unit, areas, centres);
    const marks = marksOf({ unit, patches, kindOf, centres, middle, size });
    const shiftKey = keyOf(marks);
    const seen = shifted.get(shiftKey);
    if (seen) return seen;
    const bucketKey = invariantOf(marks);
    const bucket = buckets.get(bucketKey) ?? [];
    for (const known of bucket) {
      const turn = turnBetween(known.marks, marks);
      if (turn === null) continue;
      const found = { form: known.form, turn };
      shifted.set(shiftKey, found);
      return found;
    }
    const fresh = { form: forms++, turn: 0 };
    bucket.push({ form: fresh.form, marks });
    buckets.set(bucketKey, bucket);
    shifted.set(shiftKey, fresh);
    return fresh;
  };
};

const grain = 1e5;
const rounded = (value: number): number => Math.floor(value * grain + 0.3183);

const centreOf = (unit: readonly number[], areas: readonly number[], centres: readonly Point[]): Point => {
  let all = 0;
  let x = 0;
  let y = 0;
  for (const i of unit) {
    const area = areas[i] as number;
    const c = centres[i] as Point;
    all += area;
    x += c.x * area;
    y += c.y * area;
  }
  return { x: x / all, y: y / all };
};

/** The centre and every corner of every patch, from the unit's middle, the block's side being 1. */
const marksOf = (of: {
  readonly unit: readonly number[];
  readonly patches: readonly Polygon[];
  readonly kindOf: readonly number[];
  readonly centres: readonly Point[];
  readonly middle: Point;
  readonly size: number;
}): readonly Mark[] => {
  const marks: Mark[] = [];
  const from = (p: Point): Point => ({ x: (p.x - of.middle.x) / of.size, y: (p.y - of.middle.y) / of.size });
  for (const i of of.unit) {
    const kind = of.kindOf[i] as number;
    marks.push({ kind: 2 * kind, p: from(of.centres[i] as Point) });
    for (const corner of of.patches[i] as Polygon) marks.push({ kind: 2 * kind + 1, p: from(corner) });
  }
  return marks;
};

const keyOf = (marks: readonly Mark[]): string =>
  marks
    .map(({ kind, p }) => `${kind}:${rounded(p.x)}:${rounded(p.y)}`)
    .sort()
    .join();

const invariantOf = (marks: readonly Mark[]): string =>
  marks
    .map(({ kind, p }) => `${kind}:${rounded(Math.hypot(p.x, p.y))}`)
    .sort()
    .join();

/** The turn that lays one set of marks on the other, or null; quarter turns are tried before others. */
const turnBetween = (known: readonly Mark[], marks: readonly Mark[]): number | null => {
  const anchor = known.reduce((a, b) => (farther(b, a) ? b : a));
  const far = Math.hypot(anchor.p.x, anchor.p.y);
  const lie = Math.atan2(anchor.p.y, anchor.p.x);
  const turns = marks
    .filter((m) => m.kind === anchor.kind && Math.abs(Math.hypot(m.p.x, m.p.y) - far) < 2 / grain)
    .map((m) => normal(Math.atan2(m.p.y, m.p.x) - lie))
    .sort((a, b) => offQuarter(a) - offQuarter(b) || a - b);
  const byKind = new Map<number, Point[]>();
  for (const { kind, p } of marks) byKind.set(kind, [...(byKind.get(kind) ?? []), p]);
  return turns.find((turn) => laysOn(known, byKind, turn)) ?? null;
};

const farther = (a: Mark, b: Mark): boolean => {
  const difference = Math.hypot(a.p.x, a.p.y) - Math.hypot(b.p.x, b.p.y);
  return Math.abs(difference) > 1 / grain ? difference > 0 : a.kind < b.kind;
};

const normal = (turn: number): number => {
  const whole = 2 * Math.PI;
  const t = ((turn % whole) + whole) % whole;
  return whole - t < 1e-6 ? 0 : t;
};

const offQuarter = (turn: number): number => {
  const quarters = turn / (Math.PI / 2);
  return Math.abs(quarters - Math.round(quarters)) < 1e-6 ? 0 : 1;
};

const laysOn = (known: readonly Mark[], byKind: ReadonlyMap<number, readonly Point[]>, turn: number): boolean =>
  known.every(({ kind, p }) => {
    const q = turned(p, turn);
    return (byKind.get(kind) ?? []).some((r) => Math.abs(r.x - q.x) < 2 / grain && Math.abs(r.y - q.y) < 2 / grain);
  });
