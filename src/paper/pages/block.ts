// The pages of one block: what it is, its board, its pieces, its steps in order.
import type { BlockPlan, PlannedStep, QuiltPlan } from '#craft';
import { toNumber } from '#ground/exact';
import type { ClothSigns } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { asFirstPlaced, drawBoard, drawMachine, drawSpunBack, drawStep } from '#paper/drawing';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { type BlockHead, blockHead, boardAlt, type Counts, madeText, slantText } from './block-head.ts';
import { columnPt } from './measure.ts';
import { spunBackAlt } from './pressing.ts';
import { blocksOfAll, type SizedPlan } from './sized.ts';
import { type StepWords, stepWords } from './step-words.ts';

export interface BlockPages extends BlockHead {
  readonly board: Picture;
  /** How the pictures and words of the steps are read: in full at the first block. */
  readonly reading: string;
  readonly steps: readonly StepCard[];
}

export interface StepCard extends Omit<StepWords, 'boardAlt' | 'machineAlt'> {
  readonly number: string;
  readonly board: Picture;
  readonly machineView: Picture;
  /** Of a spun seam: from the back. */
  readonly back?: Picture;
}

interface ChapterOf {
  readonly plan: QuiltPlan;
  readonly sizes: readonly SizedPlan[];
  readonly signs: ClothSigns;
  readonly album: Album;
  readonly hand: Hand;
}

/** A block made elsewhere has no chapter: the notes say what it must measure. */
export const blockPages = (of: ChapterOf): readonly BlockPages[] =>
  blocksOfAll(of.plan, of.sizes)
    .flatMap(({ plan, block, counts }, index) =>
      block.patches.length === 0
        ? []
        : [
            {
              chapter: blockChapter(
                { ...of, plan },
                {
                  block: asFirstPlaced(plan, block),
                  place: index + 1,
                  counts,
                  plans: [of.plan, ...of.sizes.map((size) => size.plan)],
                },
              ),
              isOnPaper: block.foundations !== null,
            },
          ],
    )
    .map(({ chapter, isOnPaper }, index, all) => ({
      ...chapter,
      reading: isOnPaper ? paperReadingText : index === 0 ? readingText : shortReadingText,
      // said once, at the first block that has them; on paper the lines hold slanted edges
      remarks: chapter.remarks.filter(
        (remark) =>
          (remark !== slantText && remark !== madeText) ||
          (!(isOnPaper && remark === slantText) &&
            all.slice(0, index).every((before) => !before.chapter.remarks.includes(remark))),
      ),
    }));

export const readingText =
  'Left: on the board, the next piece ringed; the arrow points where the seam is pressed. Right: at the machine, that piece turned over onto the unit like a page, its seam line dashed at your right hand. A piece is turned from how it lies on the board, a unit from how it came off the machine, its newest part at the right. Make one block alone first and measure it; then all of one step before the next. To chain them is to feed them one after another without cutting the thread.';

const shortReadingText =
  'Left: on the board. Right: at the machine, a piece turned from how it lies on the board, a unit from how it came off the machine. How steps are read is told in full at the first block.';

const paperReadingText =
  'Pieced on a foundation: the sheets are in the chapter Foundations, one for each block. Left: on the board, the next piece ringed. Right: the printed side of the sheet, in mirror image; the line to sew is dashed, the patch that goes on hatched. Cloth lies on the blank side. Make one block alone first and measure it.';

const blockChapter = (
  of: ChapterOf,
  at: {
    readonly block: BlockPlan;
    readonly place: number;
    readonly counts: Counts;
    readonly plans: readonly QuiltPlan[];
  },
): Omit<BlockPages, 'reading'> => {
  const { block, place } = at;
  const { title, make, size, ...below } = blockHead(of, at);
  return {
    title,
    make,
    size,
    board: shown(
      of.album,
      `block-${place}-board`,
      drawBoard({ block, signs: of.signs, fitPt: [columnPt, boardHighPt(block)], alt: boardAlt(of, block) }),
    ),
    ...below,
    steps: block.steps.map((step) => stepCard(of, { ...at, step })),
  };
};

/** As high as the table beside it, within reason: what a small board leaves is room for another row of steps. */
const boardHighPt = ({ pieces }: BlockPlan): number => Math.min(216, Math.max(150, 52 + 17.5 * pieces.length));

/** Six steps and the board share the first page of a block. */
const stepHighPt = ({ steps }: BlockPlan): number => (steps.length <= 6 ? 86 : 94);

const stepCard = (
  of: ChapterOf,
  at: {
    readonly block: BlockPlan;
    readonly step: PlannedStep;
    readonly place: number;
    readonly counts: Counts;
    readonly plans: readonly QuiltPlan[];
  },
): StepCard => {
  const { block, step } = at;
  const { heading, make, machine, press, measures, ...alt } = stepWords(of.plan, at);
  const fitPt = (width: number) => [width, stepHighPt(block)] as const;
  const drawn = { block, step, signs: of.signs, ruler: of.plan.quilt };
  const name = `block-${at.place}-step-${step.number}`;
  const back = drawSpunBack({ block, step, sidePt: 62, alt: spunBackAlt(step) });
  return {
    ...(back === null ? {} : { back: shown(of.album, `${name}-back`, back) }),
    number: String(step.number),
    heading,
    make,
    machine,
    press,
    measures,
    board: shown(of.album, name, drawStep({ ...drawn, fitPt: fitPt(142), alt: alt.boardAlt })),
    machineView: shown(
      of.album,
      `${name}-machine`,
      drawMachine({
        ...drawn,
        seam: toNumber(of.plan.quilt.seam),
        hand: of.hand,
        fitPt: fitPt(80),
        alt: alt.machineAlt,
      }),
    ),
  };
};
