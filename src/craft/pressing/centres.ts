// Spun centres: where the seams that come to one point of the last one all run round one way, that one can run with them, half of
// it to either side.
import type { Press } from './press.ts';
import type { SeamEnd, Spot, StepEnd } from './spots.ts';

export interface Centre {
  /** Whose seam may be spun. */
  readonly step: number;
  /** Of all seams that come to it, from both sides: the way that each must lie there when it is spun clockwise. */
  readonly ends: readonly (StepEnd & { readonly wanted: 1 | -1 })[];
  /** So many run together there that it would else be pressed open. */
  readonly isMany: boolean;
}

/** Seams on which others come together at one point alone, in the order of sewing. */
export const centresIn = (of: {
  readonly spots: readonly Spot<StepEnd>[];
  /** By seam: its step. */
  readonly overOf: readonly number[];
  /** By step. */
  readonly pressesOf: readonly (readonly Press[])[];
}): readonly Centre[] => {
  const { spots, overOf, pressesOf } = of;
  const found = new Map<number, Spot<StepEnd>[]>();
  for (const spot of spots) {
    if (spot.ends.every((side) => side.length > 0)) found.set(spot.over, [...(found.get(spot.over) ?? []), spot]);
  }
  const centres = new Map<number, Centre>();
  for (const [seam, [spot, ...more]] of found) {
    const step = overOf[seam] as number;
    if (spot === undefined || more.length > 0 || centres.has(step) || spot.meetings.length === 0) continue;
    const presses = pressesOf[step] as readonly Press[];
    const ends = spot.ends.flat().map(endOf);
    if (presses.length < 2 || ends.some((end) => end.step === step)) continue;
    centres.set(step, { step, ends, isMany: presses.includes('open') });
  }
  return [...centres.values()].sort((a, b) => a.step - b.step);
};

/** y runs down: clockwise is to the right hand of one who walks away from the middle. */
const endOf = ({ into, toward, of }: SeamEnd<StepEnd>): Centre['ends'][number] => ({
  ...of,
  wanted: into.x * toward.y - into.y * toward.x > 0 ? 1 : -1,
});
