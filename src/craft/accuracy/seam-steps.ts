// Which step sews the seam between two neighbouring patches? A step tells the patches of one of its units alone; the
// other units of its kind lie elsewhere in the block, turned or not, and are found by laying that one on them.
import { centroid, distance, type Point, turned } from '#ground/plane';
import { type SewnBlock, type SewnStep, unitOf } from './sewn-block.ts';

/** A unit where it lies in the block: which step makes it, and for each patch whether it came with the first part or the second. */
interface Unit {
  readonly step: number;
  readonly sides: ReadonlyMap<number, Sides>;
}

type Sides = 'first' | 'second' | 'both';

export interface SeamSteps {
  /** Index of the step that sews two patches together, or the units they lie in; null where none is found. */
  readonly stepBetween: (a: number, b: number) => number | null;
  /** Steps that a patch has been through when the unit is done, the last first. */
  readonly stepsOf: (patch: number) => readonly number[];
}

/**
 * @param made index of a step; its own unit and all that went into it are looked through
 */
export const seamSteps = (block: SewnBlock, made: number): SeamSteps => {
  const chains = new Map<number, Unit[]>();
  for (const unit of unitsIn(block, made)) {
    for (const patch of unit.sides.keys()) {
      const chain = chains.get(patch);
      if (chain) chain.push(unit);
      else chains.set(patch, [unit]);
    }
  }
  return {
    stepBetween: (a, b) => {
      const apart = (chains.get(a) ?? []).find(({ sides }) => sides.has(b) && areApart(sides, a, b));
      return apart?.step ?? null;
    },
    stepsOf: (patch) => (chains.get(patch) ?? []).map(({ step }) => step),
  };
};

const areApart = (sides: Unit['sides'], a: number, b: number): boolean => sides.get(a) !== sides.get(b);

/** From the whole unit down: what is made of units comes before them. */
const unitsIn = (block: SewnBlock, made: number): readonly Unit[] => {
  const whole = { step: made, patches: unitOf(block.steps[made] as SewnStep) };
  const waiting: { readonly step: number; readonly patches: readonly number[] }[] = [whole];
  const units: Unit[] = [];
  const lay = layerOf(block);
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    const step = block.steps[next.step] as SewnStep;
    const lying = lay(unitOf(step), next.patches);
    if (lying === null) continue;
    const [first, second] = step.patches.map((part) => part.map((patch) => lying.get(patch) as number)) as [
      number[],
      number[],
    ];
    units.push({ step: next.step, sides: sidesOf(first, second) });
    [first, second].forEach((patches, part) => {
      const made = stepNamed(step.join[part] as string);
      if (made !== null) waiting.push({ step: made, patches });
    });
  }
  return units;
};

const sidesOf = (first: readonly number[], second: readonly number[]): Unit['sides'] => {
  const sides = new Map<number, Sides>(first.map((patch) => [patch, 'first']));
  for (const patch of second) sides.set(patch, sides.has(patch) ? 'both' : 'second');
  return sides;
};

/** "#3" is what the third step makes. */
const stepNamed = (part: string): number | null => (part.startsWith('#') ? Number(part.slice(1)) - 1 : null);

/** How far middles may lie apart and still be one, as a share of the block's larger side. */
const nearness = 1e-4;

/** Lays a unit's patches on others of the same pieces: which lies on which; null where they are not alike. */
const layerOf = (block: SewnBlock) => {
  const middles = block.patches.map(({ points }) => centroid(points));
  const near = nearness * Math.max(...block.finished);
  const labelOf = (patch: number): string => block.patches[patch]?.piece ?? '';
  return (unit: readonly number[], onto: readonly number[]): ReadonlyMap<number, number> | null => {
    if (onto.length === unit.length && onto.every((patch) => unit.includes(patch)))
      return new Map(unit.map((patch) => [patch, patch]));
    const from = middleOf(block, unit);
    const to = middleOf(block, onto);
    const far = (patch: number, middle: Point): number => distance(middle, middles[patch] as Point);
    const anchor = unit.reduce((a, b) => (far(b, from) > far(a, from) + near ? b : a));
    const alike = onto.filter(
      (patch) => labelOf(patch) === labelOf(anchor) && Math.abs(far(patch, to) - far(anchor, from)) < near,
    );
    for (const face of [1, -1]) {
      for (const patch of alike) {
        for (const turn of turnsFrom(middles[anchor] as Point, from, middles[patch] as Point, to, face)) {
          const laid = laidSo({ unit, onto, middles, labelOf, near, from, to, face, turn });
          if (laid !== null) return laid;
        }
      }
    }
    return null;
  };
};

/** The mean of all corners: alike units lie alike about it. */
const middleOf = (block: SewnBlock, unit: readonly number[]): Point => {
  const corners = unit.flatMap((patch) => block.patches[patch]?.points ?? []);
  const mean = (values: readonly number[]): number => values.reduce((all, v) => all + v, 0) / values.length;
  return { x: mean(corners.map(({ x }) => x)), y: mean(corners.map(({ y }) => y)) };
};

const turnsFrom = (anchor: Point, from: Point, patch: Point, to: Point, face: number): readonly number[] => {
  const [x, y] = [(anchor.x - from.x) * face, anchor.y - from.y];
  const quarters = [0, 1, 2, 3].map((n) => (n * Math.PI) / 2);
  return [Math.atan2(patch.y - to.y, patch.x - to.x) - Math.atan2(y, x), ...quarters];
};

const laidSo = (of: {
  readonly unit: readonly number[];
  readonly onto: readonly number[];
  readonly middles: readonly Point[];
  readonly labelOf: (patch: number) => string;
  readonly near: number;
  readonly from: Point;
  readonly to: Point;
  readonly face: number;
  readonly turn: number;
}): ReadonlyMap<number, number> | null => {
  const left = new Set(of.onto);
  const laid = new Map<number, number>();
  for (const patch of of.unit) {
    const p = of.middles[patch] as Point;
    const q = turned({ x: (p.x - of.from.x) * of.face, y: p.y - of.from.y }, of.turn);
    const found = [...left].find((other) => {
      const r = of.middles[other] as Point;
      const off = Math.hypot(r.x - of.to.x - q.x, r.y - of.to.y - q.y);
      return off < of.near && of.labelOf(other) === of.labelOf(patch);
    });
    if (found === undefined) return null;
    laid.set(patch, found);
    left.delete(found);
  }
  return laid;
};
