// Chosen patches, repeated in rows or round the middle of the block.
import { useState } from 'react';
import { CountField } from '#workroom/fields';
import { FigureField } from './place-fields.tsx';
import type { TableState } from './use-table.ts';

/** More than fit on any block are left out at its edge. */
const mostTimes = 24;

export const RepeatFields = (of: {
  readonly box: { readonly width: number; readonly height: number };
  readonly table: TableState;
}) => {
  const { box, table } = of;
  const [times, setTimes] = useState<readonly [number, number]>([2, 1]);
  const [step, setStep] = useState<readonly [number, number]>([box.width, box.height]);
  const grid = table.drawn?.grid ?? [1, 1];
  return (
    <details>
      <summary>Repeat</summary>
      <div className="repeat">
        <div className="pair">
          <CountField
            label="Times across"
            value={times[0]}
            least={1}
            most={mostTimes}
            onChange={(across) => setTimes([across, times[1]])}
          />
          <CountField
            label="Times down"
            value={times[1]}
            least={1}
            most={mostTimes}
            onChange={(down) => setTimes([times[0], down])}
          />
          <FigureField
            label="Step across"
            value={step[0]}
            most={grid[0]}
            onChange={(across) => setStep([across, step[1]])}
          />
          <FigureField label="Step down" value={step[1]} most={grid[1]} onChange={(down) => setStep([step[0], down])} />
        </div>
        <div className="row">
          <button type="button" disabled={times[0] * times[1] < 2} onClick={() => table.repeat({ times, step })}>
            Repeat in rows
          </button>
          <button type="button" disabled={Math.abs(grid[0] - grid[1]) > 1e-9} onClick={() => table.repeat('round')}>
            Repeat round the middle
          </button>
        </div>
      </div>
    </details>
  );
};
