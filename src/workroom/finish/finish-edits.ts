// What is done to the finish of a document: parts come and go, and each holds no more than what she wrote.
import type { QuiltDocument } from '#craft/design';

export type Finish = NonNullable<QuiltDocument['finish']>;
/** Parts that a quilt has or has not. */
export type FinishKey = 'backing' | 'batting' | 'binding' | 'sleeve' | 'label' | 'bed';

/** What a quilt is hardly ever without: three layers, and an edge. */
export const usualParts = ['backing', 'batting', 'binding'] as const satisfies readonly FinishKey[];

export const lackingParts = ({ finish }: QuiltDocument): readonly FinishKey[] =>
  usualParts.filter((part) => finish?.[part] === undefined);

/** With the cloth that its neighbours have, and all else as usual. One that is there stays as it is. */
export const addPart = (draft: QuiltDocument, part: FinishKey): void => {
  const finish = draft.finish ?? {};
  if (finish[part] !== undefined) return;
  draft.finish = finish;
  switch (part) {
    case 'backing':
    case 'sleeve':
    case 'label':
      finish[part] = { fabric: backCloth(draft) };
      break;
    case 'binding':
      finish.binding = { fabric: edgeCloth(draft) };
      break;
    case 'batting':
      finish.batting = {};
      break;
    case 'bed':
      finish.bed = { size: 'twin' };
      break;
  }
};

export const takeOutPart = (draft: QuiltDocument, part: FinishKey): void => {
  if (draft.finish === undefined) return;
  delete draft.finish[part];
  if (Object.keys(draft.finish).length === 0) delete draft.finish;
};

/** Nothing where the part is not there. */
export const changePart = <Part extends FinishKey>(
  draft: QuiltDocument,
  part: Part,
  change: Partial<NonNullable<Finish[Part]>>,
): void => {
  const own = draft.finish?.[part];
  if (own !== undefined) Object.assign(own, change);
};

/** Null: the way that takes less cloth. */
export const runBacking = (draft: QuiltDocument, run: 'upright' | 'level' | null): void => {
  const own = draft.finish?.backing;
  if (own === undefined) return;
  if (run === null) delete own.run;
  else own.run = run;
};

export const cutBinding = (draft: QuiltDocument, grain: 'straight' | 'bias'): void => {
  const own = draft.finish?.binding;
  if (own === undefined) return;
  if (grain === 'straight') delete own.grain;
  else own.grain = grain;
};

/** Null: it has none. */
export const priceCloth = (
  draft: Pick<QuiltDocument, 'fabrics'>,
  of: { readonly cloth: string; readonly price: number | null },
): void => {
  const own = draft.fabrics.find(({ id }) => id === of.cloth);
  if (own === undefined) return;
  if (of.price === null) delete own.price;
  else own.price = of.price;
};

/** Null: it has none. */
export const priceBatting = (draft: QuiltDocument, price: number | null): void => {
  const own = draft.finish?.batting;
  if (own === undefined) return;
  if (price === null) delete own.price;
  else own.price = price;
};

/** "" is none. */
export const nameCurrency = (draft: QuiltDocument, currency: string): void => {
  if (currency === '') delete draft.currency;
  else draft.currency = currency;
};

/** What lies on the back goes with the back. */
const backCloth = ({ finish, fabrics }: QuiltDocument): string =>
  finish?.backing?.fabric ?? finish?.sleeve?.fabric ?? finish?.label?.fabric ?? fabrics[0]?.id ?? '';

/** As the outermost border of strips; without one the last cloth. */
const edgeCloth = ({ top, fabrics }: QuiltDocument): string => {
  const outer = top.borders?.findLast((border) => 'fabric' in border);
  return (outer !== undefined && 'fabric' in outer ? outer.fabric : undefined) ?? fabrics.at(-1)?.id ?? '';
};
