// How much room a document has left for a photograph.
import type { QuiltDocument } from '#craft/design';
import { limits } from '#craft/limits';

/** All photographs of a quilt together: room is left for the quilt itself. */
const mostInAll = (limits.characters * 3) / 4;

/** In characters, beside all photographs but the one that it takes the place of. */
export const roomForPhoto = (
  { fabrics, colourways = [] }: Pick<QuiltDocument, 'fabrics' | 'colourways'>,
  of: { readonly cloth: string; readonly colourway: string | null },
): number => {
  const own = fabrics.map(({ id, photo }) => ({ id, photo, way: null as string | null }));
  const inWays = colourways.flatMap((way) =>
    Object.entries(way.fabrics).map(([id, { photo }]) => ({ id, photo, way: way.id })),
  );
  const others = [...own, ...inWays].filter(({ id, way }) => id !== of.cloth || way !== of.colourway);
  return others.reduce((left, { photo }) => left - (photo?.image.length ?? 0), mostInAll);
};
