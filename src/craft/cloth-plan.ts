// The cloths of a plan: everything cut from each, its layout with a bound, and what to buy.
import {
  amountToBuy,
  type ClothLine,
  type CuttingProblem,
  demandsOf,
  type IntegerSolver,
  ledgerOf,
  planLayout,
  type Wanted,
} from '#craft/cutting';
import type { Quilt } from '#craft/design';
import type { Length } from '#craft/measure';
import type { BlockPlan, FabricPlan, FinishPlan, PieceUse, TopPiece, TopPlan } from './plan.ts';

export type WantedPiece = Wanted<Omit<PieceUse, 'count'>>;

export interface ClothSearch {
  /** Steps of layout search a cloth; 0: level heuristics only. */
  readonly steps: number;
  readonly solver: IntegerSolver | null;
}

/** Pieces of the blocks. */
export const blockPieces = (blocks: readonly BlockPlan[], pathOf: (block: string) => string): readonly WantedPiece[] =>
  blocks.flatMap((block) =>
    block.pieces.map((piece) => ({
      fabric: piece.fabric,
      cut: piece.cut,
      lie: 'free',
      count: piece.perBlock * block.count,
      path: pathOf(block.id),
      use: { role: 'block', block: block.id, colouring: block.colouring, mirror: block.mirror, label: piece.label },
    })),
  );

/** Pieces of the top: strips in one piece may lie either way, joined ones and borders keep their grain. */
export const topPieces = (top: TopPlan): readonly WantedPiece[] =>
  top.pieces.flatMap((piece) =>
    piece.joinedFrom.map((cloth): WantedPiece => {
      const free = piece.joinedFrom.length === 1 && piece.role !== 'border';
      const use = { role: piece.role, block: null, colouring: null, mirror: false, label: piece.label } as const;
      return {
        fabric: piece.fabric,
        cut: { ...piece.cut, size: cloth, shape: shapeOf(cloth) },
        lie: free ? 'free' : 'across',
        count: piece.count,
        path: pathOf(top, piece),
        use,
      };
    }),
  );

/** Strips of the binding and panels of the backing; their cuts are [across the cloth, along it] and stay so. */
export const finishPieces = (finish: FinishPlan, usable: ReadonlyMap<string, Length>): readonly WantedPiece[] => {
  const pieces: WantedPiece[] = [];
  const { binding, backing } = finish;
  const plain = (role: 'binding' | 'backing') => ({ role, block: null, colouring: null, mirror: false, label: role });
  if (binding) {
    const size = [usable.get(binding.fabric) as Length, binding.cut] as const;
    pieces.push({
      fabric: binding.fabric,
      cut: flat(size),
      lie: 'across',
      count: binding.strips,
      path: '/finish/binding',
      use: plain('binding'),
    });
  }
  for (const size of backing?.cuts ?? []) {
    pieces.push({
      fabric: backing?.fabric as string,
      cut: flat(size),
      lie: 'across',
      count: 1,
      path: '/finish/backing',
      use: plain('backing'),
    });
  }
  return pieces;
};

/** One entry per used cloth in the document's order, or every piece that does not fit its cloth. */
export const planCloths = (of: {
  readonly quilt: Quilt;
  readonly pieces: readonly WantedPiece[];
  readonly usable: ReadonlyMap<string, Length>;
  readonly search: ClothSearch;
}): { readonly fabrics: readonly FabricPlan[]; readonly problems: readonly CuttingProblem[] } => {
  const { lines, problems } = ledgerOf(of.pieces, of.usable);
  if (problems.length > 0) return { fabrics: [], problems };
  const fabrics = of.quilt.fabrics.flatMap((fabric): readonly FabricPlan[] => {
    const mine = lines.get(fabric.id);
    if (!mine) return [];
    const laid = planLayout({
      width: of.usable.get(fabric.id) as Length,
      demands: demandsOf(mine),
      budget: { steps: of.search.steps },
      ...(of.search.solver ? { solver: of.search.solver } : {}),
    });
    const buy = amountToBuy({ length: laid.layout.length, buying: of.quilt.buying, unit: of.quilt.unit });
    return [{ id: fabric.id, pieces: mine.map(clothPiece), laid, buy }];
  });
  return { fabrics, problems };
};

const clothPiece = (line: ClothLine<Omit<PieceUse, 'count'>>): FabricPlan['pieces'][number] => ({
  cut: line.cut,
  shape: line.shape,
  count: line.count,
  gives: line.gives,
  for: line.uses,
});

const flat = (size: readonly [Length, Length]) => ({ shape: shapeOf(size), size, gives: 1, template: null }) as const;

const shapeOf = (size: readonly [Length, Length]): 'square' | 'rectangle' =>
  Math.abs(size[0] - size[1]) < 1e-9 ? 'square' : 'rectangle';

const pathOf = (top: TopPlan, piece: TopPiece): string => top.set.strips[piece.strips[0] as number]?.path ?? '/top';
