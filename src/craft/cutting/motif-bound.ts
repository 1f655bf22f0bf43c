// How short can a layout be whose pieces must lie on motifs? Never shorter than their area, nor than the rows of motifs that so many
// pieces take.
import type { Length } from '#craft/measure';
import type { Demand, MotifRepeat } from './cloth.ts';

/**
 * With w and h the least sides of the motif pieces: a row of motifs holds at most so many, and of motifs one below another only
 * every ⌈h / along⌉th can be used.
 *
 * @source docs/formulas.md#motifs
 */
export const motifBound = (task: {
  readonly width: Length;
  readonly demands: readonly Demand[];
  readonly repeat: MotifRepeat;
}): number => {
  const { width, repeat, demands } = task;
  const area = demands.reduce((sum, { across, along, count }) => sum + across * along * count, 0) / width;
  const onMotifs = demands.filter(({ motif, count }) => motif && count > 0);
  if (onMotifs.length === 0) return area;
  const count = onMotifs.reduce((sum, demand) => sum + demand.count, 0);
  const wide = Math.min(...onMotifs.map(({ across }) => across));
  const high = Math.min(...onMotifs.map(({ along }) => along));
  const [perRow, columns] = inOneRow({ width, wide, repeat });
  const first =
    repeat.motif[1] + Math.max(0, Math.ceil((high / 2 - repeat.motif[1]) / repeat.along - 1e-9)) * repeat.along;
  const stride = repeat.across === null ? 1 : Math.ceil(high / repeat.along - 1e-9);
  const rows = Math.max(Math.ceil(count / perRow) - 1, (Math.ceil(count / columns) - 1) * stride);
  return Math.max(area, first + rows * repeat.along + high / 2);
};

/** Pieces that a row holds at most, and motifs in it that have room round them. */
const inOneRow = (of: {
  readonly width: number;
  readonly wide: number;
  readonly repeat: MotifRepeat;
}): readonly [perRow: number, columns: number] => {
  const { width, wide, repeat } = of;
  const side = Math.max(1, Math.floor(width / wide + 1e-9));
  if (repeat.across === null) return [side, side];
  const first =
    repeat.motif[0] + Math.max(0, Math.ceil((wide / 2 - repeat.motif[0]) / repeat.across - 1e-9)) * repeat.across;
  const columns = Math.max(1, Math.floor((width - wide / 2 - first) / repeat.across + 1e-9) + 1);
  const apart = Math.ceil(wide / repeat.across - 1e-9);
  return [Math.ceil(columns / apart), columns];
};
