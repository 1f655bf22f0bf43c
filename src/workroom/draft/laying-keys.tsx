// Which shape is laid, and of what: beside the tools, so that on a phone too they are at hand.
import type { LaidShape } from './laid-shapes.ts';
import { ToneSelect } from './tone-select.tsx';
import type { TableState } from './use-table.ts';

const shapes: readonly { readonly value: LaidShape; readonly words: string }[] = [
  { value: 'square', words: 'Square' },
  { value: 'rectangle', words: 'Rectangle' },
  { value: 'half-square', words: 'Half-square triangle' },
  { value: 'quarter-square', words: 'Quarter-square triangle' },
  { value: 'corners', words: 'Corner by corner' },
];
export const LayingKeys = ({ table }: { readonly table: TableState }) => {
  const { laying } = table;
  const { shape } = laying;
  return (
    <div className="laying-keys">
      <label className="field">
        <span className="unseen">Shape</span>
        <select
          value={shape}
          onChange={(event) => {
            const found = shapes.find(({ value }) => value === event.target.value);
            if (found !== undefined) table.lay({ ...laying, shape: found.value, turn: 0 });
          }}
        >
          {shapes.map(({ value, words }) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <ToneSelect
        label="Tone or cloth"
        isLabelHidden
        tones={table.tones}
        value={table.tone}
        onChange={table.takeTone}
      />
      {(shape === 'half-square' || shape === 'quarter-square') && (
        <button
          type="button"
          aria-label="Turn the shape"
          onClick={() => table.lay({ ...laying, turn: (laying.turn + 1) % 4 })}
        >
          Turn
        </button>
      )}
    </div>
  );
};
