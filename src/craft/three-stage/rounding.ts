// A layout near the linear program's answer: strips as often as it takes them whole, some of those it takes in part, and the
// pieces that remain laid strip by strip. Where thousands of pieces are cut this is almost all.
import type { Chance } from '#ground/chance';
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import { shaken } from './neighbours.ts';
import { sequenceOf } from './sequence.ts';
import { lengthOfStrips, type Strip, takeFrom, timesWithin } from './strip.ts';

/** A strip, and how often the linear program takes it. */
export type Taken = readonly [strip: Strip, times: number];

export interface Rounding {
  readonly lies: Lies;
  readonly filler: Filler;
  readonly chance: Chance;
  readonly worth: Float64Array;
  readonly support: readonly Taken[];
  readonly demand: Int32Array;
  /** Layouts as long as this are given up. */
  readonly limit: number;
}

export const roundedFrom = (of: Rounding): readonly Strip[] | null => {
  const { lies, filler, chance, support, demand, limit } = of;
  const left = demand.slice();
  const strips: Strip[] = [];
  const cut = (strip: Strip, wanted: number): void => {
    const times = Math.min(wanted, timesWithin(strip, left));
    if (times <= 0) return;
    takeFrom(strip, left, times);
    for (let i = 0; i < times; i++) strips.push(strip);
  };
  for (const [strip, x] of support) cut(strip, Math.floor(x + 1e-6));
  const parts = support
    .map(([strip, x]) => ({ strip, draw: x - Math.floor(x + 1e-6) + 0.6 * chance() }))
    .sort((a, b) => b.draw - a.draw);
  for (const { strip, draw } of parts) if (draw > 0.5) cut(strip, 1);
  const rest = sequenceOf({
    lies,
    filler,
    left,
    manner: { worth: shaken(of.worth, chance, 0.1), chance, tries: 3, stray: 0.2, rise: 0, loose: 0, repeat: 'once' },
    limit: limit - lengthOfStrips(strips),
  });
  return rest === null ? null : [...strips, ...rest];
};
