// What the trade calls beds.
import type { BedName } from '#craft/finishing';

export const bedWords: Readonly<Record<BedName, string>> = {
  twin: 'twin bed',
  'twin-xl': 'long twin bed',
  full: 'full bed',
  queen: 'queen bed',
  king: 'king bed',
  'california-king': 'California king bed',
};
