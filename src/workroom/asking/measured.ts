// How large are the blocks of a document, and what its borders go round? Without a plan: for choices of setting, also while the
// whole cannot be planned.
import { type Quilt, readQuilt, sizeOf } from '#craft/design';
import { blockDrafter, type DraftedBlock } from '#craft/drafting';
import { setTop } from '#craft/setting';
import { toNumber } from '#ground/exact';
import type { JsonObject } from '#workroom/editing';
import { alone, blocksIn } from './alone.ts';

export interface Measured {
  /** Those that can be read, finished. */
  readonly blocks: readonly MeasuredBlock[];
  /** Finished, from the middle outward: what each border goes round, then the whole; as far as they can be set. */
  readonly rings: readonly (readonly [width: number, height: number])[];
}

export interface MeasuredBlock {
  readonly id: string;
  readonly size: readonly [width: number, height: number];
  /** Without its frame. */
  readonly inner: readonly [width: number, height: number];
}

export const askMeasures = (document: JsonObject): Measured => ({
  blocks: blocksIn(document).flatMap(({ id }) => measuredBlock(document, String(id))),
  rings: ringsOf(document),
});

const measuredBlock = (document: JsonObject, id: string): readonly MeasuredBlock[] => {
  const read = readQuilt(alone(document, id));
  const shape = read.ok ? read.value.blocks.find((block) => block.id === id)?.shape : undefined;
  if (shape === undefined) return [];
  const inNumbers = (of: typeof shape): readonly [number, number] => {
    const [width, height] = sizeOf(of);
    return [toNumber(width), toNumber(height)];
  };
  return [{ id, size: inNumbers(shape), inner: inNumbers(shape.kind === 'framed' ? shape.inner : shape) }];
};

const ringsOf = (document: JsonObject): Measured['rings'] => {
  const { finish: _, colourways: __, sizes: ___, ...rest } = document;
  const read = readQuilt(rest);
  if (!read.ok) return [];
  const quilt = unruled(read.value);
  const draft = blockDrafter();
  const blocks = new Map<string, DraftedBlock>();
  for (const design of quilt.blocks) {
    const drafted = draft(design);
    if (!drafted.ok) return [];
    blocks.set(design.id, drafted.value);
  }
  const rings: (readonly [number, number])[] = [];
  for (let borders = 0; borders <= quilt.top.borders.length; borders++) {
    const top = { ...quilt.top, borders: quilt.top.borders.slice(0, borders) };
    const set = setTop({ quilt: { ...quilt, top }, blocks, lightness: () => 0 });
    if (!set.ok) break;
    rings.push([set.value.width, set.value.height]);
  }
  return rings;
};

/** An arrangement is as large however its blocks are turned, so no values are measured for it. */
const unruled = (quilt: Quilt): Quilt =>
  quilt.top.set === 'straight' ? { ...quilt, top: { ...quilt.top, arrangement: null } } : quilt;
