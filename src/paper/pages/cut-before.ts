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

export const cutBefore = ({ ends, fold }: FabricPlan): readonly CutBefore[] => {
  const onEnds = ends?.directions ?? null;
  const chosen = fold?.chosen ?? null;
  return [
    ...(onEnds === null ? [] : [{ of: 'ends', directions: unnamed(onEnds), folded: null } as const]),
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

/** What is left of them has no name: the names are the cloth's own. */
const unnamed = (directions: ClothDirections): ClothDirections => ({
  ...directions,
  remnants: [],
  parts: directions.parts.map((part) => ({
    ...part,
    end: part.end && { ...part.end, remnant: null },
    heights: part.heights.map((height) => ({
      ...height,
      patterns: height.patterns.map((pattern) => ({
        ...pattern,
        offcuts: pattern.offcuts.map((offcut) => ({ ...offcut, remnant: null })),
      })),
    })),
  })),
});
