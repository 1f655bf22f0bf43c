// Ruler-friendly sizes of one block, in words.
import type { BlockDrift, BlockSize } from '#craft/accuracy';
import type { Unit } from '#craft/measure';
import { driftText, lengthText, sizeText } from '#paper/words';

export interface SizesFacts {
  readonly title: string;
  readonly unit: Unit;
  readonly seam: number;
  readonly ruler: number;
  /** Finished. */
  readonly asked: BlockSize;
  readonly drift: BlockDrift;
  readonly sizes: readonly BlockSize[];
  readonly nearest: BlockSize | null;
  /** Widths that were looked at. */
  readonly looked: readonly [from: number, to: number];
}

export const sizesText = (of: SizesFacts): string =>
  [
    `${of.title}, finished, near ${sizeText(of.asked, of.unit)} (seam ${lengthText(of.seam, of.unit)}, ruler marked every ${lengthText(of.ruler, of.unit)})`,
    '',
    ...atAsked(of),
    '',
    ...friendlyLines(of),
    '',
    'Triangles are cut larger and trimmed, so their finished sides count, not their cuts. A square on its point',
    'never falls on a mark both ways: cut it to a line, or from a template.',
  ].join('\n');

const atAsked = ({ asked, drift, unit }: SizesFacts): readonly string[] => {
  const { off, cuts, across, down } = drift;
  const size = sizeText(asked, unit);
  if (off.length === 0) return [`At ${size} every square and rectangle is cut on a mark.`];
  const lines = off.map((cut) => {
    const way = cut.shape === 'square' ? sizeText([cut.exact[0], cut.exact[0]], unit) : sizeText(cut.exact, unit);
    return `  ${cut.shape} of exactly ${way}, on the marks ${sizeText(cut.size, unit)}`;
  });
  const adds =
    across === 0 && down === 0
      ? []
      : [`Over the block this adds up to ${driftText(across, 'across', unit)} and ${driftText(down, 'down', unit)}.`];
  return [
    `At ${size}, ${off.length} of ${cuts} different cuts ${off.length === 1 ? 'falls' : 'fall'} between marks:`,
    ...lines,
    ...adds,
  ];
};

const friendlyLines = ({ sizes, nearest, looked, unit }: SizesFacts): readonly string[] => {
  const [from, to] = looked;
  if (nearest === null) {
    return [`No size from ${lengthText(from, unit)} to ${lengthText(to, unit)} wide brings every cut onto a mark.`];
  }
  return [
    'Sizes at which every cut falls on a mark:',
    ...sizes.map((size) => `  ${sizeText(size, unit)}${size === nearest ? '   (nearest)' : ''}`),
  ];
};
