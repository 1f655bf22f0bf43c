// A log cabin by its measures: centre, rounds, the sides in their order, the last round part-way.
import { capital } from '#paper/words';
import { CountField, LengthField } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import { type Block, type Cabin, cabinOf } from './block-edits.ts';
import {
  type CentreKind,
  centresFor,
  evenRound,
  type Side,
  setCentre,
  setLastLogs,
  setLogWidth,
  setOrder,
  setRounds,
  setWidth,
  usualOrder,
} from './cabin-edits.ts';
import { SideOrder } from './side-order.tsx';
import { useBlockEdit } from './use-block-edit.ts';

const sideWords = (side: Side | undefined): string => capital(side ?? 'log');

/** More than a block of any use has. */
const mostRounds = 12;

export const CabinFields = ({ block }: { readonly block: Block }) => {
  const { document } = useQuilt();
  const edit = useBlockEdit(block.id);
  const { unit } = document;
  const cabin = cabinOf(block);
  if (cabin === null) return null;
  const change = (what: string, to: (cabin: Cabin) => void) =>
    edit(what, (own) => {
      const still = cabinOf(own);
      if (still !== null) to(still);
    });
  const { centre, rounds } = cabin;
  const centres = centresFor(document.blocks, block.id);
  const kind = Array.isArray(centre) ? 'oblong' : typeof centre === 'object' ? `block ${centre.block}` : 'square';
  const order = cabin.order ?? usualOrder;
  const last = rounds.at(-1);
  const widths = [...new Set(rounds.flatMap(({ width }) => width))];
  return (
    <section>
      <h2>By its measures</h2>
      <label className="field">
        <span>Its centre is</span>
        <select
          value={kind}
          onChange={(event) => {
            const { value } = event.target;
            const to: CentreKind =
              value === 'square' || value === 'oblong' ? value : { block: value.slice('block '.length) };
            edit('Change the centre', (own) => setCentre(own, to, unit === 'in' ? '3' : '8'));
          }}
        >
          <option value="square">a square</option>
          <option value="oblong">an oblong</option>
          {centres.length > 0 && (
            <optgroup label="Pieced: a block">
              {centres.map(({ id, title }) => (
                <option key={id} value={`block ${id}`}>
                  {title || id}
                </option>
              ))}
            </optgroup>
          )}
        </select>
      </label>
      {Array.isArray(centre) ? (
        <div className="pair">
          {([0, 1] as const).map((way) => (
            <LengthField
              key={way}
              label={way === 0 ? 'Centre across' : 'Centre down'}
              value={centre[way]}
              unit={unit}
              onChange={(written) =>
                change('Change the centre', (own) => {
                  if (Array.isArray(own.centre)) own.centre[way] = written;
                })
              }
            />
          ))}
        </div>
      ) : typeof centre === 'object' ? (
        <p className="quiet">At that block’s own size. It is changed where it is drafted.</p>
      ) : (
        <LengthField
          label="Centre"
          value={centre}
          unit={unit}
          onChange={(written) => change('Change the centre', (own) => void Object.assign(own, { centre: written }))}
        />
      )}
      <CountField
        label="Rounds"
        value={rounds.length}
        least={1}
        most={mostRounds}
        onChange={(count) => change('Change the rounds', (own) => setRounds(own, count))}
      />
      <LengthField
        label="Every log"
        value={widths.length === 1 ? (widths[0] ?? '') : ''}
        unit={unit}
        onChange={(written) => change('Change the logs', (own) => setWidth(own, 'all', written))}
      />
      <details>
        <summary>Each round by itself</summary>
        <div className="each-round">
          {rounds.map(({ width, tones }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a round is known by its place
            <fieldset key={index} className="round">
              <legend>Round {index + 1}</legend>
              {Array.isArray(width) ? (
                <div className="rounds">
                  {tones.map((_, place) => (
                    <LengthField
                      // biome-ignore lint/suspicious/noArrayIndexKey: a log is known by its place
                      key={place}
                      label={sideWords(order[place])}
                      value={width[place] ?? ''}
                      unit={unit}
                      onChange={(written) => change('Change a log', (own) => setLogWidth(own, [index, place], written))}
                    />
                  ))}
                </div>
              ) : (
                <LengthField
                  label="Its logs"
                  value={width}
                  unit={unit}
                  onChange={(written) => change('Change a round', (own) => setWidth(own, index, written))}
                />
              )}
              <label className="check">
                <input
                  type="checkbox"
                  checked={Array.isArray(width)}
                  onChange={(event) => {
                    const { checked } = event.target;
                    change('Change a round', (own) => {
                      if (!checked) evenRound(own, index);
                      else if (!Array.isArray(width)) setLogWidth(own, [index, 0], String(width));
                    });
                  }}
                />
                Each log by itself
              </label>
            </fieldset>
          ))}
        </div>
      </details>
      <SideOrder order={order} onChange={(to) => change('Change the order of sides', (own) => setOrder(own, to))} />
      <CountField
        label="Logs in the last round"
        value={last?.tones.length ?? 0}
        least={1}
        most={order.length}
        onChange={(count) => change('Change the last round', (own) => setLastLogs(own, count))}
      />
    </section>
  );
};
