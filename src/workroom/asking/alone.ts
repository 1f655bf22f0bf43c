// One block of a document by itself, with the blocks that lie in its centre.
import type { JsonObject } from '#workroom/editing';

/** A document of one block and those in its centre, set by itself. */
export const alone = (document: JsonObject, id: string): JsonObject => {
  const { finish: _, colourways: __, sizes: ___, ...rest } = document;
  const blocks = blocksIn(document);
  const wanted = [id];
  for (const name of wanted) {
    const centre = centreIn(blocks.find((block) => block.id === name));
    if (centre !== null && !wanted.includes(centre)) wanted.push(centre);
  }
  const kept = blocks.filter((block) => wanted.includes(String(block.id)));
  return { ...rest, blocks: kept, top: { rows: [[{ block: id }]] } };
};

export const blocksIn = ({ blocks }: JsonObject): readonly JsonObject[] =>
  Array.isArray(blocks) ? (blocks as readonly JsonObject[]) : [];

/** The block in a log cabin's centre. */
const centreIn = (block: JsonObject | undefined): string | null => {
  const recipe = block?.recipe as { readonly centre?: { readonly block?: unknown } } | undefined;
  const name = recipe?.centre?.block;
  return typeof name === 'string' ? name : null;
};
