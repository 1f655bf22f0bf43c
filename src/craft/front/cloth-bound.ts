// What no layout of a planned cloth is shorter than, sheets by their whole length.
import type { FabricPlan } from '#craft';
import type { ClothNature } from '#craft/cutting';

/** Of sheets their number is bounded; where they are of several kinds, no length follows from it. */
export const clothBound = ({ id, laid }: FabricPlan, natures: ReadonlyMap<string, ClothNature>): number => {
  if (!('sheets' in laid)) return laid.bound;
  return natures.get(id)?.stock === undefined ? laid.bound * (laid.sheets[0]?.length ?? 0) : 0;
};
