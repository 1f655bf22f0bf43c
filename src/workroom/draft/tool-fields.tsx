// What a seam or a patch in hand needs: its measures, how it lies, and where the hand stands.
import { ChoiceKeys } from '#workroom/fields';
import { mostAcross } from './laid-shapes.ts';
import { FigureField, PlaceFields } from './place-fields.tsx';
import type { TableState } from './use-table.ts';

/** Where the square corner, or the long side, lies at each quarter turn. */
const lies: Readonly<
  Record<'half-square' | 'quarter-square', readonly { readonly value: number; readonly words: string }[]>
> = {
  // two above two, as the corners are
  'half-square': [
    { value: 0, words: 'Upper left' },
    { value: 1, words: 'Upper right' },
    { value: 3, words: 'Lower left' },
    { value: 2, words: 'Lower right' },
  ],
  'quarter-square': ['Top', 'Right', 'Bottom', 'Left'].map((words, value) => ({ value, words })),
};

export const ToolFields = ({ table }: { readonly table: TableState }) => {
  const { tool, laying, run, drawn } = table;
  if (drawn === null) return null;
  const { shape } = laying;
  return (
    <section>
      <h2>{tool === 'rule' ? 'Rule a seam' : 'Lay a patch'}</h2>
      {tool === 'lay' && (
        <>
          {shape !== 'corners' && (
            <div className="pair">
              <FigureField
                label={shape === 'rectangle' ? 'Wide' : 'Side'}
                value={laying.across}
                most={mostAcross(laying, drawn.grid)}
                onChange={(across) => across > 0 && table.lay({ ...laying, across })}
              />
              {shape === 'rectangle' && (
                <FigureField
                  label="High"
                  value={laying.down}
                  most={drawn.grid[1]}
                  onChange={(down) => down > 0 && table.lay({ ...laying, down })}
                />
              )}
            </div>
          )}
          {(shape === 'half-square' || shape === 'quarter-square') && (
            <ChoiceKeys
              label={shape === 'half-square' ? 'Its square corner lies' : 'Its long side lies'}
              isLabelSeen
              choices={lies[shape]}
              value={laying.turn}
              onChoose={(turn) => table.lay({ ...laying, turn })}
            />
          )}
        </>
      )}
      <p className="quiet">{howWords(table)}</p>
      <PlaceFields value={table.cursor} grid={drawn.grid} onChange={table.goTo} />
      <div className="row">
        <button type="button" className="main-key" onClick={() => table.pointAt(table.cursor)}>
          {keyWords(table)}
        </button>
        {run.length > 0 && (
          <button type="button" onClick={table.letGo}>
            Let go
          </button>
        )}
        {tool === 'lay' && shape === 'corners' && run.length > 2 && (
          <button type="button" onClick={() => run[0] !== undefined && table.pointAt(run[0])}>
            Close it
          </button>
        )}
      </div>
    </section>
  );
};

const keyWords = ({ tool, laying, run }: TableState): string => {
  if (tool === 'rule') return run.length > 0 ? 'Lead it here' : 'Begin the seam here';
  return laying.shape === 'corners' ? 'A corner here' : 'Lay it here';
};

const howWords = ({ tool, laying, run }: TableState): string => {
  if (tool === 'rule')
    return run.length === 0
      ? 'Tap where the seam begins, then where it ends: on seams or on the edge of the block. By keys: arrows, then Enter.'
      : 'Tap where it ends; a tap inside a patch makes a bend. Backspace takes the last point back.';
  if (laying.shape !== 'corners') return 'Tap where it lies. It takes the place of what is under it.';
  return run.length < 3 ? 'Tap its corners, one after another.' : 'Tap the first corner again to close it.';
};
