// Which units are one and the same to make: the same kinds of piece lying alike, turned or not.
// A unit is known by a sum of scrambled numbers, one for each patch and its place: the same in whatever
// order patches are listed, and quick, for a large drawing has many units.
import type { Likeness } from '#craft/fabric';
import { boxOf, centroid, type Point, type Polygon, quarterTurned, signedArea, turned } from '#ground/plane';

export interface UnitForm {
  /** Units of one form share it. */
  readonly form: number;
  /** Clockwise turn, in radians, that brings the form's first unit onto this one. */
  readonly turn: number;
}

interface Drawn {
  readonly patches: readonly Polygon[];
  readonly kindOf: readonly number[];
  readonly size: number;
  /** Whether a patch of a turned unit is still the same piece: not where a print stands upright. Any turn when missing. */
  readonly turnsOf?: (patch: number) => Likeness['turns'];
}

/**
 * Sorts units into forms as they are met. The first unit met stands for its form.
 *
 * Quarter turns are found in every unit; other turns (of diamonds, of sixty-degree triangles) in units of up
 * to `slantedUpTo` patches, where every patch is compared.
 *
 * @param drawn outlines and kind of piece by patch, and the block's larger side: places that differ by less than
 *              1e-5 of it are one
 */
export const formSorter = (drawn: Drawn): ((unit: readonly number[]) => UnitForm) => {
  const signatureOf = signaturesFor(drawn);
  const slanted = slantedForms(drawn);
  const known = new Map<number, UnitForm>();
  let forms = 0;
  return (unit) => {
    const asItLies = signatureOf(unit, 0);
    const before = known.get(asItLies);
    if (before) return before;
    const found = slanted.find(unit);
    const fresh = found ?? { form: forms++, turn: 0 };
    if (!found) slanted.add(unit, fresh.form);
    // a unit that looks as this one does after so many quarters is this one turned by them
    for (const quarters of [0, 3, 2, 1]) {
      const signature = quarters === 0 ? asItLies : signatureOf(unit, quarters);
      if (!known.has(signature))
        known.set(signature, { form: fresh.form, turn: normal(fresh.turn + (quarters * Math.PI) / 2) });
    }
    return fresh;
  };
};

const grain = 1e5;
/** Keeps simple fractions away from the places where rounding changes. */
const shift = 0.3183;
const rounded = (value: number): number => Math.floor(value * grain + shift);

/** What a unit looks like after so many quarter turns, as a number. */
const signaturesFor = (drawn: Drawn): ((unit: readonly number[], quarters: number) => number) => {
  const { patches, kindOf, size } = drawn;
  const turnsOf = drawn.turnsOf ?? anyTurn;
  const shapes = new Map<string, number>();
  const shapeOf = (points: Polygon, kind: string): number => {
    const box = boxOf(points);
    const corners = points.map((p) => `${rounded((p.x - box.x) / size)},${rounded((p.y - box.y) / size)}`).sort();
    const key = `${kind}|${corners.join(' ')}`;
    const shape = shapes.get(key) ?? shapes.size;
    shapes.set(key, shape);
    return shape;
  };
  const views = [0, 1, 2, 3].map((quarters) => {
    const turnedPatches = patches.map((outline) => outline.map((p) => quarterTurned(p, quarters)));
    const boxes = turnedPatches.map(boxOf);
    return {
      shapes: Int32Array.from(turnedPatches, (points, i) =>
        shapeOf(points, `${kindOf[i]}:${standing(quarters, turnsOf(i))}`),
      ),
      xs: Float64Array.from(boxes, ({ x }) => (x / size) * grain),
      ys: Float64Array.from(boxes, ({ y }) => (y / size) * grain),
    };
  });
  return (unit, quarters) => {
    const { shapes, xs, ys } = views[quarters] as (typeof views)[number];
    let left = Number.POSITIVE_INFINITY;
    let top = Number.POSITIVE_INFINITY;
    for (const i of unit) {
      left = Math.min(left, xs[i] as number);
      top = Math.min(top, ys[i] as number);
    }
    let one = unit.length;
    let two = 0;
    for (const i of unit) {
      const shape = shapes[i] as number;
      const a = Math.floor((xs[i] as number) - left + shift);
      const b = Math.floor((ys[i] as number) - top + shift);
      one = (one + scrambled(shape, a, b)) | 0;
      two = (two + scrambled(b ^ 0x5bd1e995, shape, a)) | 0;
    }
    // 53 bits, as many as a number keeps
    return (one >>> 0) * 0x20_0000 + (two >>> 11);
  };
};

const anyTurn = (): Likeness['turns'] => 'any';

/** How a print shows that its patch was turned by so many quarters: not at all, upright or level, or each way. */
const standing = (quarters: number, turns: Likeness['turns']): number =>
  turns === 'any' ? 0 : turns === 'half' ? quarters % 2 : quarters;

