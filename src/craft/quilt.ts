// The whole road: from a quilt document to its plan. Read this first; every line is a room.

import { type BlockPlans, motifNotes } from '#craft/blocks';
import {
  type ClothWatch,
  clothsBySteps,
  endsNotes,
  foldNotes,
  type Natures,
  planCost,
  printCostNotes,
  printSlantNotes,
  withStrips,
} from '#craft/cloths';
import { type CuttingProblem, defaultBudget } from '#craft/cutting';
import {
  centresOf,
  type DesignProblem,
  inColourway,
  inSize,
  type Method,
  parseQuilt,
  type Quilt,
  readQuilt,
  unusedTones,
} from '#craft/design';
import type { DraftingProblem } from '#craft/drafting';
import { threadFor } from '#craft/finishing';
import { length, type Unit } from '#craft/measure';
import type { Note, QuiltPlan } from '#craft/plan';
import type { SettingProblem } from '#craft/setting';
import type { IntegerSolver } from '#craft/strips';
import { lightnessBy, type ValueNote, valueNotes } from '#craft/tones';
import { topMarkNotes } from '#craft/top';
import { done, type Outcome, refused } from '#ground/outcome';
import type { Recall } from '#ground/recall';
import { drained } from '#ground/search';
import { cutDrafted, uncuttable } from './cut-quilt.ts';
import { type DraftedQuilt, draftQuilt } from './drafted-quilt.ts';
import { bedNotes } from './finish-plan.ts';
import { frozen } from './frozen.ts';
import { madeBy } from './made-cut.ts';
import { pathsOf, piecesTaken } from './pieces-taken.ts';
import { minutesOfPlan } from './step-minutes.ts';

export { entryName, toldCloths, turnsAlike, unitsAmong, wayOf } from '#craft/blocks';
export type { WantedPiece } from '#craft/cloths';
export { leastLength, naturesOf, quickLength, withBetterCloth } from '#craft/cloths';
export type * from '#craft/plan';
export type { Note, NotMade } from '#craft/plan';
export { type ValuesNear, valuesNear } from '#craft/tones';
export { type LaidAlone, layAlone } from './laid-alone.ts';
export { blockCutter, clothWeigher, type MadeCut, madeCutter } from './made-cut.ts';
export { planOfBlock } from './one-block.ts';
export { doBordersLieSo } from './pieces-taken.ts';
export { type Recutting, recut } from './recut.ts';
export { type Refinishing, refinish } from './refinish.ts';
export { replan } from './replan.ts';
export {
  blockMinutes,
  blockStepMinutes,
  lessonBeginMinutes,
  piecesInStrip,
  sewnMinutes,
  shownStepMinutes,
  topMinutes,
  topStepMinutes,
} from './step-minutes.ts';

/** Lengths of a problem are in the document's unit, which is told with them. */
export type Problem = DesignProblem | ((DraftingProblem | SettingProblem | CuttingProblem) & { readonly unit: Unit });

export interface PlanOptions {
  /** Chooses among strips found; without it the best of the searched layouts stands. */
  readonly solver?: IntegerSolver;
  /** Layout search, in steps a cloth: the same steps give the same plan. 0: level heuristics only. */
  readonly budget?: { readonly steps: number };
  /** Missing: what cutting on the fold would cost and save is told of every cloth. */
  readonly fold?: 'where-asked';
  /** Hears of each cloth's better layouts while they are searched for. */
  readonly watch?: ClothWatch;
  /** Of plans of nearly the same document: blocks and cloths that are as they were are not worked out again. */
  readonly memory?: Recall;
}

/**
 * Everything that follows from one quilt document, frozen; or every problem that stands in the way.
 *
 * @param document the text of a `*.quilt.json` file, or the value that it holds
 */
export const planQuilt = (document: unknown, options: PlanOptions = {}): Outcome<QuiltPlan, Problem> =>
  drained(planQuiltBySteps(document, options));

/** The same, for who has other things to do between the steps of the layout search; to give it up is to forget it. */
export function* planQuiltBySteps(
  document: unknown,
  options: PlanOptions = {},
): Generator<void, Outcome<QuiltPlan, Problem>, void> {
  const read = typeof document === 'string' ? parseQuilt(document) : readQuilt(document);
  if (!read.ok) return read;
  const planned = yield* planRead(read.value, options);
  const { unit } = read.value;
  return planned.ok
    ? planned
    : refused(
        planned.problems.map((problem) => ({ ...problem, unit })),
        planned.more,
      );
}

/**
 * The plan of another size that the document has: the same blocks and cloths in its own top.
 *
 * @param quilt of a plan made before
 * @param id of one of its sizes
 * @returns problems at their places inside the size
 * @throws RangeError where the quilt has no such size
 */
export const planSize = (of: {
  readonly quilt: Quilt;
  readonly id: string;
  readonly options?: PlanOptions;
}): Outcome<QuiltPlan, Problem> => {
  const { quilt, id, options = {} } = of;
  const size = quilt.sizes.find((one) => one.id === id);
  if (size === undefined) throw new RangeError(`the quilt has no size ${id}`);
  const { unit } = quilt;
  const own = [/^\/top(?=\/|$)/, ...(size.finish === quilt.finish ? [] : [/^\/finish(?=\/|$)/])];
  const placed = <T extends { readonly path: string }>(one: T): T =>
    own.some((part) => part.test(one.path)) ? { ...one, path: `${size.path}${one.path}` } : one;
  const planned = drained(planRead(inSize(quilt, size), options));
  if (!planned.ok)
    return refused(
      planned.problems.map((problem) => ({ ...placed(problem), unit })),
      planned.more,
    );
  return done(frozen({ ...planned.value, notes: planned.value.notes.map(placed) }));
};

