// Which pieces does a quilt take, of which cloth, and how may each lie on it? Those of its blocks, its top and its finish.
import { type ClothNature, type Cut, joiningRun, type Wanted } from '#craft/cutting';
import type { QuarterTurn } from '#craft/design';
import type { Length } from '#craft/measure';
import type { BlockPlan, FinishPlan, PieceUse, TopPiece, TopPlan } from '#craft/plan';
import type { PlacedBlock } from '#craft/setting';
import type { DrawnCloths } from '#craft/tones';
import type { Natures } from './natures.ts';

export type WantedPiece = Wanted<Omit<PieceUse, 'count'>>;

/** Pieces of the blocks, as drawn; in a cloth whose print stands upright those of turned blocks stand apart. */
export const blockPieces = (of: {
  readonly blocks: readonly BlockPlan[];
  readonly placed: readonly PlacedBlock[];
  readonly drawn: DrawnCloths;
  readonly natures: Natures;
  readonly pathOf: (block: string) => string;
  /** Tones of a block whose pieces are cut round a motif. */
  readonly motifsOf: (block: string) => readonly string[];
}): readonly WantedPiece[] =>
  of.blocks.flatMap((block) => {
    const cloths = clothsOf(block, of);
    const motifs = of.motifsOf(block.id);
    return block.pieces.flatMap((piece) =>
      (cloths.get(piece.label) ?? []).map(
        ({ fabric, turn, count }): WantedPiece => ({
          fabric,
          ...(motifs.includes(piece.tone) && of.natures.get(fabric)?.repeat !== undefined
            ? { cut: { ...templateOf(piece.cut), ways: [], pair: null }, motif: true }
            : { cut: templateOf(piece.cut) }),
          lie: 'free',
          turn,
          count,
          path: of.pathOf(block.id),
          use: {
            role: 'block',
            block: block.id,
            colouring: block.colouring,
            mirror: block.mirror,
            turn,
            label: piece.label,
          },
        }),
      ),
    );
  });

/** Whether it comes from strips is chosen for the cloths at hand, which need not be those that it was planned on. */
const templateOf = (cut: Cut): Cut => cut.alone ?? cut;

interface ClothUse {
  readonly fabric: string;
  /** Null where it does not matter. */
  readonly turn: QuarterTurn | null;
  count: number;
}

/** By label of an entry's pieces: the cloths that they are cut from, and in which turns, in the order of first use. */
const clothsOf = (
  entry: BlockPlan,
  of: { readonly placed: readonly PlacedBlock[]; readonly drawn: DrawnCloths; readonly natures: Natures },
): ReadonlyMap<string, readonly ClothUse[]> => {
  const uses = new Map<string, ClothUse[]>();
  of.placed.forEach(({ block, colouring, mirror, turn: inTop }, place) => {
    if (block !== entry.id || colouring !== entry.colouring || mirror !== entry.mirror) return;
    // on point the print follows the block, an eighth of a turn off upright
    const turn = (inTop - (inTop % 90)) as QuarterTurn;
    const drawn = of.drawn[place];
    entry.patches.forEach((patch, i) => {
      const fabric = drawn?.[i] ?? patch.fabric;
      const lies = of.natures.get(fabric)?.print === 'none' ? null : turn;
      const list = uses.get(patch.piece) ?? [];
      uses.set(patch.piece, list);
      const known = list.find((use) => use.fabric === fabric && use.turn === lies);
      if (known) known.count++;
      else list.push({ fabric, turn: lies, count: 1 });
    });
  });
  return uses;
};

/**
 * Pieces of the top: strips in one piece may lie either way, joined ones and borders keep their grain. What a print that
 * stands upright allows is in their cuts already.
 */
export const topPieces = (top: TopPlan, natures: Natures): readonly WantedPiece[] =>
  top.pieces.flatMap((piece) =>
    piece.joinedFrom.map((cloth): WantedPiece => {
      const isGrained = piece.role === 'border' || piece.role === 'spacer';
      const isPrinted = natures.get(piece.fabric)?.print !== 'none';
      const free = piece.joinedFrom.length === 1 && !isGrained && !isPrinted;
      const use = {
        role: piece.role,
        block: null,
        colouring: null,
        mirror: false,
        turn: null,
        label: piece.label,
      } as const;
      return {
        fabric: piece.fabric,
        cut: { ...piece.cut, size: cloth, shape: piece.cut.gives === 1 ? shapeOf(cloth) : piece.cut.shape },
        lie: free ? 'free' : 'across',
        // triangles tell by themselves how they lie in the quilt
        turn: piece.cut.gives > 1 ? 0 : null,
        count: piece.count,
        path: pathOf(top, piece),
        use,
      };
    }),
  );

type FinishRole = 'binding' | 'backing' | 'sleeve' | 'label';

/** Strips or squares of the binding, panels of the backing, sleeve and label; their cuts are [across the cloth, along it] and stay so. */
export const finishPieces = (finish: FinishPlan, natures: Natures): readonly WantedPiece[] => {
  const { binding, backing, sleeve, label } = finish;
  const cut =
    (role: FinishRole, fabric: string) =>
    (size: readonly [Length, Length], count: number): WantedPiece => ({
      fabric,
      cut: flat(size),
      lie: 'across',
      // a label is read: its print stands upright; the others are cut as they lie on their cloth already
      turn: role === 'label' ? 0 : null,
      count,
      path: `/finish/${role}`,
      use: { role, block: null, colouring: null, mirror: false, turn: null, label: role },
    });
  const one = (role: FinishRole, fabric: string, sizes: readonly (readonly [Length, Length])[]) =>
    sizes.map((size) => cut(role, fabric)(size, 1));
  const { bias } = binding ?? { bias: null };
  return [
    ...(binding && !bias ? [cut('binding', binding.fabric)(bindingStrip(binding, natures), binding.strips)] : []),
    ...(binding && bias ? [cut('binding', binding.fabric)([bias.side, bias.side], bias.squares)] : []),
    ...(backing ? one('backing', backing.fabric, backing.cuts) : []),
    ...(sleeve ? one('sleeve', sleeve.fabric, sleeve.cuts) : []),
    ...(label ? one('label', label.fabric, [label.cut]) : []),
  ];
};

/** Across the cloth, or along the longer side of a sheet. */
const bindingStrip = (
  { fabric, cut }: NonNullable<FinishPlan['binding']>,
  natures: Natures,
): readonly [Length, Length] => {
  const { long, runs } = joiningRun(natures.get(fabric) as ClothNature, cut);
  return runs === 'across' ? [long, cut] : [cut, long];
};

const flat = (size: readonly [Length, Length]) => ({ shape: shapeOf(size), size, gives: 1, template: null }) as const;

const shapeOf = (size: readonly [Length, Length]): 'square' | 'rectangle' =>
  Math.abs(size[0] - size[1]) < 1e-9 ? 'square' : 'rectangle';

const pathOf = (top: TopPlan, piece: TopPiece): string => top.set.strips[piece.strips[0] as number]?.path ?? '/top';
