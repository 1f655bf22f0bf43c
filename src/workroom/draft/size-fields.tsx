// How large a block is, and the sizes near it at which every cut falls on a mark of the ruler.
import { parseLength } from '#craft/measure';
import { toNumber } from '#ground/exact';
import type { BlockAnswer } from '#workroom/compute';
import { ChoiceKeys, LengthField } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import type { Block } from './block-edits.ts';
import { useBlockEdit } from './use-block-edit.ts';

export const SizeFields = ({ block, answer }: { readonly block: Block; readonly answer: BlockAnswer | null }) => {
  const { document, words } = useQuilt();
  const edit = useBlockEdit(block.id);
  const { unit } = document;
  const { size } = block;
  const become = (to: NonNullable<Block['size']>) =>
    edit('Resize the block', (own) => void Object.assign(own, { size: to }));
  if (size === undefined) return null;
  const read = parseLength(String(Array.isArray(size) ? size[0] : size), { unit, sign: 'positive' });
  const width = read.ok ? toNumber(read.value) : 0;
  // a square block stays square, an oblong one as long as it is wide
  const friendly = answer?.friendly ?? [];
  return (
    <section>
      <h2>Finished size</h2>
      {Array.isArray(size) ? (
        <div className="pair">
          {([0, 1] as const).map((way) => (
            <LengthField
              key={way}
              label={way === 0 ? 'Across' : 'Down'}
              value={size[way]}
              unit={unit}
              onChange={(written) => become(way === 0 ? [written, size[1]] : [size[0], written])}
            />
          ))}
        </div>
      ) : (
        <LengthField label="Side" value={size} unit={unit} onChange={become} />
      )}
      <label className="check">
        <input
          type="checkbox"
          checked={Array.isArray(size)}
          onChange={() => become(Array.isArray(size) ? size[0] : [size, size])}
        />
        Oblong
      </label>
      {friendly.length > 0 && (
        <>
          <p className="quiet">Sizes near it at which every cut falls on a mark of the ruler:</p>
          <ChoiceKeys
            label="Sizes that a ruler has"
            choices={friendly.map((sides) => ({
              value: sides[0],
              words: isSquare(sides) ? words.figure(sides[0]) : words.size(sides),
              spoken: isSquare(sides) ? words.length(sides[0]) : words.size(sides),
            }))}
            value={friendly.find(([side]) => Math.abs(side - width) < 1e-9)?.[0] ?? null}
            onChoose={(side) => {
              const sides = friendly.find(([across]) => across === side);
              if (sides !== undefined) become(Array.isArray(size) ? [String(side), String(sides[1])] : String(side));
            }}
          />
        </>
      )}
    </section>
  );
};

const isSquare = ([across, down]: readonly [number, number]): boolean => Math.abs(across - down) < 1e-9;
