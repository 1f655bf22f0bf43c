// How is one strip of a given height filled well from the pieces that are left? Stacks and their places are chosen together
// by worth; what the pieces no longer suffice for is chosen again for the room that remains. Good, not always best.
import { type Across, acrossFor } from './across.ts';
import type { Lies } from './lies.ts';
import { type Stacks, stacksFor } from './stacks.ts';
import { type Pile, pileWidth, type Strip, stripOf } from './strip.ts';

export interface Filling {
  /** Pieces of each kind; lowered by what the strip takes. */
  readonly left: Int32Array;
  /** Of one piece of each kind. */
  readonly worth: Float64Array;
  readonly height: number;
  /** A way of lying that must be in the strip, or -1. */
  readonly first: number;
  /** Parts that stand in the strip already; their pieces are not among those left. */
  readonly kept?: readonly Pile[];
}

export interface Filler {
  /** Null when no piece fits. */
  readonly fill: (filling: Filling) => Strip | null;
  readonly stacks: Stacks;
  readonly across: Across;
  /** Cells worked out so far: the measure of a search's steps. */
  readonly work: () => number;
}

/** What a strip takes beside its tables, in cells; measured: about 4 µs. */
const perFill = 2000;

export const fillerFor = (lies: Lies): Filler => {
  const stacks = stacksFor(lies);
  const across = acrossFor();
  let fills = 0;

  const onTop = (filling: Filling, piles: Pile[]): number => {
    const { left, worth, height, first } = filling;
    const wide = lies.wide[first] as number;
    const kind = lies.kind[first] as number;
    left[kind] = (left[kind] as number) - 1;
    const above: number[] = [];
    const room = height - (lies.tall[first] as number);
    if (room > 0) {
      stacks.build({ worth, left, height: room, widest: wide });
      const place = stacks.bestPlace(room);
      if (place >= 0) stacks.read(place, room, above);
    }
    piles.push([first, 1, ...takenPile(lies, above, left)]);
    return wide;
  };

  const oneRound = (
    filling: Filling,
    room: number,
    piles: Pile[],
  ): { readonly used: number; readonly short: boolean } => {
    const { left, worth, height } = filling;
    stacks.build({ worth, left, height, widest: room });
    across.open(room);
    for (let place = 0; place < stacks.places(); place++) {
      const lie = stacks.lieAt(place);
      across.offer({
        id: place,
        wide: lies.wide[lie] as number,
        worth: stacks.worthAt(place, height),
        most: left[lies.kind[lie] as number] as number,
      });
    }
    const chosen: number[] = [];
    across.read(chosen);
    let used = 0;
    let short = false;
    for (let i = 0; i < chosen.length; i += 2) {
      const pile: number[] = [];
      stacks.read(chosen[i] as number, height, pile);
      const times = Math.min(chosen[i + 1] as number, pileTimes(lies, pile, left));
      if (times < (chosen[i + 1] as number)) short = true;
      const taken = times === 0 ? takenPile(lies, pile, left) : pile;
      if (taken.length === 0) continue;
      if (times > 0) takeAll(lies, pile, { left, times });
      for (let k = 0; k < Math.max(1, times); k++) piles.push(taken);
      used += Math.max(1, times) * pileWidth(lies, taken);
    }
    return { used, short };
  };

  return {
    stacks,
    across,
    work: () => stacks.work() + across.work() + fills * perFill,
    fill: (filling) => {
      fills++;
      const piles: Pile[] = [...(filling.kept ?? [])];
      let room = piles.reduce((free, pile) => free - pileWidth(lies, pile), lies.width);
      if (filling.first >= 0) room -= onTop(filling, piles);
      for (;;) {
        const { used, short } = oneRound(filling, room, piles);
        room -= used;
        if (!short || used === 0) break;
      }
      return piles.length === 0 ? null : stripOf(lies, piles);
    },
  };
};

/** How often a pile can be cut before some kind runs out; the two ways of one kind may share a pile. */
const pileTimes = (lies: Lies, pile: Pile, left: ArrayLike<number>): number => {
  let times = Number.POSITIVE_INFINITY;
  for (let i = 0; i < pile.length; i += 2) {
    const kind = lies.kind[pile[i] as number] as number;
    let needs = 0;
    for (let j = 0; j < pile.length; j += 2) if (lies.kind[pile[j] as number] === kind) needs += pile[j + 1] as number;
    times = Math.min(times, Math.floor((left[kind] as number) / needs));
  }
  return times;
};

const takeAll = (lies: Lies, pile: Pile, of: { readonly left: Int32Array; readonly times: number }): void => {
  for (let i = 0; i < pile.length; i += 2) {
    const kind = lies.kind[pile[i] as number] as number;
    of.left[kind] = (of.left[kind] as number) - of.times * (pile[i + 1] as number);
  }
};

/** Takes a pile once, without the pieces that are no longer there. */
const takenPile = (lies: Lies, pile: Pile, left: Int32Array): Pile => {
  const taken: number[] = [];
  for (let i = 0; i < pile.length; i += 2) {
    const lie = pile[i] as number;
    const kind = lies.kind[lie] as number;
    const times = Math.min(pile[i + 1] as number, left[kind] as number);
    if (times === 0) continue;
    left[kind] = (left[kind] as number) - times;
    taken.push(lie, times);
  }
  return taken;
};
