// What lights up in the drawing: blocks whose halves read alike, and what a problem names.
import type { QuiltDocument } from '#craft/design';
import type { QuiltPicture, ValuesNear } from '#workroom/compute';
import { placeKey, stripKey } from '#workroom/drawing';

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
  const cloths = new Set(namedIn(problems, 'fabrics').flatMap((at) => document.fabrics[at]?.id ?? []));
  const blocks = new Set(namedIn(problems, 'blocks').flatMap((at) => document.blocks[at]?.id ?? []));
  const placed = picture.placed.flatMap(({ entry, fabrics }, place) => {
    const own = picture.entries[entry];
    if (own === undefined) return [];
    const isLit =
      isNear(own.id, own.colouring) ||
      blocks.has(own.id) ||
      (cloths.size > 0 && (fabrics ?? own.patches.map(({ fabric }) => fabric)).some((id) => cloths.has(id)));
    return isLit ? [placeKey(place)] : [];
  });
  const strips = picture.strips.flatMap(({ fabric, path }, strip) =>
    cloths.has(fabric) || problems.some(({ where }) => where === path || where.startsWith(`${path}/`))
      ? [stripKey(strip)]
      : [],
  );
  return [...placed, ...strips];
};

/** Places in one of the document's lists that problems name. */
const namedIn = (problems: readonly { readonly where: string }[], list: 'fabrics' | 'blocks'): readonly number[] =>
  problems.flatMap(({ where }) => {
    const found = new RegExp(`^/${list}/(\\d+)(?:/|$)`).exec(where);
    return found === null ? [] : [Number(found[1])];
  });
