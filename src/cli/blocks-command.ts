// seamstead blocks: what a document may name in "from", and with --out a picture of each.
import { planQuilt, type QuiltPlan } from '#craft';
import { type CollectionBlock, collection } from '#craft/collection';
import { clothSignsFor, drawQuilt } from '#paper';
import { collectionLines } from '#paper/collection';
import { pngOf } from '#print';
import { collectionDocument } from './collection-document.ts';
import { exits, print, progressOn, type Terminal } from './terminal.ts';
import { writeAll } from './write-all.ts';

const side = '12';
const picturePt = [360, 360] as const;
const pictureWidthPx = 720;

/** @param out folder for the pictures; null: none are made */
export const runBlocks = async (out: string | null, terminal: Terminal): Promise<number> => {
  const blocks = collection.map((block) => ({ block, plan: planOf(block) }));
  if (out !== null) await writeAll(out, await picturesOf(blocks, terminal));
  const lines = blocks.map(({ block, plan }) => {
    const [entry] = plan.blocks;
    return { ...block, patches: entry?.patches.length ?? 0, joining: entry?.joining ?? ('straight' as const) };
  });
  await print(terminal.stdout, collectionLines(lines));
  if (out !== null) await print(terminal.stdout, `\nWritten to ${out}: a picture of each block, as SVG and PNG`);
  return exits.done;
};

interface PlannedBlock {
  readonly block: CollectionBlock;
  readonly plan: QuiltPlan;
}

const planOf = ({ id }: CollectionBlock): QuiltPlan => {
  const planned = planQuilt(collectionDocument({ id, size: side, unit: 'in' }), { budget: { steps: 0 } });
  if (!planned.ok) throw new Error(`the collection's block ${id} cannot be planned`);
  return planned.value;
};

const picturesOf = async (
  blocks: readonly PlannedBlock[],
  terminal: Terminal,
): Promise<ReadonlyMap<string, string | Uint8Array>> => {
  const progress = progressOn(terminal.stderr);
  const files = new Map<string, string | Uint8Array>();
  for (const { block, plan } of blocks) {
    progress.say(`Drawing ${block.name} …`);
    const { svg } = drawQuilt({
      plan,
      signs: clothSignsFor(plan),
      fitPt: picturePt,
      fill: 'colour',
      alt: block.name,
    });
    files.set(`${block.id}.svg`, svg);
    files.set(`${block.id}.png`, await pngOf(svg, { widthPx: pictureWidthPx }));
  }
  progress.clear();
  return files;
};
