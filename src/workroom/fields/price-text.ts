// A price as it is typed: "12.50", "12,5"; nothing where there is none.

/** As documents allow it. */
const most = 1_000_000;

/** Null: no price; undefined: it cannot be read. */
export const priceTaken = (written: string): number | null | undefined => {
  const text = written.trim();
  if (text === '') return null;
  if (!/^\d{1,7}([.,]\d{1,2})?$/.test(text)) return undefined;
  const price = Number(text.replace(',', '.'));
  return price <= most ? price : undefined;
};

export const priceShown = (price: number | undefined): string => (price === undefined ? '' : price.toFixed(2));
