// What is cut from each cloth for a drafted quilt, given how wide and of what nature its cloths are: pieces of blocks, top
// and finish. Sizes and joining stay the same on any cloth; strips joined across it, panels and binding do not.

import {
  blockPieces,
  finishPieces,
  leastLength,
  type Natures,
  nestedWell,
  quickLength,
  topPieces,
  type WantedPiece,
} from '#craft/cloths';
import type { CutRule } from '#craft/cutting';
import type { Quilt } from '#craft/design';
import { length } from '#craft/measure';
import type { BlockPlan, FinishPlan, TopPlan } from '#craft/plan';
import type { TopPressing } from '#craft/pressing';
import type { SetTop } from '#craft/setting';
import type { DrawnCloths } from '#craft/tones';
import { type BorderLie, borderLies, chooseBorderLie, isBorderLie, topPlanner } from '#craft/top';
import { toNumber } from '#ground/exact';
import type { Recall } from '#ground/recall';
import { planFinish } from './finish-plan.ts';

export interface QuiltToCut {
  readonly quilt: Quilt;
  readonly set: SetTop;
  readonly drawn: DrawnCloths;
  readonly pressing: TopPressing;
  readonly blocks: readonly BlockPlan[];
  readonly natures: Natures;
  /** Where only this cloth's pieces are of interest: how borders of others lie is not looked into. */
  readonly asked?: string;
  readonly memory?: Recall;
}

export interface PiecesTaken {
  readonly top: TopPlan;
  readonly finish: FinishPlan;
  readonly pieces: readonly WantedPiece[];
}

export const piecesTaken = (of: QuiltToCut): PiecesTaken => {
  const { quilt, natures, asked, memory } = of;
  const remembered = memory ? { memory } : {};
  const { finish, inBlocks, topFor } = beforeBorders(of);
  const piecesFor = (lies: readonly BorderLie[]) => [...inBlocks, ...topPieces(topFor(lies), natures)];
  const lies = chooseBorderLie(quilt.top.borders, {
    lengthOf: (fabric, lies) =>
      asked !== undefined && asked !== fabric
        ? 0
        : quickLength({ ...remembered, fabric, natures, pieces: piecesFor(lies) }),
    leastOf: (fabric, lies) => leastLength({ fabric, natures, pieces: piecesFor(lies) }),
  });
  const top = topFor(lies);
  return {
    top,
    finish,
    pieces: nestedWell({ ...remembered, pieces: [...inBlocks, ...topPieces(top, natures)], natures }),
  };
};

/** Of those lists, the one that `piecesTaken` takes. */
export const piecesAsBordersLie = (
  of: Pick<QuiltToCut, 'quilt' | 'natures' | 'memory'> & { readonly pieces: readonly PiecesTaken['pieces'][] },
): PiecesTaken['pieces'] => {
  const { borders } = of.quilt.top;
  const all = borderLies(borders).map((lies) => lies.join());
  const piecesFor = (lies: readonly BorderLie[]) => of.pieces[all.indexOf(lies.join())] as PiecesTaken['pieces'];
  return piecesFor(
    chooseBorderLie(borders, {
      lengthOf: (fabric, lies) => quickLength({ ...of, fabric, pieces: piecesFor(lies) }),
      leastOf: (fabric, lies) => leastLength({ ...of, fabric, pieces: piecesFor(lies) }),
    }),
  );
};

/** Whether that is the list at this place. */
export const doBordersLieSo = (of: {
  readonly quilt: Quilt;
  /** As `borderLies` has them. */
  readonly at: number;
  /** Of a cloth, with the borders so; as for choosing. */
  readonly lengthOf: (fabric: string, at: number) => number;
  readonly leastOf: (fabric: string, at: number) => number;
}): boolean => {
  const { borders } = of.quilt.top;
  const all = borderLies(borders);
  const names = all.map((lies) => lies.join());
  const placeOf = (lies: readonly BorderLie[]): number => names.indexOf(lies.join());
  return isBorderLie(borders, all[of.at] as readonly BorderLie[], {
    lengthOf: (fabric, lies) => of.lengthOf(fabric, placeOf(lies)),
    leastOf: (fabric, lies) => of.leastOf(fabric, placeOf(lies)),
  });
};

/** The same without laying anything out: one list of pieces for each way in which the borders may lie. */
export const piecesHoweverTaken = (
  of: QuiltToCut,
): Pick<PiecesTaken, 'top' | 'finish'> & { readonly pieces: readonly PiecesTaken['pieces'][] } => {
  const { finish, inBlocks, topFor } = beforeBorders(of);
  const tops = borderLies(of.quilt.top.borders).map(topFor);
  return {
    top: tops[0] as TopPlan,
    finish,
    pieces: tops.map((top) => [...inBlocks, ...topPieces(top, of.natures)]),
  };
};

const beforeBorders = ({ quilt, set, drawn, pressing, blocks, natures }: QuiltToCut) => {
  const rule: CutRule = { seam: length(toNumber(quilt.seam)), ruler: quilt.ruler };
  const float = length(quilt.top.set === 'on-point' ? toNumber(quilt.top.float) : 0);
  const finish = planFinish({ quilt, set, natures, rule });
  const inBlocks = [
    ...piecesOfBlocks({ quilt, blocks, placed: set.placed, drawn, natures }),
    ...finishPieces(finish, natures),
  ];
  return { finish, inBlocks, topFor: topPlanner({ set, drawn, pressing, rule, natures, float }) };
};

export const piecesOfBlocks = (
  of: Pick<QuiltToCut, 'quilt' | 'blocks' | 'drawn' | 'natures'> & Pick<SetTop, 'placed'>,
): readonly WantedPiece[] => blockPieces({ ...of, pathOf: pathsOf(of.quilt), motifsOf: motifsIn(of.quilt) });

const motifsIn = (quilt: Quilt): ((block: string) => readonly string[]) => {
  const known = new Map(quilt.blocks.map((b) => [b.id, b.motifs ?? []]));
  return (block) => known.get(block) ?? [];
};

export const pathsOf = (quilt: Quilt): ((block: string) => string) => {
  const known = new Map(quilt.blocks.map((b) => [b.id, b.path]));
  return (block) => known.get(block) as string;
};
