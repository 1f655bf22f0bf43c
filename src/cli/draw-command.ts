// seamstead draw FILE|BLOCK: pictures as SVG and PNG, in colour, in grey to judge values by, as lines to colour in.
import { join } from 'node:path';
import { type BlockPlan, planQuilt, type QuiltPlan } from '#craft';
import { collection, collectionBlock } from '#craft/collection';
import type { Unit } from '#craft/measure';
import { clothSignsFor, type Drawing, drawBlock, drawQuilt, type Look, signsAs } from '#paper';
import { entryTitle } from '#paper/cutting';
import { asFirstPlaced } from '#paper/drawing';
import { quiltAlt } from '#paper/pages';
import { instead, sizeText } from '#paper/words';
import { pngOf } from '#print';
import { collectionDocument } from './collection-document.ts';
import { calledName, nameOf, readDocument } from './documents.ts';
import { problemLines } from './problems.ts';
import { exits, print, progressOn, type Terminal, WrongUse } from './terminal.ts';
import { writeAll } from './write-all.ts';

export interface DrawWishes {
  /** A document, or the id of a block of the collection. */
  readonly what: string;
  /** Folder for the pictures; null: out/NAME/pictures here. */
  readonly out: string | null;
  readonly looks: readonly Look[];
  /** Of each PNG, as written. */
  readonly width: string;
  /** Finished side of a block of the collection, as written; null: 12 in or 30 cm. */
  readonly size: string | null;
  readonly unit: Unit;
}

const picturePt = [720, 720] as const;
/** A line to colour up to is seen before it is filled. */
const linePt = 0.8;
const usualSide: Record<Unit, string> = { in: '12', cm: '30' };

export const runDraw = async (wishes: DrawWishes, terminal: Terminal): Promise<number> => {
  const widthPx = widthOf(wishes.width);
  const isBlock = collectionBlock(wishes.what) !== null;
  if (!isBlock && wishes.size !== null) {
    throw new WrongUse('--size is for a block of the collection: a document says its own sizes. Leave it out.');
  }
  const planned = planQuilt(isBlock ? documentFor(wishes) : await documentIn(wishes.what, terminal), {
    budget: { steps: 0 },
  });
  if (!planned.ok) {
    if (isBlock)
      throw new WrongUse(
        `--size ${wishes.size}: this is not a size that a block can have. Write it like "9", "8 1/2" or "20 cm".`,
      );
    await print(terminal.stderr, problemLines(calledName(wishes.what), planned.problems, planned.more));
    return exits.problems;
  }
  const plan = planned.value;
  const pictures = isBlock ? [blockPicture(plan, plan.blocks[0] as BlockPlan, wishes.what)] : picturesOf(plan);
  const folder = wishes.out ?? join('out', isBlock ? wishes.what : nameOf(wishes.what), 'pictures');
  const files = await filesFor({ plan, pictures, looks: wishes.looks, widthPx }, terminal);
  await writeAll(folder, files);
  await print(terminal.stdout, `Written to ${folder}: ${[...files.keys()].join(', ')}`);
  return exits.done;
};

/** A picture in any look. */
interface Subject {
  readonly name: string;
  readonly draw: (look: Look) => Drawing;
}

const picturesOf = (plan: QuiltPlan): readonly Subject[] => {
  const alt = quiltAlt(plan, sizeText([plan.top.set.width, plan.top.set.height], plan.quilt.unit));
  const quilt: Subject = {
    name: 'quilt',
    draw: (look) =>
      drawQuilt({ plan, ...inLook(plan, look), fitPt: picturePt, fill: 'colour', alt: `${alt}${lookWords[look]}` }),
  };
  const names = new Set<string>();
  return [
    quilt,
    ...plan.blocks.map((block) => {
      const name = freeName(fileName(block), names);
      names.add(name.toLowerCase());
      return blockPicture(plan, block, name);
    }),
  ];
};

const blockPicture = (plan: QuiltPlan, block: BlockPlan, name: string): Subject => {
  const title = entryTitle(plan, { block: block.id, colouring: block.colouring, mirror: block.mirror });
  const alt = `${title}, ${sizeText(block.finished, plan.quilt.unit)} finished.`;
  return {
    name,
    draw: (look) =>
      drawBlock({
        block: asFirstPlaced(plan, block),
        ...inLook(plan, look),
        fitPt: picturePt,
        alt: `${alt}${lookWords[look]}`,
      }),
  };
};

const inLook = (plan: QuiltPlan, look: Look) => ({
  signs: signsAs(clothSignsFor(plan), look),
  ...(look === 'line' ? { edgePt: linePt } : {}),
});

const lookWords: Record<Look, string> = {
  colour: '',
  grey: ' In grey, each cloth as light as it looks.',
  line: ' Lines alone, to colour in.',
};

const lookEndings: Record<Look, string> = { colour: '', grey: '-grey', line: '-line' };

/** "block-cabin", "block-cabin-evening", "block-cabin-mirrored": spaces and dots become hyphens. */
const fileName = ({ id, colouring, mirror }: BlockPlan): string =>
  ['block', id, ...(colouring === 'default' ? [] : [colouring]), ...(mirror ? ['mirrored'] : [])]
    .join('-')
    .replace(/[ .]+/g, '-');

/** Some file systems take "A" and "a" for one name. */
const freeName = (wished: string, taken: ReadonlySet<string>): string => {
  let name = wished;
  for (let n = 2; taken.has(name.toLowerCase()); n++) name = `${wished}-${n}`;
  return name;
};

const filesFor = async (
  of: {
    readonly plan: QuiltPlan;
    readonly pictures: readonly Subject[];
    readonly looks: readonly Look[];
    readonly widthPx: number;
  },
  terminal: Terminal,
): Promise<ReadonlyMap<string, string | Uint8Array>> => {
  const progress = progressOn(terminal.stderr);
  const files = new Map<string, string | Uint8Array>();
  for (const { name, draw } of of.pictures) {
    progress.say(`Drawing ${name} …`);
    for (const look of of.looks) {
      const { svg } = draw(look);
      files.set(`${name}${lookEndings[look]}.svg`, svg);
      files.set(`${name}${lookEndings[look]}.png`, await pngOf(svg, { widthPx: of.widthPx }));
    }
  }
  progress.clear();
  return files;
};

const widths = { least: 16, most: 8000 } as const;

const widthOf = (written: string): number => {
  const width = /^[0-9]{1,5}$/.test(written) ? Number(written) : 0;
  if (width >= widths.least && width <= widths.most) return width;
  throw new WrongUse(`--width ${written}: this is not a whole number of dots from ${widths.least} to ${widths.most}.`);
};

const documentFor = ({ what, size, unit }: DrawWishes): object =>
  collectionDocument({ id: what, size: size ?? usualSide[unit], unit });

/** What is neither there as a file nor looks like one may have been meant as a block. */
const documentIn = async (what: string, terminal: Terminal): Promise<string> => {
  try {
    return await readDocument(what, terminal);
  } catch (error) {
    if (!(error instanceof WrongUse) || /[./\\-]$|[./\\]/.test(what)) throw error;
    const known = collection.map(({ id }) => id);
    throw new WrongUse(`${error.message} Nor has the collection such a block. ${instead(what, known)}`);
  }
};
