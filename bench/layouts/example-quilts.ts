// The cloths of the example quilts: what they are cut from, beside each kind of piece on strips of its own, the way printed
// patterns do it; and whether the purchase is proven least.

import type { ClothPiece, FabricPlan, QuiltPlan } from '#craft';
import { ofText, printTable, shareText } from '../table.ts';

/** Pieces of blocks, and top strips in one piece, may turn where no print stands upright; borders and joined strips keep their grain. */
const mayTurn = ({ quilt, top }: QuiltPlan, fabric: string, { for: uses }: ClothPiece): boolean =>
  quilt.fabrics.find(({ id }) => id === fabric)?.print === 'none' &&
  uses.every(({ role, label }) => {
    if (role === 'block') return true;
    const strip = top.pieces.find((each) => each.label === label && each.role === role);
    return strip !== undefined && role !== 'border' && role !== 'spacer' && strip.joinedFrom.length === 1;
  });

/** Each kind lies the way that takes less. */
const ownStripsLength = (plan: QuiltPlan, fabric: FabricPlan): number => {
  const { width } = fabric.laid.layout;
  return fabric.pieces.reduce((sum, piece) => {
    const alone = ([across, along]: readonly [number, number]): number =>
      across > width + 1e-9
        ? Number.POSITIVE_INFINITY
        : Math.ceil(piece.count / Math.floor(width / across + 1e-9)) * along;
    const [across, along] = piece.cut;
    const turned = mayTurn(plan, fabric.id, piece) ? alone([along, across]) : Number.POSITIVE_INFINITY;
    return sum + Math.min(alone([across, along]), turned);
  }, 0);
};

export interface ExamplePlan {
  readonly name: string;
  readonly plan: QuiltPlan;
}

export const printExamples = (examples: readonly ExamplePlan[]): void => {
  const rows = examples.map(({ name, plan }) => {
    const cloths = plan.fabrics.filter(({ laid }) => !('sheets' in laid));
    const used = cloths.reduce((sum, { laid }) => sum + laid.layout.length, 0);
    const own = cloths.reduce((sum, fabric) => sum + ownStripsLength(plan, fabric), 0);
    return {
      cells: [
        name,
        `${own.toFixed(2)} ${plan.quilt.unit}`,
        `${used.toFixed(2)} ${plan.quilt.unit}`,
        shareText(own > 0 ? 100 * (1 - used / own) : 0),
        ofText(cloths.filter(({ laid }) => laid.bound >= laid.layout.length - 1e-9).length, cloths.length),
        ofText(cloths.filter(({ buy }) => buy.proven).length, cloths.length),
      ],
      proven: cloths.filter(({ buy }) => buy.proven).length,
      cloths: cloths.length,
    };
  });
  printTable([
    ['quilt', 'each kind on its own strips', 'laid out', 'saved', 'least proven', 'purchase proven least'],
    ...rows.map(({ cells }) => cells),
  ]);
  const [proven, cloths] = [rows.reduce((n, r) => n + r.proven, 0), rows.reduce((n, r) => n + r.cloths, 0)];
  console.log(`Purchase proven least: ${ofText(proven, cloths)} cloths of the examples`);
};
