// The pages of one block: what it is, its board, its pieces, its steps in order.
import type { BlockPlan, PlannedPiece, PlannedStep, QuiltPlan } from '#craft';
import { toNumber } from '#ground/exact';
import { never } from '#ground/outcome';
import type { Point } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { asFirstPlaced, drawBoard, drawMachine, drawStep } from '#paper/drawing';
import { checkSize, sizeOnPaper } from '#paper/lengths';
import { capital, inWords } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { briefName } from './brief-name.ts';
import { cutText } from './cut-text.ts';
import { marksOfPiece } from './marks.ts';
import { columnPt } from './measure.ts';
import { kindText, machineText, partName, pressText, stepHeading } from './naming.ts';
import { partnerOf } from './partner.ts';
import { blocksOfAll, countsText, type SizedPlan } from './sized.ts';

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
  /** What is unusual about its seams; null for straight ones. */
  readonly warning: string | null;
  readonly remarks: readonly string[];
  /** How the pictures and words of the steps are read: in full at the first block. */
  readonly reading: string;
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
  readonly sizes: readonly SizedPlan[];
  readonly signs: ClothSigns;
  readonly album: Album;
}

/** How many of a block each size takes, the quilt as drawn first. */
type Counts = readonly number[];

/** A block made elsewhere has no chapter: the notes say what it must measure. */
export const blockPages = (of: ChapterOf): readonly BlockPages[] =>
  blocksOfAll(of.plan, of.sizes)
    .flatMap(({ plan, block, counts }, index) =>
      block.patches.length === 0
        ? []
        : [blockChapter({ ...of, plan }, { block: asFirstPlaced(plan, block), place: index + 1, counts })],
    )
    .map((chapter, index, all) => ({
      ...chapter,
      reading: index === 0 ? readingText : shortReadingText,
      // said once, at the first block that has them
      remarks: chapter.remarks.filter(
        (remark) => remark !== slantText || all.slice(0, index).every(({ remarks }) => !remarks.includes(slantText)),
      ),
    }));

const readingText =
  'Left: on the board, the next piece ringed; the arrow points where the seam is pressed. Right: at the machine, that piece turned over onto the unit like a page, its seam line dashed at your right hand. A piece is turned from how it lies on the board, a unit from how it came off the machine, its newest part at the right. Make one block alone first and measure it; then all of one step before the next. To chain them is to feed them one after another without cutting the thread.';

const shortReadingText =
  'Left: on the board. Right: at the machine, a piece turned from how it lies on the board, a unit from how it came off the machine. How steps are read is told in full at the first block.';

const blockChapter = (
  of: ChapterOf,
  at: { readonly block: BlockPlan; readonly place: number; readonly counts: Counts },
): Omit<BlockPages, 'reading'> => {
  const { block, place, counts } = at;
  const { unit } = of.plan.quilt;
  const title = entryTitle(of.plan, { block: block.id, colouring: block.colouring, mirror: block.mirror });
  const kinds = block.pieces.map((piece) => `${piece.label} of cloth ${clothLetters(of.signs, piece).join(' or ')}`);
  return {
    title,
    make: `Make ${countsText(counts)}`,
    size: `${sizeOnPaper(block.finished, unit)} finished, ${sizeOnPaper(block.unfinished, unit)} before it is set`,
    board: shown(
      of.album,
      `block-${place}-board`,
      drawBoard({
        block,
        signs: of.signs,
        fitPt: [columnPt, boardHighPt(block)],
        alt: `The board of ${title}: ${block.patches.length} pieces laid out in place: ${kinds.join(', ')}.`,
      }),
    ),
    pieces: block.pieces.map((piece) => ({
      label: piece.label,
      cloth: clothsText(of, block, piece),
      count:
        counts.length === 1
          ? `${piece.perBlock} × ${block.count} = ${piece.perBlock * block.count}`
          : countsText(counts, piece.perBlock),
      cut: cutText(piece, of.plan),
    })),
    warning: warningFor(block, title),
    remarks: [
      ...scrappyRemark(block),
      ...turnedRemark(of, block),
      ...grainRemark(block),
      ...slantRemark(block),
      ...(block.joining === 'straight' && block.leastUnits === 'searched'
        ? ['The order was found by a search: there may be one with fewer different units.']
        : []),
    ],
    steps: block.steps.map((step) => stepCard(of, { block, step, title, place, counts })),
  };
};

