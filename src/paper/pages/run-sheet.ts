// The educator's run sheet for a block: what lies on the table, which units are sewn beforehand, and step by step what is
// shown, measured and said. Minutes are our own estimate, as all minutes of a plan.
import type { BlockPlan, PlannedStep, QuiltPlan } from '#craft';
import { lessonMinutesOf } from '#craft/finishing';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { drawBoard } from '#paper/drawing';
import { checkSize } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { cutText } from './cut-text.ts';
import { columnPt } from './measure.ts';
import { partName, pressText, stepHeading } from './naming.ts';

export interface RunSheet {
  readonly title: string;
  readonly minutes: string;
  readonly board: Picture;
  readonly table: readonly string[];
  /** Sewn and pressed before class: one for each step. */
  readonly stepOuts: readonly { readonly unit: string; readonly shows: string; readonly size: string }[];
  /** What all of them are cut from. */
  readonly cut: readonly {
    readonly label: string;
    readonly cloth: string;
    readonly cut: string;
    readonly count: string;
  }[];
  readonly rows: readonly {
    readonly number: string;
    readonly show: string;
    readonly measure: string;
    readonly say: string;
    readonly minutes: string;
  }[];
}

interface SheetsOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

/** One a block, in the order of the pattern; its other colourings are sewn alike. */
export const runSheets = (of: SheetsOf): readonly RunSheet[] =>
  of.plan.blocks.flatMap((block, i) => {
    const isFirst = of.plan.blocks.findIndex(({ id }) => id === block.id) === i;
    return isFirst && block.steps.length > 0 ? [runSheetOf(of, block, i + 1)] : [];
  });

const runSheetOf = (of: SheetsOf, block: BlockPlan, place: number): RunSheet => {
  const { plan, signs, album } = of;
  const title = entryTitle(plan, { block: block.id, colouring: block.colouring, mirror: block.mirror });
  const minutes = block.steps.map((step) => lessonMinutesOf({ seam: step.seam, unit: plan.quilt.unit }));
  const stepOuts = block.steps.filter(isNew);
  return {
    title,
    minutes: `About ${minutes.reduce((sum, one) => sum + one, opening)} minutes, ${opening} of them for the start; our own estimate.`,
    board: shown(
      album,
      `run-${place}-board`,
      drawBoard({ block, signs, fitPt: [columnPt, 170], alt: `The board of ${title}, as it lies before the class.` }),
    ),
    table: [
      `The board of one ${title} laid out, every piece with its label, and one more set cut to sew from.`,
      'The step-outs below in order, each pinned to its number.',
      'Machine, iron and board where the class sees them; ruler, seam test strips, pins, a closed cutter on its mat.',
    ],
    stepOuts: stepOuts.map((step) => ({
      unit: partName(step.makes),
      shows: stepHeading(step),
      size: checkSize(step.unfinished, plan.quilt),
    })),
    cut: block.pieces.flatMap((piece) => {
      const count = stepOuts.reduce(
        (sum, step) => sum + patchesIn(step).filter((i) => isOf(block, i, piece.label)).length,
        0,
      );
      return count === 0
        ? []
        : [
            {
              label: piece.label,
              cloth: `${signOf(signs, piece.fabric).letter} · ${signOf(signs, piece.fabric).name}`,
              cut: cutText(piece, plan),
              count: String(count),
            },
          ];
    }),
    rows: block.steps.map((step, i) => ({
      number: String(step.number),
      show: `${stepHeading(step)}. ${pressText(step)}`,
      measure: checkSize(step.unfinished, plan.quilt),
      say: promptFor(block, step),
      minutes: String(minutes[i]),
    })),
  };
};

/** To look at the quilt, the board and the cut pieces together. */
const opening = 5;

/** A unit that an earlier step makes too is not sewn twice; one that is half sewn is shown at the machine. */
const isNew = (step: PlannedStep, i: number, all: readonly PlannedStep[]): boolean =>
  step.kind !== 'partial-begin' && all.findIndex(({ makes }) => makes === step.makes) === i;

const patchesIn = ({ patches }: PlannedStep): readonly number[] => [...patches[0], ...patches[1]];

const isOf = (block: BlockPlan, patch: number, label: string): boolean => block.patches[patch]?.piece === label;

/** For seams like the one before, in turn. */
const steadyPrompts = [
  'Same again: lay it, sew it, press it, measure it.',
  'Hold yours up. Which side does the next piece go on?',
  'Ruler on the unit before the next piece: too small now stays too small.',
] as const;

/** One thing to say aloud at each step: the first that fits. */
const promptFor = (block: BlockPlan, step: PlannedStep): string => {
  const last = step.number === block.steps.length;
  const before = block.steps[step.number - 2];
  if (step.kind === 'partial-begin') return 'Stop half way. Who remembers which step closes this seam?';
  if (step.kind === 'partial-close') return 'Here the open seam is closed: fold the unit out of the way first.';
  if (step.kind === 'set-in') return 'Needle down at the mark, lift the foot, turn. Nothing is forced.';
  if (last)
    return `Measure it: ${block.count === 1 ? 'that is the block' : `that is one of ${block.count}`}. Who is off, and by how much?`;
  if (step.stopsAt.length > 0) return 'Sew to the mark and no further: a piece is set in there later.';
  if (step.perBlock > 1) return `Feed all ${step.perBlock} through in one chain, then snip them apart.`;
  if (before === undefined) return 'Which piece is next, and which way round? Lay it on before you look at the page.';
  if (before.pressTo !== step.pressTo) return 'The press arrow points the other way this time. Why?';
  return steadyPrompts[step.number % steadyPrompts.length] as string;
};
