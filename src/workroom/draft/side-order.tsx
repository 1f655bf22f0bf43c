// The cycle of sides: tapped one after another in the order of sewing, or taken as the trade has it.
import { useState } from 'react';
import type { Side } from './cabin-edits.ts';

const ways: readonly (readonly [string, readonly Side[]])[] = [
  ['round, clockwise', ['left', 'top', 'right', 'bottom']],
  ['round, the other way', ['left', 'bottom', 'right', 'top']],
  ['courthouse steps', ['top', 'bottom', 'left', 'right']],
  ['two sides alone', ['right', 'bottom']],
];
const sides: readonly Side[] = ['top', 'left', 'right', 'bottom'];

export const SideOrder = (of: {
  readonly order: readonly Side[];
  readonly onChange: (order: readonly Side[]) => void;
}) => {
  const { order, onChange } = of;
  /** Sides tapped so far; null while none is. */
  const [tapped, setTapped] = useState<readonly Side[] | null>(null);
  const shown = tapped ?? order;
  const tap = (side: Side) => {
    const next = [...(tapped ?? []), side];
    if (next.length < sides.length) setTapped(next);
    else {
      setTapped(null);
      onChange(next);
    }
  };
  const way = ways.find(([, one]) => one.join() === order.join());
  return (
    <fieldset className="sides">
      <legend>Order of the sides</legend>
      <div className="sides-cross">
        {sides.map((side) => {
          const number = shown.indexOf(side) + 1;
          return (
            <button
              key={side}
              type="button"
              className={`side-${side}`}
              disabled={tapped?.includes(side) ?? false}
              onClick={() => tap(side)}
              aria-label={number > 0 ? `${side}, number ${number}` : side}
            >
              {number > 0 ? number : '·'}
            </button>
          );
        })}
        <span className="sides-centre" aria-hidden="true" />
      </div>
      {tapped === null ? (
        <p className="quiet">Tap the sides in the order they are sewn.</p>
      ) : (
        <div className="row">
          {/* part of the sides is an order too: the others have no logs */}
          <button
            type="button"
            onClick={() => {
              setTapped(null);
              onChange(tapped);
            }}
          >
            These alone
          </button>
          <button type="button" onClick={() => setTapped(null)}>
            Leave it
          </button>
        </div>
      )}
      <label className="field">
        <span>Or take</span>
        <select
          value={way?.[0] ?? ''}
          onChange={(event) => {
            const taken = ways.find(([words]) => words === event.target.value);
            if (taken !== undefined) onChange(taken[1]);
          }}
        >
          {way === undefined && <option value="">an order of your own</option>}
          {ways.map(([words]) => (
            <option key={words} value={words}>
              {words}
            </option>
          ))}
        </select>
      </label>
    </fieldset>
  );
};
