// The cloths of a plan as they are cut.
import type { QuiltPlan } from '#craft';

export interface ClothSeen {
  readonly id: string;
  readonly name: string;
  /** In the document's unit, usable; of sheets the first one's. */
  readonly width: number;
  /** Of the layout in the document's unit, and what none can be shorter than; of sheets both count them. */
  readonly length: number;
  readonly bound: number;
}

export const seeCloths = (plan: QuiltPlan, _all: Readonly<Record<never, never>>): readonly ClothSeen[] =>
  plan.fabrics.map(({ id, laid }) => {
    const name = plan.quilt.fabrics.find((fabric) => fabric.id === id)?.name || id;
    const length = 'sheets' in laid ? laid.sheets.length : laid.layout.length;
    return {
      id,
      name,
      width: 'sheets' in laid ? (laid.sheets[0]?.width ?? 0) : laid.layout.width,
      length,
      bound: laid.bound,
    };
  });
