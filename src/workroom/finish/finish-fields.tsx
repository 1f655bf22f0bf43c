// The fields of each part of the finish: what she writes is kept, what she leaves to us is shown as it is worked out.
import type { QuiltDocument } from '#craft/design';
import { bedNames, mattressOf } from '#craft/finishing';
import type { FinishFigures } from '#workroom/compute';
import { bedWords, ClothField, LengthField, PriceField } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import { changePart, cutBinding, type FinishKey, priceBatting, runBacking } from './finish-edits.ts';
import { grains, runKey } from './finish-ways.ts';
import { PricedChoice } from './priced-choice.tsx';
import type { Prices } from './use-prices.ts';

export interface FieldsOf {
  /** Null before the first plan. */
  readonly figures: FinishFigures | null;
  readonly prices: Prices;
}

type Finish = NonNullable<QuiltDocument['finish']>;

export const BackingFields = ({ figures, prices }: FieldsOf) => {
  const { document, edit } = useQuilt();
  const own = document.finish?.backing;
  if (own === undefined) return null;
  const planned = figures?.backing ?? null;
  return (
    <>
      <PartCloth part="backing" label="Cloth of the backing" fabric={own.fabric} />
      <LengthField
        label="Beyond the top, on each side"
        value={own.overage ?? planned?.overage ?? ''}
        unit={document.unit}
        sign="zero-or-more"
        onChange={(written) =>
          edit('Change how far the backing reaches', (draft) => changePart(draft, 'backing', { overage: written }))
        }
      />
      {planned !== null && !planned.isRunFree ? (
        <p className="quiet">
          Its print stands upright, so {planned.panels === 1 ? 'its selvages' : 'its seams'} run{' '}
          {runWords[planned.run].toLowerCase()}.
        </p>
      ) : (
        <PricedChoice
          label={planned?.panels === 1 ? 'Its selvages run' : 'Seams between panels run'}
          choices={runs.map((run) => ({
            value: runKey(run),
            words: runWords[run ?? 'least'],
            price: prices.more(runKey(run)),
          }))}
          value={runKey(own.run ?? null)}
          onChoose={(key) =>
            edit('Run the seams of the backing otherwise', (draft) =>
              runBacking(draft, runs.find((run) => runKey(run) === key) ?? null),
            )
          }
        />
      )}
    </>
  );
};

const runs = [null, 'upright', 'level'] as const;
const runWords = {
  least: 'The way that takes less cloth',
  upright: 'From top to bottom',
  level: 'From side to side',
} as const;

export const BattingFields = ({ figures }: FieldsOf) => {
  const { document, edit } = useQuilt();
  const own = document.finish?.batting;
  if (own === undefined) return null;
  return (
    <>
      <LengthField
        label="Beyond the top, on each side"
        value={own.overage ?? figures?.batting?.overage ?? ''}
        unit={document.unit}
        sign="zero-or-more"
        onChange={(written) =>
          edit('Change how far the batting reaches', (draft) => changePart(draft, 'batting', { overage: written }))
        }
      />
      <PriceField
        label="Price, as it is bought"
        value={own.price}
        currency={document.currency ?? ''}
        onChange={(to) => edit('Change the price of the batting', (draft) => priceBatting(draft, to))}
      />
    </>
  );
};

export const QuiltingFields = ({ figures }: FieldsOf) => {
  const { document, edit } = useQuilt();
  const own = document.finish?.batting;
  if (own === undefined) return null;
  return (
    <>
      <LengthField
        label="Lines apart at most"
        value={own.spacing ?? figures?.batting?.spacing ?? ''}
        unit={document.unit}
        onChange={(written) =>
          edit('Change how far apart quilting lines lie', (draft) => changePart(draft, 'batting', { spacing: written }))
        }
      />
      <p className="quiet">The package of the batting says how far apart they may lie.</p>
    </>
  );
};

