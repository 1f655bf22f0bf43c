// seamstead sizes BLOCK --near SIZE: at which sizes every cut of a block falls on a mark of the ruler.
import { blockDrift, rulerSizes, scaled } from '#craft/accuracy';
import { collection, collectionBlock } from '#craft/collection';
import type { CutRule } from '#craft/cutting';
import { type BlockDesign, collectionShape, parseQuilt } from '#craft/design';
import { draftBlock } from '#craft/drafting';
import { length, parseLength, type Unit, usualSewing } from '#craft/measure';
import { div, type Rational, toNumber } from '#ground/exact';
import { sizesText } from '#paper/collection';
import { instead } from '#paper/words';
import { calledName, readDocument } from './documents.ts';
import { problemLines } from './problems.ts';
import { exits, print, type Terminal, WrongUse } from './terminal.ts';

export interface SizesWishes {
  /** Id in the collection, or in the document. */
  readonly block: string;
  /** As written. */
  readonly near: string;
  readonly unit: Unit;
  /** A document whose block is meant; its unit, seam and ruler hold. */
  readonly file: string | null;
}

interface Asked {
  readonly design: BlockDesign;
  readonly unit: Unit;
  readonly seam: Rational;
  readonly ruler: Rational;
}

/** Sizes given on either side of the asked one. */
const each = 3;

export const runSizes = async (wishes: SizesWishes, terminal: Terminal): Promise<number> => {
  const asked = wishes.file === null ? fromCollection(wishes) : await fromFile(wishes, wishes.file, terminal);
  if (asked === null) return exits.problems;
  const { design, unit, seam, ruler } = asked;
  const near = nearOf(wishes.near, unit);
  const rule: CutRule = { seam: length(toNumber(seam)), ruler };
  const drafted = draftBlock(design);
  if (!drafted.ok) {
    const problems = drafted.problems.map((problem) => ({ ...problem, unit }));
    await print(terminal.stderr, problemLines(calledName(wishes.file ?? wishes.block), problems, drafted.more));
    return exits.problems;
  }
  const block = scaled(drafted.value, div(near, drafted.value.exactSize[0]));
  if (block.patches.length === 0) {
    throw new WrongUse(`Block “${design.id}” is made elsewhere: nothing is cut for it here.`);
  }
  const found = rulerSizes({ block, near: block.size[0], rule, each });
  await print(
    terminal.stdout,
    sizesText({
      title: design.title,
      unit,
      seam: rule.seam,
      ruler: toNumber(ruler),
      asked: block.size,
      drift: blockDrift(block, rule),
      sizes: found.sizes,
      nearest: found.nearest,
      looked: [found.from, found.to],
    }),
  );
  return exits.done;
};

const nearOf = (written: string, unit: Unit): Rational => {
  const read = parseLength(written, { unit, sign: 'positive' });
  if (read.ok) return read.value;
  throw new WrongUse(`--near ${written}: this is not a size above zero. Write it like "8", "8 1/2" or "20 cm".`);
};

const fromCollection = ({ block, near, unit }: SizesWishes): Asked => {
  const found = collectionBlock(block);
  if (found === null) {
    const known = collection.map(({ id }) => id);
    throw new WrongUse(
      `The collection has no block “${block}”. ${instead(block, known)} For a block of your own add --file with its document.`,
    );
  }
  const side = nearOf(near, unit);
  const shape = collectionShape(found, [side, side]);
  return {
    design: { id: block, title: found.name, path: '', shape, colourings: {} },
    unit,
    ...usualSewing[unit],
  };
};

const fromFile = async ({ block }: SizesWishes, file: string, terminal: Terminal): Promise<Asked | null> => {
  const read = parseQuilt(await readDocument(file, terminal));
  if (!read.ok) {
    await print(terminal.stderr, problemLines(calledName(file), read.problems, read.more));
    return null;
  }
  const { blocks, unit, seam, ruler } = read.value;
  const design = blocks.find(({ id }) => id === block);
  if (design === undefined) {
    const known = blocks.map(({ id }) => id);
    throw new WrongUse(`${file} has no block “${block}”. ${instead(block, known)}`);
  }
  return { design: withoutFrame(design), unit, seam, ruler };
};

/** A frame's widths stand by themselves: they do not grow with the block. */
const withoutFrame = (design: BlockDesign): BlockDesign =>
  design.shape.kind === 'framed' ? { ...design, shape: design.shape.inner } : design;