/**
 * The plan of the same quilt with its units made otherwise.
 *
 * @param methods in place of all that the document chooses, for the quilt and for its blocks
 */
export const planMade = (of: {
  readonly quilt: Quilt;
  readonly methods: readonly Method[];
  readonly options?: PlanOptions;
}): Outcome<QuiltPlan, Problem> => {
  const { quilt, methods, options = {} } = of;
  const planned = drained(planRead(madeBy(quilt, methods), options));
  if (planned.ok) return planned;
  const { unit } = quilt;
  return refused(
    planned.problems.map((problem) => ({ ...problem, unit })),
    planned.more,
  );
};

function* planRead(
  quilt: Quilt,
  options: PlanOptions,
): Generator<void, Outcome<QuiltPlan, DraftingProblem | SettingProblem | CuttingProblem>, void> {
  const drafted = draftQuilt(quilt, options);
  return drafted.ok ? yield* planDrafted(drafted.value, options) : drafted;
}

function* planDrafted(
  all: DraftedQuilt,
  options: PlanOptions,
): Generator<void, Outcome<QuiltPlan, CuttingProblem>, void> {
  const { quilt, drafted, scraps } = all;
  const { rule, natures, planned, toCut } = cutDrafted(all, options);
  const remembered = options.memory ? { memory: options.memory } : {};
  const lightness = lightnessBy(quilt);
  const piecesOn = (of: Natures) => piecesTaken({ ...toCut, natures: of });
  const { top, finish, pieces } = piecesOn(natures);
  const angled = withStrips({ blocks: planned.blocks, pieces, natures, pathOf: pathsOf(quilt) });
  const { blocks } = angled;
  const search = {
    steps: (options.budget ?? defaultBudget).steps,
    solver: options.solver ?? null,
    ...(options.fold ? { fold: options.fold } : {}),
    ...remembered,
  };
  const { watch } = options;
  const cloths = yield* clothsBySteps({ quilt, pieces, natures, search, ...(watch ? { watch } : {}) });
  const problems = [...uncuttable({ ...all, rule, blocks, top }), ...cloths.problems];
  if (problems.length > 0) return refused(problems);
  const plan: Unsewn = {
    quilt,
    top,
    blocks,
    fabrics: cloths.fabrics,
    finish,
    cost: planCost(quilt, cloths.fabrics),
    notes: planned.notes,
  };
  const printCosts = yield* printCostNotes({
    quilt,
    fabrics: cloths.fabrics,
    natures,
    search,
    top,
    piecesFor: (of) => piecesOn(of).pieces,
  });
  const noted: Unsewn = {
    ...plan,
    notes: [
      ...unusedBlocks(quilt, blocks),
      ...sashingNotes(quilt),
      ...topMarkNotes(top),
      ...printSlantNotes({ quilt, top, blocks }),
      ...unusedToneNotes(quilt),
      ...planned.notes,
      ...angled.notes,
      ...scraps.notes,
      ...valueNotes({ quilt, blocks, drafted, lightness }),
      ...colourwayNotes(quilt, (other) => valueNotes({ quilt, blocks, drafted, lightness: lightnessBy(other) })),
      ...printCosts,
      ...endsNotes(quilt, cloths.fabrics),
      ...foldNotes(quilt, cloths.fabrics),
      ...motifNotes(quilt, cloths.fabrics),
      ...bedNotes(finish),
    ],
  };
  return done(frozen({ ...noted, ...sewingOf(noted) }));
}

/** The same warnings for the quilt in its other cloths, with the colourway's name. */
const colourwayNotes = (quilt: Quilt, notesOf: (quilt: Quilt) => readonly ValueNote[]): readonly Note[] =>
  quilt.colourways.flatMap((colourway) =>
    notesOf(inColourway(quilt, colourway)).map((note) => ({
      ...note,
      path: colourway.path,
      colourway: colourway.title,
    })),
  );

const unusedBlocks = (quilt: Quilt, blocks: BlockPlans['blocks']): readonly Note[] => {
  const placed = new Set(blocks.map((b) => b.id));
  const used = new Set(quilt.blocks.flatMap((b) => (placed.has(b.id) ? [b.id, ...centresOf(b.shape)] : [])));
  return quilt.blocks
    .filter((b) => !used.has(b.id))
    .map((b) => ({ code: 'design/unused-block', level: 'warning', path: b.path, block: b.id }));
};

const sashingNotes = ({ top }: Quilt): readonly Note[] =>
  top.set === 'on-point' && top.sashing?.outer === false
    ? [{ code: 'setting/sashing-all-round', level: 'note', path: '/top/sashing' }]
    : [];

const unusedToneNotes = (quilt: Quilt): readonly Note[] =>
  unusedTones(quilt).map((unused) => ({ code: 'design/unused-tone', level: 'warning', ...unused }));

type Unsewn = Omit<QuiltPlan, 'time' | 'thread'>;

const sewingOf = (plan: Unsewn): Pick<QuiltPlan, 'time' | 'thread'> => {
  const steps = [...plan.blocks.flatMap((b) => b.steps), ...plan.top.steps];
  const { cutting, sewing, finishing } = minutesOfPlan(plan);
  return {
    time: {
      seams: steps.reduce((all, step) => all + step.total, 0),
      minutes: Math.round(cutting + sewing + finishing),
      cutting: Math.round(cutting),
      sewing: Math.round(sewing),
      finishing: Math.round(finishing),
    },
    thread: threadFor(length(steps.reduce((all, step) => all + step.total * step.seam, 0))),
  };
};
