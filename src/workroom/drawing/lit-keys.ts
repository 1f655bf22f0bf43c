// What of the drawing a problem names: what lies at its place or inside it, or every place of its block.
import type { QuiltDocument } from '#craft/design';
import type { QuiltPicture } from '#workroom/compute';
import { placeKey, stripKey } from './scenes.ts';

export const litKeys = (of: {
  readonly problems: readonly { readonly where: string }[];
  readonly picture: QuiltPicture;
  readonly blocks: readonly Pick<QuiltDocument['blocks'][number], 'id'>[];
}): readonly string[] => {
  const { placed, strips, entries } = of.picture;
  return of.problems.flatMap(({ where }) => {
    const block = of.blocks[Number(/^\/blocks\/(\d+)/.exec(where)?.[1] ?? -1)]?.id;
    // a pointer to the whole top says nothing of a place
    const isThere = (path: string): boolean => where !== '/top' && (isAtOrIn(path, where) || isAtOrIn(where, path));
    return [
      ...placed.flatMap(({ path, entry }, place) =>
        (block === undefined ? isThere(path) : entries[entry]?.id === block) ? [placeKey(place)] : [],
      ),
      ...strips.flatMap(({ path }, strip) => (isThere(path) ? [stripKey(strip)] : [])),
    ];
  });
};

const isAtOrIn = (path: string, place: string): boolean => path === place || path.startsWith(`${place}/`);
