// A log cabin by its measures: centre, rounds, the sides in their order, the last round part-way.
import { CountField, LengthField } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import {
  type Block,
  type Cabin,
  cabinOf,
  setLastLogs,
  setOrder,
  setRounds,
  setWidth,
  usualOrder,
} from './block-edits.ts';
import { SideOrder } from './side-order.tsx';

/** More than a block of any use has. */
const mostRounds = 12;

export const CabinFields = ({ block }: { readonly block: Block }) => {
  const { document, edit } = useQuilt();
  const { unit } = document;
  const cabin = cabinOf(block);
  if (cabin === null) return null;
  const change = (what: string, to: (cabin: Cabin) => void) =>
    edit(what, (draft) => {
      const own = cabinOf(draft.blocks.find(({ id }) => id === block.id));
      if (own !== null) to(own);
    });
  const { centre, rounds } = cabin;
  const order = cabin.order ?? usualOrder;
  const last = rounds.at(-1);
  const isEven = rounds.every(({ width }) => !Array.isArray(width) && width === rounds[0]?.width);
  return (
    <section>
      <h2>By its measures</h2>
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
        <p className="quiet">
          Its centre is the block {document.blocks.find(({ id }) => id === centre.block)?.title ?? centre.block}.
        </p>
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
        value={isEven && typeof rounds[0]?.width !== 'object' ? (rounds[0]?.width ?? '') : ''}
        unit={unit}
        onChange={(written) => change('Change the logs', (own) => setWidth(own, 'all', written))}
      />
      <details>
        <summary>Each round by itself</summary>
        <div className="rounds">
          {rounds.map(({ width }, index) => (
            <LengthField
              // biome-ignore lint/suspicious/noArrayIndexKey: a round is known by its place
              key={index}
              label={`Round ${index + 1}`}
              value={Array.isArray(width) ? width.join(', ') : width}
              unit={unit}
              onChange={(written) => change('Change a round', (own) => setWidth(own, index, written))}
            />
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
