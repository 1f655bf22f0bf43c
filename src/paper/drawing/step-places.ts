// Where on the board is each step sewn? A step names the pieces of one unit; units made alike lie elsewhere too, turned or
// turned over. They are found from the last step backward: what lies where a unit belongs is laid piece on piece.

import type { BlockPlan, QuiltPlan } from '#craft';
import type { TopThing } from '#craft/setting';
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

interface PartStep {
  readonly join: readonly [string, string];
  readonly makes: string;
  /** Indexes of things: the first part's, then the second's. */
  readonly parts: readonly [readonly number[], readonly number[]];
}

export type StepPlace = PartStep['parts'];

/** Places of every step of a block, in patches of the block; the one that the step names comes last. */
export const placesInBlock = ({ patches, steps }: BlockPlan): readonly (readonly StepPlace[])[] =>
  placesOfSteps(
    patches.map(({ piece, points }) => ({ kind: piece, outline: points })),
    steps.map(({ join, makes, patches: parts }) => ({ join, makes, parts })),
  );

/** The same of a top, in things as `thingsInTop` lists them. */
export const placesInTop = (plan: QuiltPlan): readonly (readonly StepPlace[])[] => {
  const { set, pieces, steps } = plan.top;
  const labels = new Map(pieces.flatMap(({ label, strips }) => strips.map((strip) => [strip, label] as const)));
  const kindOf = (thing: TopThing): string => {
    const placed = 'block' in thing ? set.placed[thing.block] : undefined;
    return placed === undefined ? (labels.get('strip' in thing ? thing.strip : -1) ?? '') : entryKey(placed);
  };
  const places = (things: readonly TopThing[]): readonly number[] => things.map((thing) => placeOfThing(plan, thing));
  return placesOfSteps(
    thingsInTop(plan).map((thing) => ({ kind: kindOf(thing), outline: outlineInTop(plan, thing) })),
    steps.map(({ join, makes, things }) => ({ join, makes, parts: [places(things[0]), places(things[1])] })),
  );
};

/** Blocks as they are placed, then plain pieces. */
export const thingsInTop = ({ top }: QuiltPlan): readonly TopThing[] => [
  ...top.set.placed.map((_, block) => ({ block })),
  ...top.set.strips.map((_, strip) => ({ strip })),
];

export const placeOfThing = ({ top }: QuiltPlan, thing: TopThing): number =>
  'block' in thing ? thing.block : top.set.placed.length + thing.strip;

const placesOfSteps = (things: readonly LaidThing[], steps: readonly PartStep[]): readonly (readonly StepPlace[])[] => {
  const made = new Map(steps.map((step, index) => [step.makes, index]));
  const found = steps.map(() => new Map<string, StepPlace>());
  const visit = (index: number, to: (thing: number) => number): void => {
    const step = steps[index] as PartStep;
    const place: StepPlace = [step.parts[0].map(to), step.parts[1].map(to)];
    const key = place.map((part) => part.toSorted((a, b) => a - b).join()).join('|');
    const known = found[index] as Map<string, StepPlace>;
    if (known.has(key)) return;
    known.set(key, place);
    step.join.forEach((name, side) => {
      const inner = made.get(name);
      if (inner === undefined || inner >= index) return;
      const laid = laidOn(things, unitOf(steps[inner] as PartStep), step.parts[side] as readonly number[]);
      if (laid !== null) visit(inner, (thing) => to(laid(thing)));
    });
  };
  if (steps.length > 0) visit(steps.length - 1, (thing) => thing);
  return found.map((places) => [...places.values()]);
};

const unitOf = ({ parts }: PartStep): readonly number[] => [...new Set([...parts[0], ...parts[1]])];

/**
 * Which thing of `place` takes the place of each thing of `unit`; null where they cannot be laid on each other. A unit that lies
 * there itself stays, also where part of it hangs on another seam.
 */
const laidOn = (
  things: readonly LaidThing[],
  unit: readonly number[],
  place: readonly number[],
): ((thing: number) => number) | null => {
  const own = new Set(unit);
  if (place.every((thing) => own.has(thing))) return (thing) => thing;
  if (unit.length !== place.length) return null;
  const [first] = unit;
  if (first === undefined) return null;
  const from = things[first] as LaidThing;
  const slack = 1e-4 * Math.max(1e-6, boxOf(from.outline).width, boxOf(from.outline).height);
  // as it lies before turned, turned before turned over
  const motions = (['as it is', 'turned over'] as const).flatMap((face) =>
    place.flatMap((index) => {
      const to = things[index] as LaidThing;
      return to.kind === from.kind ? motionsBetween(from.outline, to.outline, face) : [];
    }),
  );
  for (const motion of motions.toSorted((a, b) => a.turn - b.turn)) {
    const pairs = pairing(things, { unit, place, motion, slack });
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

const pairing = (
  things: readonly LaidThing[],
  of: {
    readonly unit: readonly number[];
    readonly place: readonly number[];
    readonly motion: Motion;
    readonly slack: number;
  },
): ReadonlyMap<number, number> | null => {
  const left = new Set(of.place);
  const pairs = new Map<number, number>();
  for (const index of of.unit) {
    const thing = things[index] as LaidThing;
    const middle = of.motion.apply(centroid(thing.outline));
    const met = [...left].find((other) => {
      const { kind, outline } = things[other] as LaidThing;
      const at = centroid(outline);
      return kind === thing.kind && Math.hypot(at.x - middle.x, at.y - middle.y) < of.slack * 100;
    });
    if (met === undefined) return null;
    left.delete(met);
    pairs.set(index, met);
  }
  return pairs;
};