/** As high as the table beside it, within reason: what a small board leaves is room for another row of steps. */
const boardHighPt = ({ pieces }: BlockPlan): number => Math.min(216, Math.max(150, 52 + 17.5 * pieces.length));

/** Six steps and the board share the first page of a block. */
const stepHighPt = ({ steps }: BlockPlan): number => (steps.length <= 6 ? 86 : 94);

const clothLetters = (signs: ClothSigns, { fabrics }: PlannedPiece): readonly string[] =>
  fabrics.map(({ fabric }) => signOf(signs, fabric).letter);

/** "B2 · Oat": the marks of the piece with the name of its cloth; of a scrappy piece "12 of B2, 11 of C1", for all blocks. */
const clothsText = (of: ChapterOf, block: BlockPlan, piece: PlannedPiece): string => {
  const named = (fabric: string): string => {
    const marks = marksOfPiece(of, { block, piece, fabric });
    // each size of the quilt has marks of its own
    return marks.length === 0 || of.sizes.length > 0 ? signOf(of.signs, fabric).letter : marks.join(', ');
  };
  return piece.fabrics.length === 1
    ? `${named(piece.fabric)} · ${briefName(signOf(of.signs, piece.fabric).name)}`
    : piece.fabrics.map(({ fabric, count }) => `${count}\u00a0of\u00a0${named(fabric)}`).join(', ');
};

const scrappyRemark = ({ pieces }: BlockPlan): readonly string[] => {
  const labels = pieces.filter(({ fabrics }) => fabrics.length > 1).map(({ label }) => label);
  if (labels.length === 0) return [];
  const are = labels.length === 1 ? 'is scrappy: its cloth changes' : 'are scrappy: their cloths change';
  return [
    `${inWords(labels)} ${are} from block to block, so that no two neighbours are alike. Drawn is the first block of the top; the picture of the quilt shows them all. Cut the pieces first, then choose them for each block from there.`,
  ];
};

/** Pieces whose print must stand upright are cut for the way that their block is turned in the quilt. */
const turnedRemark = (of: ChapterOf, block: BlockPlan): readonly string[] => {
  if (of.sizes.length > 0) return [];
  const turns = turnsOf(of.plan, block);
  const lists = turns.map(({ turn }) =>
    block.pieces.flatMap((piece) => {
      const all = piece.fabrics.flatMap(({ fabric }) => marksOfPiece(of, { block, piece, fabric }));
      const own = piece.fabrics.flatMap(({ fabric }) => marksOfPiece(of, { block, piece, fabric, turn }));
      return own.length === 0 || all.length < 2 ? [] : [`${piece.label} from ${inWords(own)}`];
    }),
  );
  if (new Set(lists.map((list) => list.join())).size < 2) return [];
  const told = turns.map(
    ({ turn, count }, i) =>
      `for ${count === 1 ? 'the one' : `the ${count}`} ${turn === 0 ? 'not turned' : `turned ${turn}°`} take ${inWords(lists[i] ?? [])}`,
  );
  return [
    `The print must stand upright in the quilt, where these blocks are turned: ${told.join('; ')}. Pin the turn to each block: clockwise, as the pictures of the top show.`,
  ];
};

/** How often a block stands in the top turned so. */
const turnsOf = (
  { top }: QuiltPlan,
  block: BlockPlan,
): readonly { readonly turn: 0 | 90 | 180 | 270; readonly count: number }[] =>
  ([0, 90, 180, 270] as const).flatMap((turn) => {
    const count = top.set.placed.filter(
      (placed) =>
        placed.block === block.id &&
        placed.colouring === block.colouring &&
        placed.mirror === block.mirror &&
        placed.turn === turn,
    ).length;
    return count === 0 ? [] : [{ turn, count }];
  });

/** What slanted edges ask for. */
const slantText =
  'Lay slanted edges under the needle without pulling: they stretch. Where a slanted seam ends, small points stand out past the edge after pressing: cut them off even with it.';

const slantRemark = ({ patches }: BlockPlan): readonly string[] =>
  patches.some(({ points }) => points.some((point, i) => isSlant(point, points[(i + 1) % points.length] ?? point)))
    ? [slantText]
    : [];

