// What a drafted quilt is cut into and how it is sewn, before anything is laid out; and the cloth that takes, at a first glance.
import {
  type BlockPlans,
  entriesToPress,
  entryName,
  pieceEntries,
  planBlocks,
  thinPieces,
  tightCurves,
} from '#craft/blocks';
import { type Natures, naturesOf, nestedWell, planCloths, planCost, type WantedPiece } from '#craft/cloths';
import type { CutRule, CuttingProblem } from '#craft/cutting';
import type { Method, Quilt } from '#craft/design';
import { length } from '#craft/measure';
import type { QuiltPlan, TopPlan } from '#craft/plan';
import { type BlockPressing, planPressing } from '#craft/pressing';
import { lightnessBy } from '#craft/tones';
import { toNumber } from '#ground/exact';
import type { Recall } from '#ground/recall';
import { type DraftedQuilt, draftQuilt, likenessBy } from './drafted-quilt.ts';
import { pathsOf, piecesAsBordersLie, piecesHoweverTaken, piecesOfBlocks, type QuiltToCut } from './pieces-taken.ts';
import { cuttingMinutes } from './step-minutes.ts';

interface Remembering {
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

const piecedIn = ({ quilt, drafted, foundations, set }: DraftedQuilt, remembered: Remembering) => {
  const rule: CutRule = { seam: length(toNumber(quilt.seam)), ruler: quilt.ruler };
  const natures = naturesOf(quilt);
  const own = { quilt, drafted, foundations, set, natures, rule, ...remembered };
  return {
    entries: pieceEntries({ ...own, lightness: lightnessBy(quilt), likeness: likenessBy(quilt) }),
    rule,
    natures,
  };
};

export type ToCut = Omit<QuiltToCut, 'natures'>;

/** What one choice of methods has cut and sewn, before its layouts. */
export interface MadeCut extends Pick<QuiltPlan, 'quilt' | 'blocks' | 'top' | 'finish' | 'notes'> {
  /** One list for each way in which the borders may lie, as `borderLies` has them; nothing of it nests yet. */
  readonly pieces: readonly (readonly WantedPiece[])[];
}

/**
 * As far as `madePlanner` goes without laying anything out.
 *
 * @returns null where there is no plan
 */
export const madeCutter = (
  quilt: Quilt,
  options: Remembering = {},
): ((methods: readonly Method[]) => MadeCut | null) => {
  const blocks = quilt.blocks.map(({ methods: _, ...block }) => block);
  const drafted = draftQuilt({ ...quilt, blocks }, options);
  return (methods) => {
    if (!drafted.ok) return null;
    const own = { ...quilt, methods, blocks };
    const all = { ...drafted.value, quilt: own };
    const { rule, natures, planned, toCut } = cutDrafted(all, options);
    const cut = piecesHoweverTaken({ ...toCut, natures });
    if (uncuttable({ ...all, rule, blocks: planned.blocks, top: cut.top }).length > 0) return null;
    return { quilt: own, ...planned, ...cut };
  };
};

/**
 * The same of some blocks alone, without how their seams are pressed.
 *
 * @returns null where there is no plan
 */
export const blockCutter = (
  quilt: Quilt,
  options: Remembering = {},
): ((
  methods: readonly Method[],
  names: ReadonlySet<string>,
) => (Pick<MadeCut, 'quilt' | 'blocks'> & { readonly pieces: readonly WantedPiece[] }) | null) => {
  const blocks = quilt.blocks.map(({ methods: _, ...block }) => block);
  const drafted = draftQuilt({ ...quilt, blocks }, options);
  return (methods, names) => {
    if (!drafted.ok) return null;
    const own = { ...quilt, methods, blocks };
    const places = [...drafted.value.set.placed.entries()].filter(([, entry]) => names.has(entryName(entry)));
    const set = { ...drafted.value.set, placed: places.map(([, entry]) => entry) };
    const drawn = places.map(([place]) => drafted.value.scraps.drawn[place] ?? null);
    const { entries, rule, natures } = piecedIn({ ...drafted.value, quilt: own, set }, options);
    const planned = planBlocks({
      ...options,
      quilt: own,
      entries,
      pressing: entries.map(({ pieced }) => unpressed(pieced.steps.length)),
      drawn,
      natures,
      rule,
    });
    if (uncuttable({ quilt, set, rule, blocks: planned.blocks, top: { pieces: [] } }).length > 0) return null;
    const pieces = piecesOfBlocks({ quilt: own, blocks: planned.blocks, placed: set.placed, drawn, natures });
    return { quilt: own, blocks: planned.blocks, pieces };
  };
};

const unpressed = (steps: number): BlockPressing => ({
  presses: Array.from({ length: steps }, () => 'open' as const),
  other: null,
  turned: 0,
  loose: [],
  meetings: 0,
  nested: 0,
});

/**
 * And the rest of the way, to the figures alone: cloths laid out, with what that takes to cut.
 *
 * @param pieces as `madeCutter` gives them
 * @param steps  of layout search for each cloth; 0: at a first glance
 * @returns null where a piece has no room on its cloth
 */
export const clothWeigher = (
  quilt: Quilt,
  options: Remembering = {},
): ((
  pieces: MadeCut['pieces'],
  steps: number,
) => (Pick<QuiltPlan, 'fabrics' | 'cost'> & { readonly cutting: number }) | null) => {
  const natures = naturesOf(quilt);
  const remembered = options.memory ? { memory: options.memory } : {};
  return (pieces, steps) => {
    const search = { steps, solver: null, fold: 'where-asked', ...remembered } as const;
    const lies = piecesAsBordersLie({ quilt, natures, pieces, ...remembered });
    const { fabrics, problems } = planCloths({
      quilt,
      pieces: nestedWell({ ...remembered, pieces: lies, natures }),
      natures,
      search,
    });
    if (problems.length > 0) return null;
    return { fabrics, cost: planCost(quilt, fabrics), cutting: cuttingMinutes({ quilt, fabrics }) };
  };
};

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
