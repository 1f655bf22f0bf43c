// What can be saved of a top that came out the wrong size? What the trade does: seams to come made narrower, a wrong strip replaced,
// blocks trimmed before they are sewn, sides eased together, borders cut to the measure of the quilt, the last of them wider.
import { entryName } from '#craft/blocks';
import { inchIn, type Length, length, tidy } from '#craft/measure';
import type { TopPlan, TopStep } from '#craft/plan';
import { type Both, makingUp, type Rescue, seamsAgain, type Wrong } from './rescue.ts';

export interface WrongTop extends Wrong {
  readonly top: TopPlan;
}

/**
 * What may be done, the least work first: all of it common practice, no source.
 */
export const topRescuesFor = (wrong: WrongTop): readonly Rescue[] => [
  ...blocksTrimmed(wrong),
  ...makingUp(wrong),
  ...stripReplaced(wrong),
  ...eased(wrong),
  ...borders(wrong),
];

const isOfBlocks = ({ top }: WrongTop, piece: string): boolean => top.pieces.every(({ label }) => label !== piece);

const blocksTrimmed = (wrong: WrongTop): readonly Rescue[] => {
  const { fault, top, seam } = wrong;
  if (fault.kind !== 'cut' || !isOfBlocks(wrong, fault.piece)) return [];
  const placed = top.set.placed.find((one) => entryName(one) === fault.piece);
  if (placed === undefined) return [];
  const [width, height] = placed.size;
  // on point the box round it is as wide as its diagonal
  const side = tidy(placed.turn % 90 === 0 ? width : width * Math.SQRT1_2);
  const to = Math.abs(width - height) < 1e-9 ? length(side + 2 * seam) : null;
  const trimmed: Both | null = fault.by > 0 && to !== null ? [to, to] : null;
  const { piece, at } = fault;
  return [at ? { kind: 'trim-one', piece, at, to: trimmed } : { kind: 'trim-blocks', piece, to: trimmed }];
};

const stripReplaced = (wrong: WrongTop): readonly Rescue[] =>
  wrong.fault.kind === 'swap' || (wrong.fault.kind === 'cut' && !isOfBlocks(wrong, wrong.fault.piece))
    ? seamsAgain(wrong)
    : [];

/** An eighth of an inch for every foot is taken up by pins and the feed: our own figure. */
const easing = 1 / 96;

/** Of a row or a section, to be sewn to others: along the side that is further off. */
const eased = ({ step, top, models, off, fineness }: WrongTop): readonly Rescue[] => {
  const { stage } = top.steps[step] as TopStep;
  const isJoinedOn = step < top.steps.length - 1 && (stage === 'row' || stage === 'section');
  const most = Math.max(...off.map(Math.abs));
  const way = Math.abs(off[0]) >= Math.abs(off[1]) ? 'across' : 'down';
  const drawn = models.find((model) => model.step === step && model.way === way)?.drawn ?? 0;
  return isJoinedOn && most >= fineness * (1 - 1e-9) && most <= easing * drawn
    ? [{ kind: 'ease', by: length(most) }]
    : [];
};

/** The least that a border is worth being made wider by, in inches: our own figure. */
const leastWider = 1 / 8;

const borders = ({ step, top, whole, fineness, unit }: WrongTop): readonly Rescue[] => {
  const isToCome = top.steps.some(({ measure }, one) => measure !== null && one > step);
  const isOff = Math.max(...whole.map(Math.abs)) >= fineness * (1 - 1e-9);
  if (!isToCome || !isOff) return [];
  const lacks = whole.map((off): Length => length(Math.max(0, -off / 2))) as unknown as Both;
  const isStrip = top.set.borders.at(-1)?.kind !== 'pieced';
  const isWorth = isStrip && Math.max(...lacks) >= leastWider * inchIn[unit] - 1e-9;
  return [{ kind: 'fit-borders' }, ...(isWorth ? [{ kind: 'widen-border', by: lacks } as const] : [])];
};