const isSlant = (a: Point, b: Point): boolean => Math.abs(a.x - b.x) > 1e-6 && Math.abs(a.y - b.y) > 1e-6;

/** Pieces that look the same turned, with one side on the straight grain. */
const grainRemark = ({ pieces }: BlockPlan): readonly string[] => {
  const labels = pieces.filter(({ cut }) => cut.way?.edge === 'outward').map(({ label }) => label);
  if (labels.length === 0) return [];
  return [
    `Lay ${inWords(labels)} with the side that was the strip’s edge along the edge of the block: the other sides are on the bias and stretch.`,
  ];
};

/** What a sewer must know before the first seam of a block that is not all straight seams. */
const warningFor = (block: BlockPlan, title: string): string | null => {
  switch (block.joining) {
    case 'straight':
      return null;
    case 'partial':
      return `Not every seam of ${title} runs from edge to edge: round a centre the first seam is begun, left open part-way, and closed at the end. The steps say which.`;
    case 'set-in':
      return `${title} has inside corners, where a seam is set in. Mark where the seam lines cross on the wrong side of the pieces of those steps, an allowance in from the edges; sew from mark to mark and no further, and press when all of the seam is sewn. Try it on scraps first.`;
    default:
      return never(block.joining);
  }
};

const stepCard = (
  of: ChapterOf,
  at: {
    readonly block: BlockPlan;
    readonly step: PlannedStep;
    readonly title: string;
    readonly place: number;
    readonly counts: Counts;
  },
): StepCard => {
  const { block, step, title } = at;
  const { seam } = of.plan.quilt;
  const heading = stepHeading(step, partnerOf(block, step));
  const press = pressText(step);
  const machine = `${machineText(step, newestOf(block, step))}${kindText(step, partnerOf(block, step))}`;
  const measures = checkSize(step.unfinished, of.plan.quilt);
  const drawn = { block, step, signs: of.signs, ruler: of.plan.quilt };
  const highPt = stepHighPt(block);
  return {
    number: String(step.number),
    heading,
    make: `make ${countsText(at.counts, step.perBlock)}`,
    machine: `${machine}${manyText(step, at.counts)}`,
    press,
    measures: `${capital(partName(step.makes))} measures ${measures}.`,
    board: shown(
      of.album,
      `block-${at.place}-step-${step.number}`,
      drawStep({
        ...drawn,
        fitPt: [142, highPt],
        alt: `${title}, step ${step.number} on the board: ${heading}. ${press} After pressing it measures ${measures}.`,
      }),
    ),
    machineView: shown(
      of.album,
      `block-${at.place}-step-${step.number}-machine`,
      drawMachine({
        ...drawn,
        seam: toNumber(seam),
        fitPt: [80, highPt],
        alt: `${title}, step ${step.number} at the machine: ${machine} The seam line is dashed along the right edge.`,
      }),
    ),
  };
};

/** How like units are sewn: straight seams in a chain, others one by one. */
const manyText = ({ kind, perBlock }: PlannedStep, counts: Counts): string => {
  const most = Math.max(...counts) * perBlock;
  const share = perBlock === 1 ? '' : `${perBlock} a block`;
  if (most === 1) return '';
  if (kind !== 'straight') return share === '' ? '' : ` There are ${share}.`;
  const all = counts.length > 1 ? 'all of them' : most === 2 ? 'both' : `all ${most}`;
  return ` Chain ${all}${share === '' ? '' : `, ${share}`}.`;
};

/** What the first part was given last, as people can tell it: "C", or "the C sewn last" where it has others. */
const newestOf = (block: BlockPlan, { join }: PlannedStep): string | null => {
  const made = block.steps.find(({ makes }) => makes === join[0]);
  if (made === undefined || made.join[0] === made.join[1]) return null;
  const name = partName(made.join[1]);
  return isIn(block, made.join[1], made.join[0]) ? `the ${name} sewn last` : name;
};

/** Whether a part went into a unit on the way, or is that unit. */
const isIn = (block: BlockPlan, part: string, unit: string): boolean => {
  if (part === unit) return true;
  const made = block.steps.find(({ makes }) => makes === unit);
  return made?.join.some((one) => isIn(block, part, one)) ?? false;
};
