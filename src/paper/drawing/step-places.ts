// Where on the board is each step sewn? A step names the pieces of one unit; units made alike lie elsewhere too, turned or
// turned over. They are found from the last step backward: what lies where a unit belongs is laid piece on piece.

import type { BlockPlan, QuiltPlan } from '#craft';
import { placeOfThing, type TopThing, thingsInTop } from '#craft/setting';
import type { Point, Polygon } from '#ground/plane';
import { boxOf, centroid } from '#ground/plane';
import { entryKey } from './placed.ts';
import { outlineInTop } from './things.ts';

/** A piece of a block, or a block or plain piece of the top, as it lies. */
interface LaidThing {
  /** Things of one kind may take each other's places. */
  readonly kind: string;
  readonly outline: Polygon;
}

interface Thing extends LaidThing {
  readonly middle: Point;
}

interface PartStep {
  readonly join: readonly [string, string];
  readonly makes: string;
  /** Indexes of things: the first part's, then the second's. */
  readonly parts: readonly [readonly number[], readonly number[]];
}

export type StepPlace = PartStep['parts'];

export type StepPlaces = readonly (readonly StepPlace[])[];

/** Places of every step of a block, in patches of the block; the one that the step names comes last. */
export const placesInBlock = ({ patches, steps }: BlockPlan): StepPlaces =>
  onceFor(steps, () =>
    placesOfSteps(
      patches.map(({ piece, points }) => ({ kind: piece, outline: points })),
      steps.map(({ join, makes, patches: parts }) => ({ join, makes, parts })),
    ),
  );

/** The same of a top, in things as `thingsInTop` lists them. */
export const placesInTop = (plan: QuiltPlan): StepPlaces =>
  onceFor(plan.top.steps, () => {
    const { set, pieces, steps } = plan.top;
    const labels = new Map(pieces.flatMap(({ label, strips }) => strips.map((strip) => [strip, label] as const)));
    const kindOf = (thing: TopThing): string => {
      const placed = 'block' in thing ? set.placed[thing.block] : undefined;
      return placed === undefined ? (labels.get('strip' in thing ? thing.strip : -1) ?? '') : entryKey(placed);
    };
    const places = (things: readonly TopThing[]): readonly number[] =>
      things.map((thing) => placeOfThing(plan.top.set, thing));
    return placesOfSteps(
      thingsInTop(plan.top.set).map((thing) => ({ kind: kindOf(thing), outline: outlineInTop(plan, thing) })),
      steps.map(({ join, makes, things }) => ({ join, makes, parts: [places(things[0]), places(things[1])] })),
    );
  });

/** Of one plan's steps the places are always the same, and each picture of a step asks for them. */
const found = new WeakMap<object, StepPlaces>();

const onceFor = (steps: object, work: () => StepPlaces): StepPlaces => {
  const known = found.get(steps) ?? work();
  found.set(steps, known);
  return known;
};

const placesOfSteps = (laid: readonly LaidThing[], steps: readonly PartStep[]): StepPlaces => {
  const things = laid.map((thing) => ({ ...thing, middle: centroid(thing.outline) }));
  const made = new Map(steps.map((step, index) => [step.makes, index]));
  const known = steps.map(() => new Map<string, StepPlace>());
  const visit = (index: number, to: (thing: number) => number): void => {
    const step = steps[index] as PartStep;
    const place: StepPlace = [step.parts[0].map(to), step.parts[1].map(to)];
    const key = place.map((part) => part.toSorted((a, b) => a - b).join()).join('|');
    const own = known[index] as Map<string, StepPlace>;
    if (own.has(key)) return;
    own.set(key, place);
    step.join.forEach((name, side) => {
      const inner = made.get(name);
      if (inner === undefined || inner >= index) return;
      const onto = laidOn(things, unitOf(steps[inner] as PartStep), step.parts[side] as readonly number[]);
      if (onto !== null) visit(inner, (thing) => to(onto(thing)));
    });
  };
  if (steps.length > 0) visit(steps.length - 1, (thing) => thing);
  return known.map((places) => [...places.values()]);
};

const unitOf = ({ parts }: PartStep): readonly number[] => [...new Set([...parts[0], ...parts[1]])];

