// The blocks of a document: one shape each, and a cloth for every tone in every colouring.
import { collectionBlock } from '#craft/collection';
import type { WrittenBlock } from './document.ts';
import type { NamedFabrics } from './named-fabrics.ts';
import type { BlockDesign } from './quilt.ts';
import { readColourings } from './read-colourings.ts';
import { readMethods } from './read-methods.ts';
import { readShape } from './read-shape.ts';
import type { Reading } from './reading.ts';

interface Around {
  readonly reading: Reading;
  readonly fabrics: NamedFabrics;
}

/** Blocks that could be read; the others are in the report. */
export const readBlocks = (written: readonly WrittenBlock[], around: Around): readonly BlockDesign[] => {
  const { reading } = around;
  const first = new Map<string, number>();
  written.forEach((block, i) => {
    const path = `/blocks/${i}`;
    const earlier = first.get(block.id);
    if (earlier !== undefined) {
      reading.report({ code: 'design/block-twice', path: `${path}/id`, id: block.id, first: `/blocks/${earlier}` });
    } else first.set(block.id, i);
    reading.name(block.id, `${path}/id`);
  });
  const read = readerOf({ written, first, ...around });
  return written.flatMap((_, i) => read(i, []) ?? []);
};

interface Shelf extends Around {
  readonly written: readonly WrittenBlock[];
  readonly first: ReadonlyMap<string, number>;
}

/** Reads each block once, a block in another's centre before that other; `inside`: the blocks whose centre asks for it. */
const readerOf = (shelf: Shelf) => {
  const { written, first, reading, fabrics } = shelf;
  const known = new Map<number, BlockDesign | null>();
  const read = (index: number, inside: readonly number[]): BlockDesign | null => {
    const before = known.get(index);
    if (before !== undefined) return before;
    const block = written[index] as WrittenBlock;
    const path = `/blocks/${index}`;
    const found: { centre: BlockDesign | null } = { centre: null };
    const shape = readShape(block, {
      path,
      reading,
      fabrics,
      centreOf: (id, place) => {
        found.centre = centreBlock({ id, place, inside: [...inside, index] });
        return found.centre && { block: id, path: found.centre.path, shape: found.centre.shape };
      },
    });
    const colourings = readColourings({ block, path, reading, fabrics, centre: found.centre });
    const title = block.title ?? titleFrom(block) ?? block.id;
    const motifs = block.motifs === undefined || block.motifs.length === 0 ? {} : { motifs: block.motifs };
    const methods = readMethods(block.methods, { path: `${path}/methods`, reading, fabrics });
    const piecing = block.piecing === undefined ? {} : { piecing: block.piecing };
    const design =
      shape === null ? null : { id: block.id, title, path, shape, colourings, ...piecing, ...motifs, ...methods };
    known.set(index, design);
    return design;
  };
  const centreBlock = (asked: {
    readonly id: string;
    readonly place: string;
    readonly inside: readonly number[];
  }): BlockDesign | null => {
    const { id, place, inside } = asked;
    const index = first.get(id);
    if (index === undefined) {
      reading.report({ code: 'design/unknown-block', path: place, found: id, known: [...first.keys()] });
      return null;
    }
    const from = inside.indexOf(index);
    if (from >= 0) {
      const chain = [...inside.slice(from), index].map((i) => (written[i] as WrittenBlock).id);
      reading.report({ code: 'design/centre-circle', path: `/blocks/${index}/recipe/centre/block`, chain });
      return null;
    }
    const centre = read(index, inside);
    if (centre?.shape.kind !== 'elsewhere') return centre;
    reading.report({ code: 'design/elsewhere-has-no-pieces', path: place, block: id, use: 'centre' });
    return null;
  };
  return read;
};

const titleFrom = ({ from }: WrittenBlock): string | undefined =>
  from === undefined ? undefined : collectionBlock(from)?.name;
