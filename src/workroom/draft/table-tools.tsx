// Beside the drafting table: what the tool in hand needs, the chosen patches, the grid, and what is still to mend.
import { useState } from 'react';
import { chosenBox } from '#craft/redrawing';
import { at } from '#ground/plane';
import { ChoiceKeys, CountField } from '#workroom/fields';
import { countWords, useQuilt } from '#workroom/room';
import { type Block, clothOf } from './block-edits.ts';
import { FigureField, PlaceFields } from './place-fields.tsx';
import { figureText } from './place-text.ts';
import { ToneSelect } from './tone-select.tsx';
import type { Tool } from './use-hand.ts';
import type { TableState } from './use-table.ts';

export const TableTools = ({ block, table }: { readonly block: Block; readonly table: TableState }) => {
  if (table.drawn === null) return null;
  return (
    <>
      {table.tool === 'choose' || table.tool === 'move' ? (
        <ChosenPatches block={block} table={table} />
      ) : (
        <ToolFields table={table} />
      )}
      <GridFields table={table} />
    </>
  );
};

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
          <ToneField label="Filled with" table={table} />
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
const hereWords: Readonly<Record<Exclude<Tool, 'choose'>, string>> = {
  move: 'Put them here',
  rule: 'Begin the seam here',
  lay: 'Lay it here',
};

const ToolFields = ({ table }: { readonly table: TableState }) => {
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
                most={drawn.grid[0]}
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
          {tool === 'rule' && run.length > 0
            ? 'Lead it here'
            : shape === 'corners' && tool === 'lay'
              ? 'A corner here'
              : hereWords[tool === 'rule' ? 'rule' : 'lay']}
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

const howWords = ({ tool, laying, run }: TableState): string => {
  if (tool === 'rule')
    return run.length === 0
      ? 'Tap where the seam begins, then where it ends: on seams or on the edge of the block. By keys: arrows, then Enter.'
      : 'Tap where it ends; a tap inside a patch makes a bend. Backspace takes the last point back.';
  if (laying.shape !== 'corners') return 'Tap where it lies. It takes the place of what is under it.';
  return run.length < 3 ? 'Tap its corners, one after another.' : 'Tap the first corner again to close it.';
};

const ToneField = ({ label, table }: { readonly label: string; readonly table: TableState }) => (
  <ToneSelect label={label} tones={table.tones} value={table.tone} onChange={table.takeTone} />
);

const ChosenPatches = ({ block, table }: { readonly block: Block; readonly table: TableState }) => {
  const { drawn, chosen, tool } = table;
  const { document } = useQuilt();
  if (drawn === null) return null;
  const tones = [...new Set(chosen.map((index) => drawn.patches[index]?.tone ?? ''))];
  const [only] = tones;
  const box = chosenBox(drawn.patches, chosen);
  const cloth = only === undefined ? '' : clothOf(block, only);
  return (
    <section>
      <h2>{chosen.length === 0 ? 'No patch is chosen' : `${countWords(chosen.length, 'patch', 'patches')} chosen`}</h2>
      <label className="check">
        <input
          type="checkbox"
          checked={table.taps === 'add'}
          onChange={(event) => table.tapTo(event.target.checked ? 'add' : 'choose')}
        />
        Each tap takes one more
      </label>
      <div className="row">
        <button
          type="button"
          onClick={() =>
            table.choose(
              0,
              drawn.patches.map((_, index) => index),
            )
          }
        >
          Choose all
        </button>
        {chosen.length === 1 && only !== undefined && (
          <button
            type="button"
            onClick={() =>
              table.choose(
                chosen[0] ?? null,
                drawn.patches.flatMap(({ tone }, index) => (tone === only ? [index] : [])),
              )
            }
          >
            All of {document.fabrics.find(({ id }) => id === cloth)?.name || only}
          </button>
        )}
        {chosen.length > 0 && (
          <button type="button" onClick={() => table.choose(null)}>
            Choose none
          </button>
        )}
      </div>
      {chosen.length === 0 ? (
        <p className="quiet">
          Choose a patch in the drawing to colour, move, mirror, turn or repeat it; or rule a seam through it.
        </p>
      ) : (
        <>
          <ToneSelect
            label="Tone or cloth"
            tones={table.tones}
            value={tones.length === 1 ? (only ?? null) : null}
            onChange={table.colour}
          />
          <div className="row">
            <button type="button" onClick={() => table.mirror('left-right')}>
              Mirror across
            </button>
            <button type="button" onClick={() => table.mirror('top-bottom')}>
              Mirror down
            </button>
            <button type="button" onClick={table.turn}>
              Turn
            </button>
            <button type="button" onClick={table.takeOut}>
              Take out
            </button>
            {chosen.length > 1 && (
              <button type="button" onClick={table.join}>
                Take out the seams between
              </button>
            )}
          </div>
          {tool === 'move' && (
            <>
              <p className="quiet">Tap where their upper left corner is to lie, or move them with the arrow keys.</p>
              <PlaceFields value={at(box.x, box.y)} grid={drawn.grid} onChange={table.pointAt} />
            </>
          )}
          <RepeatFields key={`${box.width} ${box.height}`} box={box} table={table} />
        </>
      )}
    </section>
  );
};

/** More than fit on any block are left out at its edge. */
const mostTimes = 24;

const RepeatFields = (of: {
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

const parts: readonly { readonly value: number; readonly words: string; readonly spoken: string }[] = [
  { value: 1, words: '1', spoken: '1 whole square' },
  { value: 2, words: '½', spoken: '½ of a square' },
  { value: 3, words: '⅓', spoken: '⅓ of a square' },
  { value: 4, words: '¼', spoken: '¼ of a square' },
];
const mostSquares = 96;

const GridFields = ({ table }: { readonly table: TableState }) => {
  const { drawn } = table;
  if (drawn === null) return null;
  const [across, down] = drawn.grid;
  return (
    <section>
      <h2>The grid</h2>
      <div className="pair">
        <CountField
          label="Squares across"
          value={Math.round(across)}
          least={1}
          most={mostSquares}
          onChange={(count) => table.regrid([count, down])}
        />
        <CountField
          label="Squares down"
          value={Math.round(down)}
          least={1}
          most={mostSquares}
          onChange={(count) => table.regrid([across, count])}
        />
      </div>
      <ChoiceKeys
        label="Steps, in parts of a square"
        isLabelSeen
        choices={parts}
        value={table.parts}
        onChoose={table.divide}
      />
      <p className="quiet">
        {[across, down].every(Number.isInteger)
          ? 'The hand also comes to every corner, and to where a seam crosses a line.'
          : `This block has a grid of its own, ${figureText(across)} by ${figureText(down)} squares: go by its corners, or divide it otherwise.`}
      </p>
    </section>
  );
};
