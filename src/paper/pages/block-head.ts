// What a block is before its first seam: its name, how many to make, its pieces, and what is unusual about it.
import { type BlockPlan, blockMinutes, type PlannedPiece, type QuiltPlan } from '#craft';
import { never } from '#ground/outcome';
import type { Point } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { sizeOnPaper } from '#paper/lengths';
import { inWords, longTimeText } from '#paper/words';
import { briefName } from './brief-name.ts';
import { cutText } from './cut-text.ts';
import { marksOfPiece } from './marks.ts';
import { blockNestingLines } from './pressing.ts';
import { countsText, type SizedPlan } from './sized.ts';

export interface BlockHead {
  readonly title: string;
  readonly make: string;
  readonly size: string;
  readonly pieces: readonly {
    readonly label: string;
    readonly cloth: string;
    readonly count: string;
    readonly cut: string;
  }[];
  /** What is unusual about its seams; null for straight ones. */
  readonly warning: string | null;
  readonly remarks: readonly string[];
}

interface HeadOf {
  readonly plan: QuiltPlan;
  readonly sizes: readonly SizedPlan[];
  readonly signs: ClothSigns;
}

/** How many of a block each size takes, the quilt as drawn first. */
export type Counts = readonly number[];

/** @param at.block as its first place in the top has it */
export const blockHead = (of: HeadOf, at: { readonly block: BlockPlan; readonly counts: Counts }): BlockHead => {
  const { block, counts } = at;
  const { unit } = of.plan.quilt;
  const title = titleOf(of.plan, block);
  return {
    title,
    make: `Make ${countsText(counts)}${eachText(of.plan, block)}`,
    size: `${sizeOnPaper(block.finished, unit)} finished, ${sizeOnPaper(block.unfinished, unit)} before it is set`,
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
      ...madeRemark(block),
      ...grainRemark(block),
      ...slantRemark(block),
      ...blockNestingLines(block),
      ...(block.joining === 'straight' && block.leastUnits === 'searched'
        ? ['The order was found by a search: there may be one with fewer different units.']
        : []),
    ],
  };
};

/** ", about 15 minutes of sewing each"; nothing of a block that is not sewn. */
const eachText = (plan: QuiltPlan, block: BlockPlan): string => {
  if (block.steps.length === 0 || block.count === 0) return '';
  return `, about ${longTimeText(blockMinutes(plan, block) / block.count)} of sewing${block.count === 1 ? '' : ' each'}`;
};

export const titleOf = (plan: QuiltPlan, { id, colouring, mirror }: BlockPlan): string =>
  entryTitle(plan, { block: id, colouring, mirror });

/** For readers who listen. */
export const boardAlt = (of: Pick<HeadOf, 'plan' | 'signs'>, block: BlockPlan): string => {
  const kinds = block.pieces.map((piece) => `${piece.label} of cloth ${clothLetters(of.signs, piece).join(' or ')}`);
  return `The board of ${titleOf(of.plan, block)}: ${block.patches.length} pieces laid out in place: ${kinds.join(', ')}.`;
};

const clothLetters = (signs: ClothSigns, { fabrics }: PlannedPiece): readonly string[] =>
  fabrics.map(({ fabric }) => signOf(signs, fabric).letter);

/** "B2 · Oat": the marks of the piece with the name of its cloth; of a scrappy piece "12 of B2, 11 of C1", for all blocks. */
const clothsText = (of: HeadOf, block: BlockPlan, piece: PlannedPiece): string => {
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
const turnedRemark = (of: HeadOf, block: BlockPlan): readonly string[] => {
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
export const slantText =
  'Lay slanted edges under the needle without pulling: they stretch. Where a slanted seam ends, small points stand out past the edge after pressing: cut them off even with it.';

/** How the pictures of units that are made together are read. */
export const madeText =
  'Units made several at a time lie at the machine as they are cut: the thin line is drawn with a pencil, dashes are sewn, and dashes with dots are cut afterwards.';

const madeRemark = ({ steps }: BlockPlan): readonly string[] =>
  steps.some(({ made }) => made !== undefined && made.way.name !== 'singly') ? [madeText] : [];

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
    case 'curved':
      return `${title} has curved seams. Cut its curved pieces from the templates and bring the marks over to the wrong side of the cloth; where two pieces meet along a curve, their marks are laid on each other. Try it on scraps first.`;
    case 'partial':
      return `Not every seam of ${title} runs from edge to edge: round a centre the first seam is begun, left open part-way, and closed at the end. The steps say which.`;
    case 'set-in':
      return `${title} has inside corners, where a seam is set in. Mark where the seam lines cross on the wrong side of the pieces of those steps, an allowance in from the edges; sew from mark to mark and no further, and press when all of the seam is sewn. Try it on scraps first.`;
    default:
      return never(block.joining);
  }
};
