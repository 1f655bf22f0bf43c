// What a drafted quilt is cut into and how it is sewn, before anything is laid out.
import { type BlockPlans, entriesToPress, pieceEntries, planBlocks, thinPieces, tightCurves } from '#craft/blocks';
import { type Natures, naturesOf } from '#craft/cloths';
import type { CutRule, CuttingProblem } from '#craft/cutting';
import { length } from '#craft/measure';
import type { QuiltPlan, TopPlan } from '#craft/plan';
import { planPressing } from '#craft/pressing';
import { lightnessBy } from '#craft/tones';
import { toNumber } from '#ground/exact';
import type { Recall } from '#ground/recall';
import { type DraftedQuilt, likenessBy } from './drafted-quilt.ts';
import { pathsOf, type QuiltToCut } from './pieces-taken.ts';

export interface Remembering {
  readonly memory?: Recall;
}

/** What a quilt is cut into and how it is sewn, before anything is laid out. */
export const cutDrafted = (
  all: DraftedQuilt,
  { memory }: Remembering,
): { readonly rule: CutRule; readonly natures: Natures; readonly planned: BlockPlans; readonly toCut: ToCut } => {
  const { quilt, set, scraps } = all;
  const { drawn } = scraps;
  const remembered = memory ? { memory } : {};
  const { entries, rule, natures } = piecedIn(all, remembered);
  const pressing = planPressing({ entries: entriesToPress(entries, { drawn, natures }), set });
  const planned = planBlocks({ ...remembered, quilt, entries, pressing: pressing.blocks, drawn, natures, rule });
  const toCut = { ...remembered, quilt, set, drawn, pressing: pressing.top, blocks: planned.blocks };
  return { rule, natures, planned, toCut };
};

/** Its blocks in their ways, with the rule and the cloths they are cut by. */
export const piecedIn = ({ quilt, drafted, foundations, set }: DraftedQuilt, remembered: Remembering) => {
  const rule: CutRule = { seam: length(toNumber(quilt.seam)), ruler: quilt.ruler };
  const natures = naturesOf(quilt);
  const own = { quilt, drafted, foundations, set, natures, rule, ...remembered };
  return {
    entries: pieceEntries({ ...own, lightness: lightnessBy(quilt), likeness: likenessBy(quilt) }),
    rule,
    natures,
  };
};

type ToCut = Omit<QuiltToCut, 'natures'>;

/** Pieces that are too thin to cut, and curves too tight to sew. */
export const uncuttable = (
  of: Pick<DraftedQuilt, 'quilt' | 'set'> &
    Pick<QuiltPlan, 'blocks'> & { readonly top: Pick<TopPlan, 'pieces'>; readonly rule: CutRule },
): readonly CuttingProblem[] => {
  const { quilt, set, blocks, top, rule } = of;
  const pathOf = pathsOf(quilt);
  const topPathOf = (piece: TopPlan['pieces'][number]): string => set.strips[piece.strips[0] as number]?.path ?? '/top';
  const thin = thinPieces({ blocks, top: top.pieces, ruler: quilt.ruler, pathOf, topPathOf });
  return [...thin, ...tightCurves({ blocks, seam: rule.seam, pathOf })];
};
