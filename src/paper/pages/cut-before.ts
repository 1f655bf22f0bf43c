// What of a cloth is cut before the rest: ends at hand, and strips on the fold. Strips are numbered through.
import type { FabricPlan } from '#craft';
import type { Layout } from '#craft/cutting';
import { type ClothDirections, type CutEffort, workOf } from '#craft/directions';

export interface CutBefore {
  readonly of: 'ends' | 'fold';
  readonly directions: ClothDirections;
  /** As it lies folded; null for ends. */
  readonly folded: Layout | null;
}

export const cutBefore = ({ ends, fold, directions }: FabricPlan): readonly CutBefore[] => {
  const onEnds = ends?.directions ?? null;
  const chosen = fold?.chosen ?? null;
  return [
    ...(onEnds === null
      ? []
      : [{ of: 'ends', directions: renamed(onEnds, directions.remnants.length), folded: null } as const]),
    ...(chosen === null
      ? []
      : [
          {
            of: 'fold',
            directions: unnamed(numbered(chosen.directions, stripsIn(onEnds))),
            folded: chosen.folded,
          } as const,
        ]),
  ];
};

/** Those of the cloth itself, numbered after what is cut before. */
export const ownDirections = (fabric: FabricPlan): ClothDirections => {
  const before = cutBefore(fabric).reduce((sum, { directions }) => sum + stripsIn(directions), 0);
  return before === 0 ? fabric.directions : numbered(fabric.directions, before);
};

/** Ends at hand and the fold counted in. */
export const workInAll = (fabric: FabricPlan): CutEffort =>
  workOf([...cutBefore(fabric), { directions: fabric.directions }].flatMap(({ directions }) => directions.parts));

const stripsIn = (directions: ClothDirections | null): number =>
  (directions?.parts ?? []).reduce(
    (sum, { heights }) => sum + heights.reduce((n, { patterns }) => n + patterns.length, 0),
    0,
  );

const numbered = (directions: ClothDirections, from: number): ClothDirections => ({
  ...directions,
  parts: directions.parts.map((part) => ({
    ...part,
    heights: part.heights.map((height) => ({
      ...height,
      patterns: height.patterns.map((pattern) => ({ ...pattern, number: pattern.number + from })),
    })),
  })),
});

/** What falls off in two layers has no name: at the fold it is twice as wide once it is opened. */
const unnamed = (directions: ClothDirections): ClothDirections => ({
  ...withNames(directions, () => null),
  remnants: [],
});

/** What is left of ends is named after what is left of the cloth. */
const renamed = (directions: ClothDirections, from: number): ClothDirections => {
  const names = new Map(directions.remnants.map(({ name }, i) => [name, `R${from + i + 1}`]));
  return {
    ...withNames(directions, (name) => names.get(name) ?? null),
    remnants: directions.remnants.map((remnant) => ({ ...remnant, name: names.get(remnant.name) ?? remnant.name })),
  };
};

const withNames = (directions: ClothDirections, named: (name: string) => string | null): ClothDirections => ({
  ...directions,
  parts: directions.parts.map((part) => ({
    ...part,
    end: part.end && { ...part.end, remnant: part.end.remnant && named(part.end.remnant) },
    heights: part.heights.map((height) => ({
      ...height,
      patterns: height.patterns.map((pattern) => ({
        ...pattern,
        offcuts: pattern.offcuts.map((offcut) => ({ ...offcut, remnant: offcut.remnant && named(offcut.remnant) })),
      })),
    })),
  })),
});
