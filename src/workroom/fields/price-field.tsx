// What a cloth costs, in money: of one yard, metre or sheet.
import { priceShown, priceTaken } from './price-text.ts';
import { WrittenField } from './written-field.tsx';

export interface PriceFieldOf {
  readonly label: string;
  /** Undefined where it has none. */
  readonly value: number | undefined;
  /** "" where the quilt names none. */
  readonly currency: string;
  /** Null: it has none. */
  readonly onChange: (price: number | null) => void;
}

export const PriceField = ({ label, value, currency, onChange }: PriceFieldOf) => (
  <WrittenField
    label={label}
    unit={currency}
    own={priceShown(value)}
    wanted="This is not a price. Write it like 12.50, or leave it empty."
    onTake={(written) => {
      const price = priceTaken(written);
      if (price !== undefined) onChange(price);
      return price !== undefined;
    }}
  />
);
