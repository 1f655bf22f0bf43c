// How is one cloth told from another on paper, in colour and in grey? Each gets a letter and a hatch of
// its own, by its order in the plan. Says nothing of where the cloth is used.
import type { QuiltPlan } from '#craft';
import type { Hatch } from './hatch.ts';
import { hatchFor } from './hatch.ts';
import { lettersFor } from './letters.ts';

export interface ClothSign {
  readonly fabric: string;
  /** A, B, … Z, AA: the order of the plan's cloths. */
  readonly letter: string;
  readonly name: string;
  /** #rrggbb. */
  readonly colour: string;
  readonly hatch: Hatch;
}

/** The signs of all cloths by fabric id, in the plan's order. */
export type ClothSigns = ReadonlyMap<string, ClothSign>;

export const clothSignsFor = (plan: QuiltPlan): ClothSigns => {
  const known = new Map(plan.quilt.fabrics.map((fabric) => [fabric.id, fabric]));
  return new Map(
    plan.fabrics.map(({ id }, index) => {
      const fabric = known.get(id);
      const sign: ClothSign = {
        fabric: id,
        letter: lettersFor(index),
        name: fabric?.name || id,
        colour: fabric?.colour ?? '#ffffff',
        hatch: hatchFor(index),
      };
      return [id, sign];
    }),
  );
};

/** Throws when a plan names a cloth that it does not list: a fault of the planner, not of the document. */
export const signOf = (signs: ClothSigns, fabric: string): ClothSign => {
  const sign = signs.get(fabric);
  if (sign === undefined) throw new Error(`the plan uses a cloth that it does not list: ${fabric}`);
  return sign;
};
