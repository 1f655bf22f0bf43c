// The pages of one block: what it is, its board, its pieces, its steps in order.
import type { BlockPlan, PlannedPiece, PlannedStep, QuiltPlan } from '#craft';
import { toNumber } from '#ground/exact';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { drawBoard, drawMachine, drawStep } from '#paper/drawing';
import { checkSize, lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { columnPt } from './measure.ts';
import { machineText, partName, pressText, stepHeading } from './naming.ts';

export interface BlockPages {
  readonly title: string;
  readonly make: string;
  readonly size: string;
  readonly board: Picture;
  readonly pieces: readonly {
    readonly label: string;
    readonly cloth: string;
    readonly count: string;
    readonly cut: string;
  }[];
  /** Why there are no steps; else null. */
  readonly warning: string | null;
  readonly remark: string | null;
  readonly steps: readonly StepCard[];
}

export interface StepCard {
  readonly number: string;
  readonly heading: string;
  readonly make: string;
  readonly machine: string;
  readonly press: string;
  readonly measures: string;
  readonly board: Picture;
  readonly machineView: Picture;
}

interface ChapterOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

export const blockPages = (of: ChapterOf): readonly BlockPages[] =>
  of.plan.blocks.map((block, index) => blockChapter(of, block, index + 1));

const blockChapter = (of: ChapterOf, block: BlockPlan, place: number): BlockPages => {
  const { unit } = of.plan.quilt;
  const title = entryTitle(of.plan, { block: block.id, colouring: block.colouring, mirror: block.mirror });
  const kinds = block.pieces.map(({ label, fabric }) => `${label} of cloth ${signOf(of.signs, fabric).letter}`);
  return {
    title,
    make: `Make ${block.count}`,
    size: `${sizeOnPaper(block.finished, unit)} finished, ${sizeOnPaper(block.unfinished, unit)} before it is set`,
    board: shown(
      of.album,
      `block-${place}-board`,
      drawBoard({
        block,
        signs: of.signs,
        fitPt: [columnPt, 216],
        alt: `The board of ${title}: ${block.patches.length} pieces laid out in place: ${kinds.join(', ')}.`,
      }),
    ),
    pieces: block.pieces.map((piece) => ({
      label: piece.label,
      cloth: signOf(of.signs, piece.fabric).letter,
      count: `${piece.perBlock} × ${block.count} = ${piece.perBlock * block.count}`,
      cut: cutText(piece, of.plan),
    })),
    warning:
      block.joining === 'none'
        ? `${title} cannot be sewn with straight seams alone: some seam must be set in corner by corner, or sewn in part and closed later. This pattern gives its pieces and its board, and no order of sewing for it. Seam by seam: mark the crossings of the seam lines on the wrong side of every piece, sew from mark to mark and no further, and measure before you go on.`
        : null,
    remark:
      block.joining === 'straight' && block.leastUnits === 'searched'
        ? 'The order was found by a search: there may be one with fewer different units.'
        : null,
    steps: block.steps.map((step) => stepCard(of, { block, step, title, place })),
  };
};

const cutText = ({ cut }: PlannedPiece, plan: QuiltPlan): string => {
  const { unit } = plan.quilt;
  const size = cut.size[0] === cut.size[1] ? lengthOnPaper(cut.size[0], unit) : sizeOnPaper(cut.size, unit);
  switch (cut.shape) {
    case 'half-square':
      return `half of a square ${size}`;
    case 'quarter-square':
      return `quarter of a square ${size}`;
    case 'template':
      return `template, from ${size}`;
    default:
      return `${cut.shape} ${size}`;
  }
};

const stepCard = (
  of: ChapterOf,
  at: { readonly block: BlockPlan; readonly step: PlannedStep; readonly title: string; readonly place: number },
): StepCard => {
  const { block, step, title } = at;
  const { seam } = of.plan.quilt;
  const heading = stepHeading(step);
  const press = pressText(step);
  const machine = machineText(step);
  const measures = checkSize(step.unfinished, of.plan.quilt);
  const drawn = { block, step, signs: of.signs, ruler: of.plan.quilt };
  const makes = step.perBlock === 1 ? '' : ` (${step.perBlock} a block)`;
  return {
    number: String(step.number),
    heading,
    make: `make ${step.total}${makes}`,
    machine,
    press,
    measures: `${capital(partName(step.makes))} measures ${measures}.`,
    board: shown(
      of.album,
      `block-${at.place}-step-${step.number}`,
      drawStep({
        ...drawn,
        fitPt: [142, 92],
        alt: `${title}, step ${step.number} on the board: ${heading}. ${press} After pressing it measures ${measures}.`,
      }),
    ),
    machineView: shown(
      of.album,
      `block-${at.place}-step-${step.number}-machine`,
      drawMachine({
        ...drawn,
        seam: toNumber(seam),
        fitPt: [80, 92],
        alt: `${title}, step ${step.number} at the machine: ${machine} The seam line is dashed along the right edge.`,
      }),
    ),
  };
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
