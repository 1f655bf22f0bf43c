// How long each step of a plan takes, over the whole quilt, and all of them; by the table of minutes that the document has.
import { cornerTolerance } from '#craft/limits';
import { length } from '#craft/measure';
import { cuttingMinutes, matchesOn, minutesWith, seamMinutes } from '#craft/minutes';
import { madeMinutes } from '#craft/ways';
import { toNumber } from '#ground/exact';
import type { BlockPlan, ClothPiece, FabricPlan, PlannedStep, QuiltPlan, TopStep } from './plan.ts';

type Sewing = Pick<QuiltPlan, 'quilt' | 'top' | 'blocks' | 'fabrics'>;

/** One step of a block, as often as the quilt takes it. */
export const blockStepMinutes = ({ quilt }: Pick<QuiltPlan, 'quilt'>, block: BlockPlan, step: PlannedStep): number => {
  const table = minutesWith(quilt.minutes);
  const { unit } = quilt;
  const { made } = step;
  // units made together are laid, sewn and pressed otherwise than seam by seam; those cut singly with room are trimmed besides
  const together = made
    ? madeMinutes({ ...made, seam: length(toNumber(quilt.seam)), measure: unit, minutes: table })
    : 0;
  if (made && made.way.name !== 'singly') return together;
  const [first, second] = step.patches.map((part) => part.map((patch) => block.patches[patch]?.points ?? []));
  const slack = 4 * cornerTolerance * Math.max(...block.finished);
  const matches = matchesOn({ line: step.line, first: first ?? [], second: second ?? [], slack }) + step.corners;
  const eased = step.kind === 'curved' ? step.total * table.curve : 0;
  return together + eased + seamMinutes({ ...step, matches }, table, unit);
};

/** One step of the top; where rows are joined, what stands side by side in both meets. */
export const topStepMinutes = ({ quilt }: Pick<QuiltPlan, 'quilt'>, step: TopStep): number => {
  const matches = step.stage === 'rows' ? Math.max(0, (step.things[1]?.length ?? 1) - 1) : 0;
  return seamMinutes({ ...step, matches }, minutesWith(quilt.minutes), quilt.unit);
};

/** Of all cutting and of all sewing. */
export const minutesOfPlan = (plan: Sewing): { readonly cutting: number; readonly sewing: number } => {
  const blocks = plan.blocks.flatMap((block) => block.steps.map((step) => blockStepMinutes(plan, block, step)));
  const top = plan.top.steps.map((step) => topStepMinutes(plan, step));
  const pieces = plan.fabrics.flatMap((fabric) => fabric.pieces).reduce((all, piece) => all + cutsOf(piece), 0);
  const widths = new Map(plan.quilt.fabrics.map(({ id, usableWidth }) => [id, toNumber(usableWidth)]));
  const strips = plan.fabrics.reduce((all, fabric) => all + stripsOf(fabric, widths.get(fabric.id) ?? 0), 0);
  return {
    cutting: cuttingMinutes({ pieces, strips }, minutesWith(plan.quilt.minutes)),
    sewing: [...blocks, ...top].reduce((all, minutes) => all + minutes, 0),
  };
};

/** Squares cut apart count once; of what nests in strips or pairs every piece is cut by itself. */
const cutsOf = ({ count, gives, outlines }: ClothPiece): number => (outlines.length > 0 ? count * gives : count);

/** Strips that each size takes by itself, whatever layout is found: what is folded and laid straight for it. */
const stripsOf = ({ pieces }: FabricPlan, width: number): number =>
  pieces.reduce((all, { cut, count }) => all + Math.ceil(count / Math.max(1, Math.floor(width / cut[0] + 1e-9))), 0);
