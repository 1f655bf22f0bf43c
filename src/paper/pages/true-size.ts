// Boards at true size, to lay the cut pieces on, and a paper gauge with the check sizes of every step.
import type { BlockPlan, QuiltPlan } from '#craft';
import { toNumber } from '#ground/exact';
import type { ClothSigns } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { drawTiles, gauge, isTrimmed, trueBoard, type WholeDrawing } from '#paper/drawing';
import { checkLength } from '#paper/lengths';
import { inWords } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { measurePt } from './measure.ts';
import { sheetText } from './sheet-text.ts';
import { pointsPer } from './template.ts';

export interface TrueSize {
  /** What gauges and boards are for, and how their sheets are put together: said once for all of them. */
  readonly words: readonly string[];
  readonly sheets: readonly TrueSheet[];
}

interface TrueSheet {
  readonly title: string;
  /** Which sheet of several it is; empty where one is all. */
  readonly sheet: string;
  readonly picture: Picture;
}

interface SheetsOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

/** One entry a block: colourings and mirror images have the same pieces. Gauges first: they share a page. */
export const trueSize = (of: SheetsOf): TrueSize => {
  const { blocks } = of.plan;
  const drawn = [...blocks.entries()].filter(
    ([place, { id, patches }]) => patches.length > 0 && blocks.findIndex((other) => other.id === id) === place,
  );
  const gauges = drawn.flatMap(([place, block]) => gaugeSheets(of, block, place));
  const boards = drawn.flatMap(([place, block]) => boardSheets(of, block, place));
  const sheets = [...gauges, ...boards];
  return {
    words: [
      ...(gauges.length === 0 ? [] : [gaugeWords]),
      ...(boards.length === 0 ? [] : [boardWords]),
      ...(sheets.every(({ sheet }) => sheet === '') ? [] : [joinWords]),
    ],
    sheets,
  };
};

const gaugeWords =
  'A gauge: cut it out along the top edge and lay its left end on the edge of the unit; after each step the unit’s other edge comes to the mark with the number of that step.';
const boardWords = 'A board: lay each cut piece on its outline. Full line: cut edge. Dashed line: seam.';
const joinWords =
  'What goes over several sheets: trim them to their frames, lay dotted line on dotted line so that the diamonds meet, and tape them.';

const titleOf = ({ plan }: SheetsOf, { id, colouring, mirror }: BlockPlan): string =>
  entryTitle(plan, { block: id, colouring, mirror });

const boardSheets = (of: SheetsOf, block: BlockPlan, place: number): readonly TrueSheet[] => {
  const { plan, signs } = of;
  const scale = pointsPer[plan.quilt.unit];
  return tiled(of, {
    whole: trueBoard({ block, signs, seam: toNumber(plan.quilt.seam), scale }),
    title: `${titleOf(of, block)}, board`,
    name: `true-board-${place + 1}`,
    says: 'all pieces in place at true size, cut edges and seam lines, each with its label and the letter of its cloth',
  });
};

const gaugeSheets = (of: SheetsOf, block: BlockPlan, place: number): readonly TrueSheet[] => {
  const steps = new Map<string, { at: number; numbers: Set<string> }>();
  for (const step of block.steps.filter(isTrimmed)) {
    for (const side of step.unfinished) {
      const text = checkLength(side, of.plan.quilt);
      const mark = steps.get(text) ?? { at: side, numbers: new Set<string>() };
      mark.numbers.add(String(step.number));
      steps.set(text, mark);
    }
  }
  if (steps.size === 0) return [];
  const marks = [...steps].map(([text, { at, numbers }]) => ({ at, text: `${text}: ${shortList([...numbers])}` }));
  return tiled(of, {
    whole: gauge({ marks, scale: pointsPer[of.plan.quilt.unit] }),
    title: `${titleOf(of, block)}, gauge`,
    name: `gauge-${place + 1}`,
    says: `a ruler at true size with a mark for each check size: ${inWords(marks.map(({ text }) => text))}`,
  });
};

/** "1, 2, 5", or "1 to 6" for a run of more than three. */
const shortList = (numbers: readonly string[]): string => {
  const all = numbers.map(Number).toSorted((a, b) => a - b);
  const [first = 0, last = 0] = [all[0], all.at(-1)];
  return all.length > 3 && last - first === all.length - 1 ? `${first} to ${last}` : all.join(', ');
};

/** Room below a heading on a Letter page of its own. */
const tallestSheetPt = 644;

const tiled = (
  { album }: SheetsOf,
  of: {
    readonly whole: WholeDrawing;
    readonly title: string;
    readonly name: string;
    readonly says: string;
  },
): readonly TrueSheet[] => {
  const tiles = drawTiles({
    whole: of.whole,
    fitPt: [measurePt, tallestSheetPt],
    alt: ({ number, row, column }) => `${of.title}: ${of.says}. Sheet ${number}: row ${row}, place ${column}.`,
  });
  return tiles.map(({ sheet, drawing }) => ({
    title: of.title,
    sheet: sheetText(sheet, tiles.length),
    picture: shown(album, `${of.name}-${sheet.number}`, drawing),
  }));
};
