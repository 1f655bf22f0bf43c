// seamstead draw FILE|BLOCK: pictures as SVG and PNG, in colour, in grey to judge values by, as lines to colour in.
import { join } from 'node:path';
import { planQuilt } from '#craft';
import { collection, collectionBlock } from '#craft/collection';
import type { Unit } from '#craft/measure';
import type { Look } from '#paper';
import { type DrawnFile, pictureFiles, pictureOfBlock, picturesOf } from '#paper/files';
import { instead } from '#paper/words';
import { fileDrawn } from '#print';
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
  const pictures = isBlock
    ? plan.blocks.slice(0, 1).map((block) => pictureOfBlock({ plan, block, name: wishes.what }))
    : picturesOf(plan);
  const folder = wishes.out ?? join('out', isBlock ? wishes.what : nameOf(wishes.what), 'pictures');
  const files = await allDrawn(
    pictures.flatMap((picture) => wishes.looks.flatMap((look) => pictureFiles({ picture, look, widthPx }))),
    terminal,
  );
  await writeAll(folder, files);
  await print(terminal.stdout, `Written to ${folder}: ${[...files.keys()].join(', ')}`);
  return exits.done;
};

const allDrawn = async (files: readonly DrawnFile[], terminal: Terminal) => {
  const progress = progressOn(terminal.stderr);
  const drawn = new Map<string, string | Uint8Array>();
  for (const file of files) {
    progress.say(`${file.making} …`);
    drawn.set(file.name, await fileDrawn(file));
  }
  progress.clear();
  return drawn;
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