/** Mixes three whole numbers into 32 bits (the finishing steps of a common 32-bit hash, from memory). */
const scrambled = (a: number, b: number, c: number): number => {
  let h =
    Math.imul(a + 0x9e3779b9, 0x85ebca6b) ^
    Math.imul(b + 0x165667b1, 0xc2b2ae35) ^
    Math.imul(c + 0x27d4eb2f, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 16), 0x7feb352d);
  h = Math.imul(h ^ (h >>> 15), 0x846ca68b);
  return h ^ (h >>> 16);
};

const normal = (turn: number): number => {
  const whole = 2 * Math.PI;
  const t = ((turn % whole) + whole) % whole;
  return whole - t < 1e-6 ? 0 : t;
};

/** Units of more patches are compared in quarter turns only. */
const slantedUpTo = 40;

interface Mark {
  readonly kind: number;
  readonly p: Point;
}

/** Forms whose units may lie at any angle, compared patch by patch; only where a drawing has slanted edges at all. */
const slantedForms = (drawn: Drawn) => {
  const { patches, kindOf, size } = drawn;
  const areas = patches.map(signedArea);
  const centres = patches.map(centroid);
  const isSlanted = patches.some((points) =>
    points.some((a, i) => isSlope(a, points[(i + 1) % points.length] as Point)),
  );
  const buckets = new Map<string, { readonly form: number; readonly unit: readonly number[] }[]>();

  const marksOf = (unit: readonly number[]): readonly Mark[] => {
    const middle = centreOf(unit, areas, centres);
    const from = (p: Point): Point => ({ x: (p.x - middle.x) / size, y: (p.y - middle.y) / size });
    return unit.flatMap((i) => {
      const kind = kindOf[i] as number;
      return [
        { kind: 2 * kind, p: from(centres[i] as Point) },
        ...(patches[i] as Polygon).map((corner) => ({ kind: 2 * kind + 1, p: from(corner) })),
      ];
    });
  };
  /** What no turn changes: the kinds and the distances of their middles from the unit's. */
  const distancesOf = (unit: readonly number[]): string => {
    const middle = centreOf(unit, areas, centres);
    let sum = 0;
    for (const i of unit) {
      const c = centres[i] as Point;
      sum = (sum + scrambled(kindOf[i] as number, rounded(Math.hypot(c.x - middle.x, c.y - middle.y) / size), 7)) | 0;
    }
    return `${unit.length}:${sum}`;
  };
  const matters = (unit: readonly number[]): boolean =>
    isSlanted && unit.length <= slantedUpTo && unit.every((i) => (drawn.turnsOf ?? anyTurn)(i) === 'any');
  return {
    find: (unit: readonly number[]): UnitForm | null => {
      if (!matters(unit)) return null;
      for (const known of buckets.get(distancesOf(unit)) ?? []) {
        const turn = turnBetween(marksOf(known.unit), marksOf(unit));
        if (turn !== null) return { form: known.form, turn };
      }
      return null;
    },
    add: (unit: readonly number[], form: number): void => {
      if (!matters(unit)) return;
      const key = distancesOf(unit);
      const bucket = buckets.get(key);
      if (bucket) bucket.push({ form, unit });
      else buckets.set(key, [{ form, unit }]);
    },
  };
};

const isSlope = (a: Point, b: Point): boolean => {
  const [dx, dy] = [Math.abs(b.x - a.x), Math.abs(b.y - a.y)];
  return Math.min(dx, dy) > 1e-6 * Math.hypot(dx, dy);
};

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

/** The turn that lays one set of marks on the other, or null. */
const turnBetween = (known: readonly Mark[], marks: readonly Mark[]): number | null => {
  const anchor = known.reduce((a, b) => (farther(b, a) ? b : a));
  const far = Math.hypot(anchor.p.x, anchor.p.y);
  const lie = Math.atan2(anchor.p.y, anchor.p.x);
  const turns = marks
    .filter((m) => m.kind === anchor.kind && Math.abs(Math.hypot(m.p.x, m.p.y) - far) < 2 / grain)
    .map((m) => normal(Math.atan2(m.p.y, m.p.x) - lie))
    .sort((a, b) => a - b);
  const byKind = new Map<number, Point[]>();
  for (const { kind, p } of marks) {
    const points = byKind.get(kind);
    if (points) points.push(p);
    else byKind.set(kind, [p]);
  }
  return turns.find((turn) => laysOn(known, byKind, turn)) ?? null;
};

const farther = (a: Mark, b: Mark): boolean => {
  const difference = Math.hypot(a.p.x, a.p.y) - Math.hypot(b.p.x, b.p.y);
  return Math.abs(difference) > 1 / grain ? difference > 0 : a.kind < b.kind;
};

const laysOn = (known: readonly Mark[], byKind: ReadonlyMap<number, readonly Point[]>, turn: number): boolean =>
  known.every(({ kind, p }) => {
    const q = turned(p, turn);
    return (byKind.get(kind) ?? []).some((r) => Math.abs(r.x - q.x) < 2 / grain && Math.abs(r.y - q.y) < 2 / grain);
  });
