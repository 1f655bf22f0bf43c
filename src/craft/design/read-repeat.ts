// Where a print has motifs that pieces may be cut round.
import { compare, type Rational } from '#ground/exact';
import type { WrittenFabric } from './document.ts';
import type { PrintRepeat } from './quilt.ts';
import type { Spot } from './reading.ts';

/** The motif's centre lies within the first repeat, counted from the corner of the squared cloth. */
export const readRepeat = (written: WrittenFabric['repeat'], { path, reading }: Spot): PrintRepeat | null => {
  if (written === undefined) return null;
  const along = reading.length({ written: written.along, path: `${path}/along` });
  const across =
    written.across === undefined ? null : reading.length({ written: written.across, path: `${path}/across` });
  const motif = ([0, 1] as const).map((side) =>
    reading.length({ written: written.motif[side], path: `${path}/motif/${side}`, sign: 'zero-or-more' }),
  );
  const [x, y] = motif;
  if (along === null || (across === null && written.across !== undefined) || !x || !y) return null;
  const isWithin = [x, y].map((found, side) => {
    const most: Rational | null = side === 0 ? across : along;
    if (most === null || compare(found, most) <= 0) return true;
    reading.report({
      code: 'design/motif-beyond-repeat',
      path: `${path}/motif/${side}`,
      found,
      most,
      unit: reading.unit,
    });
    return false;
  });
  return isWithin.every(Boolean) ? { along, across, motif: [x, y] } : null;
};
