// How a unit is made, seam by seam: what lies on what, where it is marked, sewn and cut, and what has come of it when it is
// pressed and trimmed; and how often.
import type { Length } from '#craft/measure';
import { flippedCorner } from './flipped-stage.ts';
import { crossedPairs, eightHalfSquares, firstPairs, firstSkies, secondSky, twoHalfSquares } from './square-stages.ts';
import type { Making, Stage } from './stage.ts';
import { joinedStrips } from './strip-stages.ts';
import type { Unit } from './unit.ts';
import type { Way } from './ways.ts';

/** How often a stage is laid for so many units. */
export const layingsOf = (stage: Stage, { way, units }: { readonly way: Way; readonly units: number }): number =>
  stage.slices
    ? Math.ceil((units * stage.slices.perUnit) / stage.slices.each)
    : stage.perSet * Math.ceil(units / way.gives);

/** Sets of pieces that so many units take: of strips those that are sewn together. */
export const setsOf = (stage: Stage | null, { way, units }: { readonly way: Way; readonly units: number }): number =>
  stage?.slices ? layingsOf(stage, { way, units }) : Math.ceil(units / way.gives);

/**
 * The stage at which two parts of a unit are joined.
 *
 * @param parts places of the unit, by part
 */
export const stageFor = (of: {
  readonly unit: Unit;
  readonly way: Way;
  /** The allowance. */
  readonly seam: Length;
  readonly parts: readonly [readonly number[], readonly number[]];
}): Stage | null => {
  const { unit, way, parts } = of;
  const making: Making = { unit, way, seam: of.seam };
  switch (way.name) {
    case 'singly':
      return null;
    case 'two-at-a-time':
      return twoHalfSquares(making);
    case 'eight-at-a-time':
      return eightHalfSquares(making);
    case 'from-half-squares':
      return parts[0].length + parts[1].length < 4 ? firstPairs(making, parts) : crossedPairs(making);
    case 'four-at-a-time':
      return parts[0].length + parts[1].length < 3 ? firstSkies(making) : secondSky(making);
    case 'sew-and-flip':
      return flippedCorner(making, parts);
    case 'strip-sets':
      return joinedStrips(making, parts);
  }
};
