// The cover's swatches and the page "Cloth to buy".
import type { FabricPlan, QuiltPlan } from '#craft';
import { toNumber } from '#ground/exact';
import type { ClothSign, ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { rolesText } from '#paper/cutting';
import { drawSwatch, drawValueLadder, lightToDark } from '#paper/drawing';
import { lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { boughtText } from './bought.ts';
import { measurePt } from './measure.ts';
import { moneyText } from './money.ts';
import { type SizedPlan, withAllCloths } from './sized.ts';

export interface Swatch {
  readonly picture: Picture;
  readonly letter: string;
  readonly name: string;
}

export interface ClothToBuy extends Swatch {
  readonly buy: string;
  /** Of each other size. */
  readonly others: readonly string[];
  readonly width: string;
  readonly usedFor: string;
  /** Of all that is bought; "" where the document has no price. */
  readonly price: string;
}

/** Swatches of all cloths by fabric id, each put into the album once. */
export const swatchesFor = (signs: ClothSigns, album: Album): ReadonlyMap<string, Swatch> =>
  new Map([...signs].map(([fabric, sign]) => [fabric, swatchOf(sign, album)]));

const swatchOf = (sign: ClothSign, album: Album): Swatch => ({
  picture: shown(
    album,
    `swatch-${sign.letter}`,
    drawSwatch({ sign, fitPt: [32, 15], alt: `Swatch of cloth ${sign.letter}, ${sign.name}` }),
  ),
  letter: sign.letter,
  name: sign.name,
});

export const clothToBuy = (of: {
  readonly plan: QuiltPlan;
  readonly sizes: readonly SizedPlan[];
  readonly signs: ClothSigns;
  readonly swatches: ReadonlyMap<string, Swatch>;
}): readonly ClothToBuy[] =>
  withAllCloths(of.plan, of.sizes).fabrics.map((fabric) => ({
    ...swatchIn(of.swatches, fabric),
    name: signOf(of.signs, fabric.id).name,
    buy: amountIn(of.plan, fabric.id),
    others: of.sizes.map(({ plan }) => amountIn(plan, fabric.id)),
    width: widthText(of.plan, fabric),
    usedFor: rolesText(fabric.pieces.flatMap((piece) => piece.for)),
    price: fabric.cost === null ? '' : moneyText(fabric.cost, of.plan.cost.currency),
  }));

const amountIn = (plan: QuiltPlan, id: string): string => {
  const fabric = plan.fabrics.find((one) => one.id === id);
  return fabric === undefined ? '–' : boughtText(plan, fabric);
};

const swatchIn = (swatches: ReadonlyMap<string, Swatch>, fabric: FabricPlan): Swatch => {
  const swatch = swatches.get(fabric.id);
  if (swatch === undefined) throw new Error(`no swatch for the cloth ${fabric.id}`);
  return swatch;
};

/** Usable width, or the usable size of one sheet, and whether its print has an upright. */
const widthText = (plan: QuiltPlan, { id, parts }: FabricPlan): string => {
  const fabric = plan.quilt.fabrics.find((one) => one.id === id);
  if (fabric === undefined) return '';
  const { unit } = plan.quilt;
  const { bought } = fabric;
  const usable =
    bought.kind === 'stock'
      ? (parts ?? []).map(({ size }) => sizeOnPaper(size, unit)).join(', ')
      : bought.kind === 'sheets'
        ? sizeOnPaper([toNumber(bought.size[0]), toNumber(bought.size[1])], unit)
        : lengthOnPaper(toNumber(fabric.usableWidth), unit);
  return fabric.print === 'none' ? usable : `${usable}, ${fabric.print} print`;
};

/** The cloths from light to dark in grey; null for a single one. */
export const valueLadder = (signs: ClothSigns, album: Album): Picture | null => {
  if (signs.size < 2) return null;
  const order = lightToDark(signs).map(({ letter, lightness }) => `${letter} ${Math.round(lightness)}`);
  return shown(
    album,
    'values',
    drawValueLadder({
      signs,
      widthPt: measurePt,
      alt: `The cloths from light to dark in grey, with their lightness L*: ${order.join(', ')}.`,
    }),
  );
};
