// How much of one cloth do pieces take at a first glance? The first layout that is found: good enough to choose by.
import { type ClothNature, ledgerOf } from '#craft/cutting';
import type { Recall } from '#ground/recall';
import { laidFor } from './cloth-plan.ts';
import type { Natures } from './natures.ts';
import type { WantedPiece } from './wanted-pieces.ts';

/** Length, of sheets what they cost; infinite where a piece has no room. */
export const quickLength = (of: {
  readonly fabric: string;
  readonly natures: Natures;
  readonly pieces: readonly WantedPiece[];
  readonly memory?: Recall;
}): number => {
  const { lines, problems } = ledgerOf(
    of.pieces.filter((p) => p.fabric === of.fabric),
    of.natures,
  );
  if (problems.length > 0) return Number.POSITIVE_INFINITY;
  const nature = of.natures.get(of.fabric) as ClothNature;
  const search = { steps: 0, solver: null, ...(of.memory ? { memory: of.memory } : {}) };
  const laid = laidFor({ nature, lines: lines.get(of.fabric) ?? [], search });
  if (!('sheets' in laid)) return laid.layout.length;
  return laid.left.length > 0 ? Number.POSITIVE_INFINITY : laid.cost;
};

/** What it is never less than, as far as that is seen at once: on cloth by the length its longest piece that must not turn, else 0. */
export const leastLength = ({ fabric, natures, pieces }: Omit<Parameters<typeof quickLength>[0], 'memory'>): number => {
  const nature = natures.get(fabric) as ClothNature;
  if (nature.length !== null || nature.stock !== undefined) return 0;
  return Math.max(
    0,
    ...pieces.map((piece) =>
      piece.fabric === fabric && piece.lie === 'across' && piece.turn === null ? piece.cut.size[1] : 0,
    ),
  );
};