export const BindingFields = ({ figures, prices }: FieldsOf) => {
  const { document, edit } = useQuilt();
  const own = document.finish?.binding;
  if (own === undefined) return null;
  return (
    <>
      <PartCloth part="binding" label="Cloth of the binding" fabric={own.fabric} />
      <LengthField
        label="Strips cut"
        value={own.cut ?? figures?.binding?.cut ?? ''}
        unit={document.unit}
        onChange={(written) =>
          edit('Change the width of the binding', (draft) => changePart(draft, 'binding', { cut: written }))
        }
      />
      <PricedChoice
        label="Cut"
        choices={grains.map((grain) => ({ value: grain, words: grainWords[grain], price: prices.more(grain) }))}
        value={own.grain ?? 'straight'}
        onChoose={(grain) => edit('Cut the binding otherwise', (draft) => cutBinding(draft, grain))}
      />
    </>
  );
};

const grainWords = { straight: 'In straight strips', bias: 'On the bias, from a square' } as const;

export const SleeveFields = () => {
  const own = useQuilt().document.finish?.sleeve;
  return own === undefined ? null : <PartCloth part="sleeve" label="Cloth of the sleeve" fabric={own.fabric} />;
};

export const LabelFields = ({ figures }: FieldsOf) => {
  const { document, edit } = useQuilt();
  const own = document.finish?.label;
  if (own === undefined) return null;
  const [wide, high] = sidesOf(own.size) ?? figures?.label?.size ?? ['', ''];
  const resize = (size: readonly [string | number, string | number]) =>
    edit('Change the size of the label', (draft) => changePart(draft, 'label', { size: [...size] }));
  return (
    <>
      <PartCloth part="label" label="Cloth of the label" fabric={own.fabric} />
      <div className="pair">
        <LengthField label="Wide" value={wide} unit={document.unit} onChange={(written) => resize([written, high])} />
        <LengthField label="High" value={high} unit={document.unit} onChange={(written) => resize([wide, written])} />
      </div>
    </>
  );
};

const sidesOf = (size: NonNullable<Finish['label']>['size']): readonly [string | number, string | number] | null => {
  if (size === undefined) return null;
  return Array.isArray(size) ? size : [size, size];
};

export const BedFields = ({ figures }: FieldsOf) => {
  const { document, edit, words } = useQuilt();
  const own = document.finish?.bed;
  if (own === undefined) return null;
  const { unit } = document;
  return (
    <>
      <label className="field">
        <span>Mattress</span>
        <select
          value={own.size}
          onChange={(event) => {
            const size = bedNames.find((name) => name === event.target.value) ?? own.size;
            edit('Change the bed', (draft) => changePart(draft, 'bed', { size }));
          }}
        >
          {bedNames.map((name) => (
            <option key={name} value={name}>
              {bedWords[name]}, {words.size(mattressOf(name, unit))}
            </option>
          ))}
        </select>
      </label>
      <div className="pair">
        <LengthField
          label="Drop"
          value={own.drop ?? figures?.bed?.drop ?? ''}
          unit={unit}
          sign="zero-or-more"
          onChange={(written) =>
            edit('Change how far the quilt hangs down', (draft) => changePart(draft, 'bed', { drop: written }))
          }
        />
        <LengthField
          label="Pillow tuck"
          value={own.tuck ?? figures?.bed?.tuck ?? ''}
          unit={unit}
          sign="zero-or-more"
          onChange={(written) =>
            edit('Change what goes under the pillow', (draft) => changePart(draft, 'bed', { tuck: written }))
          }
        />
      </div>
    </>
  );
};

const PartCloth = (of: { readonly part: FinishKey; readonly label: string; readonly fabric: string }) => {
  const { document, edit } = useQuilt();
  return (
    <ClothField
      label={of.label}
      fabrics={document.fabrics}
      value={of.fabric}
      onChange={(id) => {
        if (id !== null)
          edit(`Change the cloth of the ${of.part}`, (draft) => changePart(draft, of.part, { fabric: id }));
      }}
    />
  );
};
