// What lights up in the drawing: blocks whose halves read alike, what is of a cloth that a problem names, and what any problem lights.
import type { QuiltDocument } from '#craft/design';
import type { QuiltPicture, ValuesNear } from '#workroom/compute';
import { litKeys, placeKey, stripKey } from '#workroom/drawing';

export const litFor = (of: {
  readonly near: readonly ValuesNear[];
  readonly problems: readonly { readonly where: string }[];
  readonly picture: QuiltPicture | null;
  readonly document: QuiltDocument;
}): readonly string[] => {
  const { near, problems, picture, document } = of;
  if (picture === null) return [];
  const isNear = (block: string, colouring: string): boolean =>
    near.some((one) => one.block === block && one.colouring === colouring);
  const cloths = new Set(problems.flatMap(({ where }) => clothAt(where, document)));
  const placed = picture.placed.flatMap(({ entry, fabrics }, place) => {
    const own = picture.entries[entry];
    if (own === undefined) return [];
    const isLit =
      isNear(own.id, own.colouring) ||
      (cloths.size > 0 && (fabrics ?? own.patches.map(({ fabric }) => fabric)).some((id) => cloths.has(id)));
    return isLit ? [placeKey(place)] : [];
  });
  const strips = picture.strips.flatMap(({ fabric }, strip) => (cloths.has(fabric) ? [stripKey(strip)] : []));
  return [...new Set([...placed, ...strips, ...litKeys({ problems, picture, blocks: document.blocks })])];
};

/** The cloth that a problem is of, where it is of one. */
const clothAt = (where: string, { fabrics }: QuiltDocument): string | readonly string[] =>
  fabrics[Number(/^\/fabrics\/(\d+)/.exec(where)?.[1] ?? Number.NaN)]?.id ?? [];
