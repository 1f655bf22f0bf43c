// The quilt in its colourways, side by side, and which cloth stands for which letter in each.
import type { QuiltPlan } from '#craft';
import { inColourway, type Quilt } from '#craft/design';
import type { ClothSigns } from '#paper/cloth';
import { drawQuilt, drawSwatch } from '#paper/drawing';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';

export interface ColourwayPages {
  readonly pictures: readonly { readonly title: string; readonly picture: Picture }[];
  readonly rows: readonly {
    readonly letter: string;
    /** One in each colourway, the quilt as drawn first. */
    readonly cloths: readonly { readonly name: string; readonly swatch: Picture }[];
  }[];
}

/** Null where the document has none. Cloths keep their letters and hatches. */
export const colourwayPages = (of: {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}): ColourwayPages | null => {
  const { plan, signs, album } = of;
  if (plan.quilt.colourways.length === 0) return null;
  const ways = [
    { title: 'As drawn', signs },
    ...plan.quilt.colourways.map((colourway) => ({
      title: colourway.title,
      signs: inCloths(signs, inColourway(plan.quilt, colourway)),
    })),
  ];
  return {
    pictures: ways.map(({ title, signs: own }, i) => ({
      title,
      picture: shown(
        album,
        `colourway-${i + 1}`,
        drawQuilt({
          plan,
          signs: own,
          fitPt: [148, 180],
          fill: 'colour',
          alt: `The quilt, ${title.toLowerCase()}: ${[...own.values()].map((sign) => `${sign.letter} ${sign.name}`).join(', ')}.`,
        }),
      ),
    })),
    rows: [...signs].map(([id, { letter }]) => ({
      letter,
      cloths: ways.map(({ title, signs: own }, i) => {
        const sign = own.get(id);
        if (sign === undefined) throw new Error(`no cloth ${id} in ${title}`);
        return {
          name: sign.name,
          swatch: shown(
            album,
            `colourway-${i + 1}-${letter}`,
            drawSwatch({ sign, fitPt: [34, 18], alt: `Swatch of cloth ${letter}, ${sign.name}` }),
          ),
        };
      }),
    })),
  };
};

const inCloths = (signs: ClothSigns, quilt: Quilt): ClothSigns =>
  new Map(
    [...signs].map(([id, sign]) => {
      const fabric = quilt.fabrics.find((one) => one.id === id);
      return [id, fabric === undefined ? sign : { ...sign, name: fabric.name, colour: fabric.colour }];
    }),
  );
