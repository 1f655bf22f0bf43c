// How long each step of a plan takes, over the whole quilt, and all of them; by the table of minutes that the document has.

import { unitsAmong } from '#craft/blocks';
import { cornerTolerance } from '#craft/limits';
import { inchIn, length } from '#craft/measure';
import { allWork, matchesOn, minutesOf, minutesWith, partOf, seamWork, type Work } from '#craft/minutes';
import type { BlockPlan, ClothPiece, FabricPlan, PlannedStep, QuiltPlan, TopStep } from '#craft/plan';
import { madeWork } from '#craft/ways';
import { toNumber } from '#ground/exact';
import { finishWork } from './finish-work.ts';

type Made = Pick<QuiltPlan, 'quilt' | 'top' | 'blocks' | 'fabrics' | 'finish'>;

const inMinutes = (work: Work, { quilt }: Pick<QuiltPlan, 'quilt'>): number =>
  minutesOf(work, minutesWith(quilt.minutes));

/** One step of a block, as often as the quilt takes it. */
export const blockStepMinutes = (plan: Pick<QuiltPlan, 'quilt'>, block: BlockPlan, step: PlannedStep): number =>
  inMinutes(blockStepWork(plan, block, step), plan);

const blockStepWork = ({ quilt }: Pick<QuiltPlan, 'quilt'>, block: BlockPlan, step: PlannedStep): Work => {
  const { made } = step;
  // units of several entries are made at once, each with its share of the work: they are laid, sewn and pressed otherwise than seam by seam; those cut singly with room are trimmed besides
  const together = made
    ? partOf(
        madeWork({ ...made, units: unitsAmong(made), seam: length(toNumber(quilt.seam)), measure: quilt.unit }),
        made.units / unitsAmong(made),
      )
    : {};
  if (made && made.way.name !== 'singly') return together;
  const [first, second] = step.patches.map((part) => part.map((patch) => block.patches[patch]?.points ?? []));
  const slack = 4 * cornerTolerance * Math.max(...block.finished);
  const matches = matchesOn({ line: step.line, first: first ?? [], second: second ?? [], slack }) + step.corners;
  const eased = step.kind === 'curved' ? { curve: step.total } : {};
  return allWork([together, eased, seamWork({ ...step, matches }, quilt.unit)]);
};

/** One step of the top; where rows are joined, what stands side by side in both meets. */
export const topStepMinutes = (plan: Pick<QuiltPlan, 'quilt'>, step: TopStep): number => {
  const matches = step.stage === 'rows' ? Math.max(0, (step.things[1]?.length ?? 1) - 1) : 0;
  return inMinutes(seamWork({ ...step, matches }, plan.quilt.unit), plan);
};

/** To show one step of a block to a class; whole minutes. */
export const shownStepMinutes = (plan: Pick<QuiltPlan, 'quilt'>, { seam }: Pick<PlannedStep, 'seam'>): number =>
  Math.round(inMinutes({ show: 1, showInch: seam / inchIn[plan.quilt.unit] }, plan));

/** To begin a lesson, before its first step. */
export const lessonBeginMinutes = (plan: Pick<QuiltPlan, 'quilt'>): number => Math.round(inMinutes({ begin: 1 }, plan));

/** All steps of a block, as often as the quilt takes it. */
export const blockMinutes = (plan: Pick<QuiltPlan, 'quilt'>, block: BlockPlan): number =>
  sumOf(block.steps.map((step) => blockStepMinutes(plan, block, step)));

export const topMinutes = (plan: Pick<QuiltPlan, 'quilt' | 'top'>): number =>
  sumOf(plan.top.steps.map((step) => topStepMinutes(plan, step)));

/** Of all cutting, of all sewing of blocks and top, and of all finishing. */
export const minutesOfPlan = (
  plan: Made,
): { readonly cutting: number; readonly sewing: number; readonly finishing: number } => ({
  cutting: cuttingMinutes(plan),
  sewing: sewingMinutes(plan),
  finishing: inMinutes(finishWork(plan), plan),
});

/** Of all that is sewn and finished; what is cut is not in it. */
export const sewnMinutes = (plan: Pick<QuiltPlan, 'quilt' | 'top' | 'blocks' | 'finish'>): number =>
  sewingMinutes(plan) + inMinutes(finishWork(plan), plan);

const sewingMinutes = (plan: Pick<QuiltPlan, 'quilt' | 'top' | 'blocks'>): number =>
  sumOf(plan.blocks.map((block) => blockMinutes(plan, block))) + topMinutes(plan);

const sumOf = (minutes: readonly number[]): number => minutes.reduce((all, one) => all + one, 0);

export const cuttingMinutes = (plan: Pick<Made, 'quilt' | 'fabrics'>): number => inMinutes(cuttingWork(plan), plan);

/** Every piece, and every strip that is folded and laid straight before. */
const cuttingWork = ({ quilt, fabrics }: Pick<Made, 'quilt' | 'fabrics'>): Work => {
  const pieces = fabrics.flatMap((fabric) => fabric.pieces).reduce((all, piece) => all + cutsOf(piece), 0);
  const widths = new Map(quilt.fabrics.map(({ id, usableWidth }) => [id, toNumber(usableWidth)]));
  const strips = fabrics.reduce((all, fabric) => all + stripsOf(fabric, widths.get(fabric.id) ?? 0), 0);
  return { cut: pieces, fold: strips };
};

/** Squares cut apart count once; of what nests in strips or pairs every piece is cut by itself. */
const cutsOf = ({ count, gives, outlines }: ClothPiece): number => (outlines.length > 0 ? count * gives : count);

/** Strips that each size takes by itself, whatever layout is found: what is folded and laid straight for it. */
const stripsOf = ({ pieces }: FabricPlan, width: number): number =>
  pieces.reduce((all, { cut, count }) => all + Math.ceil(count / piecesInStrip(cut, width)), 0);

/** Side by side in a strip across the cloth. */
export const piecesInStrip = ([across]: ClothPiece['cut'], width: number): number =>
  Math.max(1, Math.floor(width / across + 1e-9));
