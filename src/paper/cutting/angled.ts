// How a strip at an angle is cut into its pieces, in a few words: "cut every 2¼ in at 45°".
import type { StripWay } from '#craft/cutting';
import type { Unit } from '#craft/measure';
import { lengthOnPaper } from '#paper/lengths';

export const stripText = (way: StripWay, unit: Unit): string => {
  if (way.cutBy === 'template') return 'cut by the template';
  const every = lengthOnPaper(way.size[1], unit);
  if (way.cuts === 'parallel') return `cut every ${every} at ${angleText(way.angles[0])}`;
  const [left, right] = way.angles.map(angleText) as [string, string];
  const angles = left === right ? `by turns at ${left}` : `by turns at ${left} and ${right}`;
  return `cut ${angles}, ${every} along the longer edge`;
};

/** Between the cut and the strip's edge, as a ruler shows it: at most 90°, to a tenth. */
const angleText = (degrees: number): string => `${Number(Math.min(degrees, 180 - degrees).toFixed(1))}°`;
