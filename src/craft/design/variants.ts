// The quilt in one of its other sizes, or in other cloths: a quilt like any other.
import type { Colourway, Quilt, SizeDesign } from './quilt.ts';

/** Blocks and cloths stay. */
export const inSize = (quilt: Quilt, { top, finish }: Pick<SizeDesign, 'top' | 'finish'>): Quilt => ({
  ...quilt,
  top,
  finish,
  sizes: [],
});

/** Cloths that the colourway does not name stay as they are; so does how each is bought. */
export const inColourway = (quilt: Quilt, { fabrics }: Pick<Colourway, 'fabrics'>): Quilt => {
  const others = new Map(fabrics.map((cloth) => [cloth.id, cloth]));
  return {
    ...quilt,
    colourways: [],
    fabrics: quilt.fabrics.map((fabric) => {
      const other = others.get(fabric.id);
      return other === undefined
        ? fabric
        : {
            ...fabric,
            name: other.name ?? fabric.name,
            colour: other.colour ?? fabric.colour,
            // a photograph is of one colour of the cloth: another colour is shown plain, or by its own
            photo: other.photo ?? (other.colour === null ? fabric.photo : null),
            price: other.price ?? fabric.price,
          };
    }),
  };
};
