// The seam test at true size, what its sizes say, and what a seam too wide does to each block of this quilt.
import type { BlockPlan, QuiltPlan } from '#craft';
import { bestTrimming, type SizeModel, seamsCrossed, sensitivity, sizeModels, usualCare } from '#craft/accuracy';
import { seamTestFor } from '#craft/diagnosis';
import { type Length, length, type Unit } from '#craft/measure';
import { topSizes } from '#craft/top-sizes';
import { toNumber } from '#ground/exact';
import { entryTitle } from '#paper/cutting';
import { drawSeamTest } from '#paper/drawing';
import { checkLength, checkSize, figureOnPaper, lengthOnPaper } from '#paper/lengths';
import { capital, counted, inWords } from '#paper/words';
import { type Album, type Picture, shown } from './album.ts';
import { pointsPer } from './template.ts';

export interface SeamTestPage {
  /** What to do, one after another. */
  readonly steps: readonly string[];
  readonly picture: Picture;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What a seam too wide does to the blocks, and where each is best trimmed; and to the whole top. */
  readonly blocks: readonly BlockTrueness[];
}

export interface BlockTrueness {
  readonly title: string;
  readonly lines: readonly string[];
}

export const seamTestPage = ({ plan, album }: { readonly plan: QuiltPlan; readonly album: Album }): SeamTestPage => {
  const { unit, seam: exact } = plan.quilt;
  const seam = length(toNumber(exact));
  const test = seamTestFor(seam, unit);
  const middle = lengthOnPaper(test.middle, unit);
  const total = lengthOnPaper(test.total, unit);
  return {
    steps: [
      `Cut three strips ${lengthOnPaper(test.cut[0], unit)} wide and ${lengthOnPaper(test.cut[1], unit)} long, and measure their width again once they are cut.`,
      'Sew them side by side along their long edges, with the thread, needle and guide that you sew the quilt with. Press both seams to one side.',
      `Measure in the middle of their length, where the cloth lies flat: the middle strip from seam to seam is to be ${middle}, all three from edge to edge ${total}. Or lay them on the drawing.`,
      'Move the guide by what the table says, and make the test again with new strips.',
    ],
    picture: shown(album, 'seam-test', drawSeamTest({ test, seam, scale: pointsPer[unit], middle, total })),
    head: ['Middle', 'All three', 'Each seam takes', 'Move the guide'],
    rows: offBy[unit].map((off) => testRow({ off: length(off), test, seam, unit })),
    // what is sewn on printed sheets keeps its size
    blocks: [...blocksOf(plan).map((block) => trueness(plan, block, seam)), topTrueness(plan, seam)].filter(
      ({ lines }) => lines.length > 0,
    ),
  };
};

/** What one allowance is too wide: what a ruler with sixteenths, or millimetres, can tell. */
const offBy: Readonly<Record<Unit, readonly number[]>> = {
  in: [-1 / 16, -1 / 32, -1 / 64, 0, 1 / 64, 1 / 32, 1 / 16],
  cm: [-0.15, -0.1, -0.05, 0, 0.05, 0.1, 0.15],
};

const testRow = (of: {
  readonly off: Length;
  readonly test: { readonly middle: Length; readonly total: Length };
  readonly seam: Length;
  readonly unit: Unit;
}): readonly string[] => {
  const { off, test, seam, unit } = of;
  const move = lengthOnPaper(Math.abs(off), unit);
  return [
    figureOnPaper(test.middle - 2 * off, unit),
    figureOnPaper(test.total - 4 * off, unit),
    lengthOnPaper(seam + off, unit),
    off === 0 ? 'it is right' : `${move} ${off > 0 ? 'nearer to the needle' : 'further from the needle'}`,
  ];
};

/** One entry a block, of those that are sewn. */
const blocksOf = ({ blocks }: QuiltPlan): readonly BlockPlan[] =>
  blocks.filter(({ id, steps }, i) => steps.length > 0 && blocks.findIndex((other) => other.id === id) === i);

/** Each allowance too wide by so much, for an example. */
const example: Readonly<Record<Unit, number>> = { in: 1 / 32, cm: 0.1 };

const trueness = (plan: QuiltPlan, block: BlockPlan, seam: Length): BlockTrueness => {
  const { id, colouring, mirror } = block;
  const whole = sizeModels(block, seam).filter(({ step }) => step === block.steps.length - 1);
  return {
    title: entryTitle(plan, { block: id, colouring, mirror }),
    lines: [...driftLines(plan, whole, 'block'), ...trimLines(plan, block, seam)],
  };
};

/** A habit of the seam adds up over all blocks: of a top of more than one. */
const topTrueness = (plan: QuiltPlan, seam: Length): BlockTrueness => {
  const { top, blocks } = plan;
  const last = top.steps.length - 1;
  const whole = topSizes({ top, blocks, seam }).filter(({ step }) => step === last);
  return { title: 'The whole top, its blocks counted in', lines: driftLines(plan, whole, 'top') };
};

/** "Its width goes over 10 seams: each allowance 1/32 in too wide makes the block ⅝ in too narrow." */
const driftLines = ({ quilt }: QuiltPlan, whole: readonly SizeModel[], thing: 'block' | 'top'): readonly string[] => {
  const { unit } = quilt;
  const by = example[unit];
  const lines = whole
    .map((model) => ({
      seams: seamsCrossed(model),
      small: checkLength(sensitivity(model).allowance * by, quilt),
      way: model.way,
    }))
    .filter(({ seams }) => seams > 0);
  const [first, second] = lines;
  if (first === undefined) return [];
  const wide = `each allowance ${lengthOnPaper(by, unit)} too wide makes the ${thing}`;
  const isCounted = thing === 'block' || quilt.top.set !== 'on-point';
  if (isCounted && second !== undefined && second.seams === first.seams && second.small === first.small)
    return [`It is crossed by ${counted(first.seams, 'seam')} each way: ${wide} ${first.small} too small.`];
  const off = ({ small, way }: (typeof lines)[number]): string => `${small} too ${way === 'across' ? 'narrow' : 'low'}`;
  // corner to corner a row on point goes over no seam, and all at its edges count
  if (!isCounted) return [`${capital(wide)} ${inWords(lines.map(off))}.`];
  return lines.map(
    (line) =>
      `Its ${line.way === 'across' ? 'width' : 'height'} goes over ${counted(line.seams, 'seam')}: ${wide} ${off(line)}.`,
  );
};

/** Fewer steps are trimmed at the end, if at all; our own figure. */
const worthTrimming = 6;

const trimLines = ({ quilt }: QuiltPlan, block: BlockPlan, seam: Length): readonly string[] => {
  if (block.steps.length < worthTrimming) return [];
  const { unit, ruler } = quilt;
  const best = bestTrimming({ block, seam, care: usualCare(unit), ruler });
  if (best === null || best.trimmed >= best.untrimmed) return [];
  const step = block.steps[best.step];
  const cut = `cut ${inWords([...best.pieces])} ${lengthOnPaper(best.oversize, unit)} wider`;
  return [
    `If you trim it once on the way, do so after step ${step?.number}, to ${checkSize(best.to, quilt)}; ${cut} for that.`,
  ];
};
