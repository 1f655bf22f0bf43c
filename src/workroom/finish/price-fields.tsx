// What the cloths cost: each by the yard, the metre or the sheet, as it is bought.
import { limits } from '#craft/limits';
import { PriceField } from '#workroom/fields';
import { useGesture, useQuilt } from '#workroom/room';
import { nameCurrency, priceCloth } from './finish-edits.ts';

export const PriceFields = () => {
  const { document, answer, edit } = useQuilt();
  const gesture = useGesture();
  const { currency = '', fabrics, unit } = document;
  const soldBy = (id: string): string => {
    const used = answer?.cloths.find((cloth) => cloth.id === id)?.buy.unit;
    return soldWords[used ?? (unit === 'in' ? 'yd' : 'm')];
  };
  return (
    <section className="finish-minded" aria-labelledby="finish-prices">
      <h2 id="finish-prices" tabIndex={-1}>
        Prices
      </h2>
      <div className="price-list">
        {fabrics.map(({ id, name, price }) => (
          <PriceField
            key={id}
            label={`${name || id}, ${soldBy(id)}`}
            value={price}
            currency={currency}
            onChange={(to) =>
              edit(`Change the price of ${name || id}`, (draft) => priceCloth(draft, { cloth: id, price: to }))
            }
          />
        ))}
        <label className="field">
          <span>Prices are in</span>
          <input
            type="text"
            value={currency}
            maxLength={limits.idCharacters}
            onFocus={gesture.begin}
            onChange={(event) => {
              const { value } = event.target;
              edit('Name the currency', (draft) => nameCurrency(draft, value), gesture.named('currency'));
            }}
          />
        </label>
      </div>
    </section>
  );
};

const soldWords = { yd: 'a yard', m: 'a metre', sheets: 'a sheet' } as const;