/**
 * Which thing of `place` takes the place of each thing of `unit`; null where they cannot be laid on each other. A unit that lies
 * there itself stays, also where part of it hangs on another seam.
 */
const laidOn = (
  things: readonly Thing[],
  unit: readonly number[],
  place: readonly number[],
): ((thing: number) => number) | null => {
  const own = new Set(unit);
  if (place.every((thing) => own.has(thing))) return (thing) => thing;
  if (unit.length !== place.length) return null;
  const [first] = unit;
  if (first === undefined) return null;
  const from = things[first] as Thing;
  const box = boxOf(from.outline);
  const near = nearnessOf(things, place, 1e-2 * Math.max(box.width, box.height));
  // as it lies before turned, turned before turned over
  const motions = (['as it is', 'turned over'] as const).flatMap((face) =>
    place.flatMap((index) => {
      const to = things[index] as Thing;
      return to.kind === from.kind ? motionsBetween(from.outline, to.outline, face) : [];
    }),
  );
  for (const motion of motions.toSorted((a, b) => a.turn - b.turn)) {
    const pairs = pairing(things, { unit, motion, near });
    if (pairs !== null) return (thing) => pairs.get(thing) ?? thing;
  }
  return null;
};

interface Motion {
  /** For the order of trying: the sine and cosine say it. */
  readonly turn: number;
  readonly apply: (p: Point) => Point;
}

/** Motions of the plane that lay the first side of an outline on any side of another. */
const motionsBetween = (from: Polygon, to: Polygon, face: 'as it is' | 'turned over'): readonly Motion[] => {
  const flip = face === 'turned over' ? -1 : 1;
  const [a, b] = [from[0] as Point, from[1] as Point];
  return to.flatMap((c, i) => {
    const d = to[(i + flip + to.length) % to.length] as Point;
    const [dx, dy] = [b.x - a.x, flip * (b.y - a.y)];
    const [ex, ey] = [d.x - c.x, d.y - c.y];
    const whole = dx * dx + dy * dy;
    if (Math.abs(ex * ex + ey * ey - whole) > 1e-4 * whole) return [];
    const [cos, sin] = [(dx * ex + dy * ey) / whole, (dx * ey - dy * ex) / whole];
    const apply = (p: Point): Point => {
      const [x, y] = [p.x - a.x, flip * (p.y - a.y)];
      return { x: c.x + cos * x - sin * y, y: c.y + sin * x + cos * y };
    };
    return [{ turn: (flip < 0 ? 10 : 0) + Math.abs(Math.atan2(sin, cos)), apply }];
  });
};

/** Finds what lies at a place, whatever its turn: kinds and outlines of a plan leave no doubt. */
type Nearness = (kind: string, at: Point) => number | undefined;

const nearnessOf = (things: readonly Thing[], place: readonly number[], slack: number): Nearness => {
  const square = (p: Point, dx = 0, dy = 0): string =>
    `${Math.round(p.x / slack) + dx} ${Math.round(p.y / slack) + dy}`;
  const near = new Map<string, number[]>();
  for (const index of place) {
    const { middle } = things[index] as Thing;
    for (const dx of [-1, 0, 1]) {
      for (const dy of [-1, 0, 1]) {
        const key = square(middle, dx, dy);
        near.set(key, [...(near.get(key) ?? []), index]);
      }
    }
  }
  return (kind, at) =>
    near.get(square(at))?.find((index) => {
      const thing = things[index] as Thing;
      return thing.kind === kind && Math.hypot(thing.middle.x - at.x, thing.middle.y - at.y) < slack;
    });
};

const pairing = (
  things: readonly Thing[],
  of: { readonly unit: readonly number[]; readonly motion: Motion; readonly near: Nearness },
): ReadonlyMap<number, number> | null => {
  const pairs = new Map<number, number>();
  const taken = new Set<number>();
  for (const index of of.unit) {
    const { kind, middle } = things[index] as Thing;
    const met = of.near(kind, of.motion.apply(middle));
    if (met === undefined || taken.has(met)) return null;
    taken.add(met);
    pairs.set(index, met);
  }
  return pairs;
};
