// The cover's swatches and the page "Cloth to buy".
import type { FabricPlan, QuiltPlan } from '#craft';
import { toNumber } from '#ground/exact';
import type { ClothSign, ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { rolesText } from '#paper/cutting';
import { drawSwatch } from '#paper/drawing';
import { lengthOnPaper } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { boughtText } from './bought.ts';

export interface Swatch {
  readonly picture: Picture;
  readonly letter: string;
  readonly name: string;
}

export interface ClothToBuy extends Swatch {
  readonly buy: string;
  readonly width: string;
  readonly usedFor: string;
}

/** Swatches of all cloths by fabric id, each put into the album once. */
export const swatchesFor = (signs: ClothSigns, album: Album): ReadonlyMap<string, Swatch> =>
  new Map([...signs].map(([fabric, sign]) => [fabric, swatchOf(sign, album)]));

const swatchOf = (sign: ClothSign, album: Album): Swatch => ({
  picture: shown(
    album,
    `swatch-${sign.letter}`,
    drawSwatch({ sign, fitPt: [34, 18], alt: `Swatch of cloth ${sign.letter}, ${sign.name}` }),
  ),
  letter: sign.letter,
  name: sign.name,
});

export const clothToBuy = (of: {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly swatches: ReadonlyMap<string, Swatch>;
}): readonly ClothToBuy[] =>
  of.plan.fabrics.map((fabric) => ({
    ...swatchIn(of.swatches, fabric),
    name: signOf(of.signs, fabric.id).name,
    buy: boughtText(fabric.buy),
    width: widthText(of.plan, fabric),
    usedFor: rolesText(fabric.pieces.flatMap((piece) => piece.for)),
  }));

const swatchIn = (swatches: ReadonlyMap<string, Swatch>, fabric: FabricPlan): Swatch => {
  const swatch = swatches.get(fabric.id);
  if (swatch === undefined) throw new Error(`no swatch for the cloth ${fabric.id}`);
  return swatch;
};

const widthText = (plan: QuiltPlan, { id }: FabricPlan): string => {
  const fabric = plan.quilt.fabrics.find((one) => one.id === id);
  return fabric === undefined ? '' : lengthOnPaper(toNumber(fabric.usableWidth), plan.quilt.unit);
};
