// What of a drawing is still to mend, and how: beside it, as it is lit in it.
import { countWords } from '#workroom/room';
import { ToneSelect } from './tone-select.tsx';
import type { TableState } from './use-table.ts';

/** What lies bare or double is lit in the drawing; here it is mended at one stroke. */
export const Faults = ({ table }: { readonly table: TableState }) => {
  const { answer } = table;
  if (answer === null || answer.bare.length + answer.double.length === 0) return null;
  const { bare, double } = answer;
  return (
    <div className="faults" role="status">
      {bare.length > 0 && (
        <>
          <p>
            <span className="problem-mark" aria-hidden="true">
              ◆
            </span>
            {countWords(bare.length, 'gap', 'gaps')}: no patch lies there. Lay patches, or move those beside them.
          </p>
          <ToneSelect label="Filled with" tones={table.tones} value={table.tone} onChange={table.takeTone} />
          <button type="button" onClick={table.fill}>
            Fill the {bare.length === 1 ? 'gap' : 'gaps'}
          </button>
        </>
      )}
      {double.length > 0 && (
        <>
          <p>
            <span className="problem-mark" aria-hidden="true">
              ◆
            </span>
            {countWords(double.length, 'overlap', 'overlaps')}: two patches lie there. Move one, or let the lower one
            end.
          </p>
          <button type="button" onClick={table.trim}>
            Cut away what lies under
          </button>
        </>
      )}
    </div>
  );
};
