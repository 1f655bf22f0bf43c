// The grid that a block is drawn on, and the steps that the hand takes on it.
import { mostSquares } from '#craft/redrawing';
import { ChoiceKeys, CountField } from '#workroom/fields';
import { figureText } from './place-text.ts';
import type { TableState } from './use-table.ts';

const parts: readonly { readonly value: number; readonly words: string; readonly spoken: string }[] = [
  { value: 1, words: '1', spoken: '1 whole square' },
  { value: 2, words: '½', spoken: '½ of a square' },
  { value: 3, words: '⅓', spoken: '⅓ of a square' },
  { value: 4, words: '¼', spoken: '¼ of a square' },
];

export const GridFields = ({ table }: { readonly table: TableState }) => {
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
