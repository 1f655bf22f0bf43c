// The educator's run sheet for a block: what lies on the table, which units are sewn beforehand (no more than showing every step takes), and step by step what is
// shown, measured and said. Minutes are our own estimate, as all minutes of a plan.
import {
  type BlockPlan,
  lessonBeginMinutes,
  type PlannedPiece,
  type PlannedStep,
  type QuiltPlan,
  shownStepMinutes,
} from '#craft';
import { sampleCloths, samplePieces, samplesFor } from '#craft/chains';
import { upToMark } from '#craft/measure';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { asFirstPlaced, drawBoard, isTrimmed } from '#paper/drawing';
import { checkSize, lengthOnPaper } from '#paper/lengths';
import { estimateText, inWords } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { titleOf } from './block-head.ts';
import { briefName } from './brief-name.ts';
import { cutText } from './cut-text.ts';
import { columnPt } from './measure.ts';
import { partName } from './naming.ts';
import { countedSheets } from './sheet-names.ts';
import { isChained, type StepWords, stepWords } from './step-words.ts';

export interface RunSheet {
  readonly title: string;
  readonly minutes: string;
  readonly board: Picture;
  readonly table: readonly string[];
  /** Sewn and pressed before class, the fewest that let every step be shown at once. */
  readonly stepOuts: readonly {
    readonly unit: string;
    readonly count: string;
    readonly shows: string;
    readonly size: string;
  }[];
  /** What all of them are cut from. */
  readonly cut: readonly {
    readonly label: string;
    readonly cloth: string;
    readonly cut: string;
    readonly count: string;
  }[];
  /** The cloth that these take besides the quilt's; empty where none are sewn. */
  readonly cloth: string;
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
  const title = titleOf(plan, block);
  const minutes = block.steps.map((step) => shownStepMinutes(plan, step));
  const opening = lessonBeginMinutes(plan);
  const stepOuts = samplesFor(block).map(({ step, count }) => ({ step: block.steps[step] as PlannedStep, count }));
  const counts = samplePieces(block);
  const prompts = promptsOf(block);
  const wordsOf = (step: PlannedStep): StepWords => stepWords(plan, { block, step, counts: [block.count] });
  return {
    title,
    minutes: `About ${minutes.reduce((sum, one) => sum + one, opening)} minutes, ${opening} of them for the start; ${estimateText(plan.quilt)}.`,
    board: shown(
      album,
      `run-${place}-board`,
      drawBoard({
        block: asFirstPlaced(plan, block),
        signs,
        fitPt: [columnPt, 106],
        alt: `The board of ${title}, as it lies before the class.`,
      }),
    ),
    table: [
      `The board of one ${title} laid out, every piece with its label, and one more set cut to sew from: every step is sewn once, in turn.`,
      ...(stepOuts.length > 0 ? ['The units sewn beforehand in order, each pinned to its number.'] : []),
      'Machine, iron and board where the class sees them; ruler, two strips to try the seam on, pins, a closed cutter on its mat.',
    ],
    stepOuts: stepOuts.map(({ step, count }) => ({
      unit: partName(step.makes),
      count: String(count),
      shows: wordsOf(step).heading,
      size: isTrimmed(step) ? checkSize(step.unfinished, plan.quilt) : '',
    })),
    cut: block.pieces.flatMap((piece) => {
      const count = counts.get(piece.label) ?? 0;
      return count === 0
        ? []
        : [
            {
              label: piece.label,
              cloth: clothText(signs, piece),
              cut: cutText(piece, plan),
              count: String(count),
            },
          ];
    }),
    cloth: sampleClothText(of, block),
    rows: block.steps.map((step, i) => ({
      number: String(step.number),
      show: `${wordsOf(step).heading}. ${wordsOf(step).press}`,
      measure: isTrimmed(step) ? checkSize(step.unfinished, plan.quilt) : '',
      say: prompts[i] ?? '',
      minutes: String(minutes[i]),
    })),
  };
};

/** "B · Oat"; a scrappy piece may be cut from any cloth of its list. */
const clothText = (signs: ClothSigns, { fabric, fabrics }: PlannedPiece): string => {
  const { letter, name } = signOf(signs, fabric);
  return fabrics.length > 1 ? 'scrappy' : `${letter} · ${briefName(name)}`;
};

/** Lengths on the marks of the ruler, rounded up; whole sheets of what comes in sheets. */
const sampleClothText = ({ plan, signs }: SheetsOf, block: BlockPlan): string => {
  const { unit, ruler } = plan.quilt;
  const lengths = sampleCloths(plan, block).map(({ fabric, laid }) => {
    const { letter, name } = signOf(signs, fabric);
    const cloth = `${letter}\u00a0·\u00a0${briefName(name)}`;
    if (!('sheets' in laid)) return `${lengthOnPaper(upToMark(laid.layout.length, ruler).size, unit)} of ${cloth}`;
    const sheets = `${countedSheets(plan, { id: fabric }, laid)} of ${cloth}`;
    return laid.left.length === 0 ? sheets : `${sheets} and more than the quilt has at hand`;
  });
  return lengths.length === 0
    ? ''
    : `Cloth for them, besides the quilt's and before the ends are squared: ${inWords(lengths)}.`;
};

/** For seams like the one before, in turn. */
const steadyPrompts = [
  'Same again: lay it, sew it, press it, measure it.',
  'Hold yours up. Which side does the next piece go on?',
  'Ruler on the unit before the next piece: too small now stays too small.',
] as const;

/** Of units made several at a time there are fewer to feed in than units. */
const isFedOneByOne = (step: PlannedStep): boolean =>
  isChained(step) && (!step.made || step.made.way.name === 'singly' || step.made.way.name === 'sew-and-flip');

/** What fits a step, the most telling first. */
const promptsFor = (block: BlockPlan, step: PlannedStep): readonly string[] => {
  const before = block.steps[step.number - 2];
  const many = step.perBlock === 2 ? 'both' : `all ${step.perBlock}`;
  const said = (holds: boolean, prompt: string): readonly string[] => (holds ? [prompt] : []);
  return [
    ...said(step.kind === 'partial-begin', 'Stop half way. Who remembers which step closes this seam?'),
    ...said(step.kind === 'partial-close', 'Here the open seam is closed: fold the unit out of the way first.'),
    ...said(step.kind === 'set-in', 'Needle down at the mark, lift the foot, turn. Nothing is forced.'),
    ...said(
      step.number === block.steps.length,
      `Measure it: ${block.count === 1 ? 'that is the block' : `that is one of ${block.count}`}. Who is off, and by how much?`,
    ),
    ...said(step.stopsAt.length > 0, 'Sew to the mark and no further: a piece is set in there later.'),
    ...said(step.perBlock > 1 && isFedOneByOne(step), `Feed ${many} through in one chain, then snip them apart.`),
    ...said(before === undefined, 'Which piece is next, and which way round? Lay it on before you look at the page.'),
    ...said(
      before !== undefined && before.pressTo !== step.pressTo,
      'The press arrow points the other way this time. Why?',
    ),
  ];
};

/** How many steps lie between one prompt and its next use, where there is another to take. */
const apart = 3;

/** One thing to say aloud at each step: the most telling that was not said just before. */
const promptsOf = (block: BlockPlan): readonly string[] => {
  const said: string[] = [];
  for (const step of block.steps) {
    const turn = step.number % steadyPrompts.length;
    const all = [...promptsFor(block, step), ...steadyPrompts.slice(turn), ...steadyPrompts.slice(0, turn)];
    said.push(all.find((prompt) => !said.slice(-apart).includes(prompt)) ?? all[0] ?? '');
  }
  return said;
};
