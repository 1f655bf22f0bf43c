// Frames round blocks: coping strips that bring a smaller block to the size that others have.
import type { QuiltDocument } from '#craft/design';
import type { MeasuredBlock } from '#workroom/compute';
import { writtenLength } from './written-length.ts';

type Block = QuiltDocument['blocks'][number];

export interface FrameChoice {
  /** That the block then has, finished. */
  readonly size: readonly [width: number, height: number];
  /** Of the frame, on each side. */
  readonly width: number;
}

/** Larger sizes of other blocks that one frame, equally wide on all sides, brings a block to; the nearest first. */
export const framesFor = (own: MeasuredBlock, blocks: readonly MeasuredBlock[]): readonly FrameChoice[] => {
  const choices = new Map<string, FrameChoice>();
  for (const { size } of blocks) {
    const width = frameBetween(own.size, size);
    if (width !== null) choices.set(size.join(' '), { size, width });
  }
  return [...choices.values()].toSorted((a, b) => a.width - b.width);
};

const frameBetween = (
  [width, height]: readonly [number, number],
  [wide, high]: readonly [number, number],
): number | null => {
  const [across, down] = [(wide - width) / 2, (high - height) / 2];
  return across > 1e-9 && Math.abs(across - down) < 1e-9 ? across : null;
};

/** Blocks of the top that are smaller than its largest, each with the frame that brings it there; none where one has no such frame. */
export const framesForAll = (blocks: readonly MeasuredBlock[]): ReadonlyMap<string, FrameChoice> => {
  const largest = blocks.toSorted((a, b) => b.size[0] * b.size[1] - a.size[0] * a.size[1])[0];
  const found = new Map<string, FrameChoice>();
  if (largest === undefined) return found;
  for (const { id, size } of blocks) {
    if (size[0] === largest.size[0] && size[1] === largest.size[1]) continue;
    const width = frameBetween(size, largest.size);
    if (width === null) return new Map();
    found.set(id, { size: largest.size, width });
  }
  return found;
};

/** Outside the frames that it has. */
export const addFrame = (block: Block, of: { readonly width: number | string; readonly cloth: string }): void => {
  const { width, cloth } = of;
  block.frame ??= [];
  block.frame.push({ width: typeof width === 'string' ? width : writtenLength(width), fabric: cloth });
};

export const takeFrameOut = (block: Block, at: number): void => {
  block.frame?.splice(at, 1);
  if (block.frame?.length === 0) delete block.frame;
};
