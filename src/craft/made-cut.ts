// One choice of methods after another for a quilt that is drafted once: what each has cut and sewn, of the whole quilt or of some of its
// blocks, and what cloth that takes.
import { entryName, planBlocks } from '#craft/blocks';
import { naturesOf, nestedWell, planCloths, planCost, type WantedPiece } from '#craft/cloths';
import type { Method, Quilt } from '#craft/design';
import type { QuiltPlan } from '#craft/plan';
import type { BlockPressing } from '#craft/pressing';
import { cutDrafted, piecedIn, type Remembering, uncuttable } from './cut-quilt.ts';
import { draftQuilt } from './drafted-quilt.ts';
import { piecesAsBordersLie, piecesHoweverTaken, piecesOfBlocks } from './pieces-taken.ts';
import { cuttingMinutes } from './step-minutes.ts';

/** The quilt with these methods alone, whatever it or its blocks chose. */
export const madeBy = (quilt: Quilt, methods: readonly Method[]): Quilt => ({
  ...quilt,
  methods,
  blocks: quilt.blocks.map(({ methods: _, ...block }) => block),
});

/** What one choice of methods has cut and sewn, before its layouts. */
export interface MadeCut extends Pick<QuiltPlan, 'quilt' | 'blocks' | 'top' | 'finish' | 'notes'> {
  /** One list for each way in which the borders may lie, as `borderLies` has them; nothing of it nests yet. */
  readonly pieces: readonly (readonly WantedPiece[])[];
}

/**
 * As far as `planMade` goes without laying anything out.
 *
 * @returns null where there is no plan
 */
export const madeCutter = (
  quilt: Quilt,
  options: Remembering = {},
): ((methods: readonly Method[]) => MadeCut | null) => {
  const bare = madeBy(quilt, []);
  const drafted = draftQuilt(bare, options);
  return (methods) => {
    if (!drafted.ok) return null;
    const own = { ...bare, methods };
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
  const bare = madeBy(quilt, []);
  const drafted = draftQuilt(bare, options);
  return (methods, names) => {
    if (!drafted.ok) return null;
    const own = { ...bare, methods };
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
