// What a document writes for a choice of ways.
import type { Method } from '#craft/design';
import { type Rational, rational } from '#ground/exact';
import type { UnitGroup, WayOption } from './groups.ts';
import type { Choice } from './likely.ts';

/** What the document writes for a choice: every way but singly. */
export const methodsFor = (groups: readonly UnitGroup[], choice: Choice): readonly Method[] =>
  groups.flatMap(({ unit, size, fabrics, options }, i): readonly Method[] => {
    const { way, trimmed } = options[choice[i] as number] as WayOption;
    if (way === 'singly' && !trimmed) return [];
    return [{ unit, size: [exactly(size[0]), exactly(size[1])], fabrics, way, trimmed, path: `/methods/${i}` }];
  });

/** As a fraction that a person would write, where there is one. */
const exactly = (value: number): Rational => {
  for (let parts = 1; parts <= 64; parts++) {
    const whole = Math.round(value * parts);
    if (Math.abs(whole - value * parts) < 1e-7) return rational(whole, parts);
  }
  return rational(Math.round(value * 1e6), 1e6);
};
