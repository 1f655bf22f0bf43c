// What is cut from each cloth for a drafted quilt, given how wide and of what nature its cloths are: pieces of blocks, top
// and finish. Sizes and joining stay the same on any cloth; strips joined across it, panels and binding do not.

import {
  blockPieces,
  finishPieces,
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
import { chooseBorderLie, topPlanner } from '#craft/top';
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

export const piecesTaken = ({
  quilt,
  set,
  drawn,
  pressing,
  blocks,
  natures,
  asked,
  memory,
}: QuiltToCut): PiecesTaken => {
  const remembered = memory ? { memory } : {};
  const rule: CutRule = { seam: length(toNumber(quilt.seam)), ruler: quilt.ruler };
  const float = length(quilt.top.set === 'on-point' ? toNumber(quilt.top.float) : 0);
  const finish = planFinish({ quilt, set, natures, rule });
  const inBlocks = [
    ...blockPieces({ blocks, placed: set.placed, drawn, natures, pathOf: pathsOf(quilt), motifsOf: motifsIn(quilt) }),
    ...finishPieces(finish, natures),
  ];
  const topFor = topPlanner({ set, drawn, pressing, rule, natures, float });
  const lies = chooseBorderLie(quilt.top.borders, (fabric, borderLie) =>
    asked !== undefined && asked !== fabric
      ? 0
      : quickLength({
          ...remembered,
          fabric,
          natures,
          pieces: [...inBlocks, ...topPieces(topFor(borderLie), natures)],
        }),
  );
  const top = topFor(lies);
  return {
    top,
    finish,
    pieces: nestedWell({ ...remembered, pieces: [...inBlocks, ...topPieces(top, natures)], natures }),
  };
};

const motifsIn = (quilt: Quilt): ((block: string) => readonly string[]) => {
  const known = new Map(quilt.blocks.map((b) => [b.id, b.motifs ?? []]));
  return (block) => known.get(block) ?? [];
};

export const pathsOf = (quilt: Quilt): ((block: string) => string) => {
  const known = new Map(quilt.blocks.map((b) => [b.id, b.path]));
  return (block) => known.get(block) as string;
};
