// How much can a strip of a height be worth, and which strip is? Parts side by side, a part as often as there are pieces of its
// leading kind; that other kinds in it may run out is not asked, so that the worth is never less than the truth.
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import { type Strip, stripOf } from './strip.ts';

export interface WorthMost {
  readonly lies: Lies;
  /** Its stacks are built for this height or a greater one. */
  readonly filler: Filler;
  /** Pieces of each kind. */
  readonly demand: Int32Array;
  readonly height: number;
}

/** Puts the parts worth anything into the filler's table of parts side by side. @returns the most worth of any strip so high */
export const fillAcross = ({ lies, filler, demand, height }: WorthMost): number => {
  const { stacks, across } = filler;
  across.open(lies.width);
  for (let place = 0; place < stacks.places(); place++) {
    const lie = stacks.lieAt(place);
    const worth = stacks.worthAt(place, height);
    if (worth <= 0) continue;
    const most = demand[lies.kind[lie] as number] as number;
    across.offer({ id: place, wide: lies.wide[lie] as number, worth, most });
  }
  return across.best();
};

/** The strip that `fillAcross` has just found for this height. */
export const filledAcross = ({ lies, filler, height }: Omit<WorthMost, 'demand'>): Strip => {
  const chosen: number[] = [];
  filler.across.read(chosen);
  const piles: number[][] = [];
  for (let i = 0; i < chosen.length; i += 2) {
    const pile: number[] = [];
    filler.stacks.read(chosen[i] as number, height, pile);
    for (let k = 0; k < (chosen[i + 1] as number); k++) piles.push(pile);
  }
  return stripOf(lies, piles);
};
