// What is to be chosen: a way for every step of a block (for each of its two ways, where it has two) and for every run of seams in
// the top; and how each block is laid, where it looks the same turned. And what is reckoned best.
import type { QuarterTurn } from '#craft/design';
import type { StudiedBlock } from './block.ts';
import type { Press, SidePress } from './press.ts';
import type { RimEnd } from './turned-rim.ts';

/** What ends on a seam of the top: a place on the edge of a placed block, as its rim lists them, or a run of the top's own. */
export type TopWhose = { readonly placed: number; readonly slot: number } | { readonly run: number };

/** Of blocks as they are set, none turned further. */
export interface TopMeeting {
  readonly whose: readonly [TopWhose, TopWhose];
  readonly nests: 'alike' | 'unlike';
}

export interface PressTask {
  /** By entry. */
  readonly blocks: readonly StudiedBlock[];
  /** By entry and quarters clockwise in the top: what ends at each place of its rim when it is turned so; null where it is not. */
  readonly rims: readonly (readonly (readonly RimEnd[] | null)[])[];
  /** The entry of every placed block. */
  readonly entryOf: readonly number[];
  /** By placed block: the turns that leave its look as it is, none first. */
  readonly turnsOf: readonly (readonly QuarterTurn[])[];
  readonly runs: readonly { readonly presses: readonly SidePress[]; readonly costs: readonly number[] }[];
  readonly between: readonly TopMeeting[];
  /** So many meetings stay loose at the least, whatever is chosen: no fewer need be looked for. */
  readonly leastLoose: number;
}

/** Which of its entry's two ways each placed block is pressed. */
export type Variants = readonly (0 | 1)[];

/** How every placed block is made and laid. */
export interface Laying {
  readonly variants: Variants;
  /** Clockwise, further than the document has it. */
  readonly turns: readonly QuarterTurn[];
}

export interface Pressed extends Laying {
  /** By entry, variant and step; a variant that no block takes is empty. */
  readonly steps: readonly (readonly [readonly Press[], readonly Press[]])[];
  readonly runs: readonly SidePress[];
  /** Of all meetings in and between blocks. */
  readonly nested: number;
  /** Whether no other sides nest more, blocks made and laid so. */
  readonly proven: boolean;
}

export const asSet = ({ entryOf }: PressTask): Laying => ({
  variants: entryOf.map(() => 0),
  turns: entryOf.map(() => 0),
});

export const endAt = (
  { rims, entryOf }: Pick<PressTask, 'rims' | 'entryOf'>,
  { placed, slot }: { readonly placed: number; readonly slot: number },
  turn: QuarterTurn,
): RimEnd => rims[entryOf[placed] as number]?.[turn / 90]?.[slot] as RimEnd;

/** Meetings nested, a block pressed its other way counted as one that is not; then nested ones; then blocks that stay unturned. */
export const isBetter = (a: Pressed, b: Pressed): boolean => {
  const [p, q] = [scoreOf(a), scoreOf(b)];
  const first = p.findIndex((one, i) => one !== q[i]);
  return first >= 0 && (p[first] as number) > (q[first] as number);
};

const scoreOf = ({ nested, variants, turns }: Pressed): readonly number[] => {
  const others = variants.filter((variant) => variant === 1).length;
  return [nested - others, nested, -turns.filter((turn) => turn !== 0).length];
};
