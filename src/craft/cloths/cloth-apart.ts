// Borders and panels are the longest pieces of a cloth. Laid together with the rest they should never take more than on a length
// of their own; a short search may miss that.
import { type ClothLine, type Demand, demandsOf, type Strip } from '#craft/cutting';
import { tidy } from '#craft/measure';
import type { FabricPlan, PieceUse } from '#craft/plan';

type Line = ClothLine<Pick<PieceUse, 'role'>>;

/** @returns the layout as it was, unless both apart, one below the other, are shorter */
export function* noLongerThanApart(of: {
  readonly laid: FabricPlan['laid'];
  readonly lines: readonly Line[];
  readonly lay: (demands: readonly Demand[]) => Generator<void, FabricPlan['laid'], void>;
}): Generator<void, FabricPlan['laid'], void> {
  const { laid, lines } = of;
  const long = lines.map(isLong);
  if ('sheets' in laid || laid.motifs !== undefined || laid.bound >= laid.layout.length - 1e-9) return laid;
  if (long.every(Boolean) || !long.some(Boolean)) return laid;
  const partOf = (which: boolean): readonly Demand[] =>
    demandsOf(lines).map((demand, i) => (long[i] === which ? demand : { ...demand, count: 0 }));
  const borders = (yield* of.lay(partOf(true))).layout;
  const rest = (yield* of.lay(partOf(false))).layout;
  if (borders.length + rest.length >= laid.layout.length - 1e-9) return laid;
  const below = rest.strips.map((strip): Strip => ({ ...strip, at: tidy(strip.at + borders.length) }));
  const layout = {
    width: laid.layout.width,
    length: tidy(borders.length + rest.length),
    strips: [...borders.strips, ...below],
  };
  return { layout, bound: laid.bound, boundKind: laid.boundKind };
}

const isLong = ({ uses }: Line): boolean => uses.some(({ role }) => role === 'border' || role === 'backing');
