// Which cloth each tone of the block stands for.
import { ClothField } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import { type Block, cabinOf, clothOf, colourTone } from './block-edits.ts';
import { useBlockEdit } from './use-block-edit.ts';

export const ToneFields = ({ block, tones }: { readonly block: Block; readonly tones: readonly string[] }) => {
  const { document } = useQuilt();
  const edit = useBlockEdit(block.id);
  if (tones.length === 0) return null;
  return (
    <section>
      <h2>Cloth for each tone</h2>
      <div className="tones">
        {tones.map((tone) => (
          <ClothField
            key={tone}
            label={tone}
            fabrics={document.fabrics}
            value={clothOf(block, tone)}
            onChange={(id) => {
              if (id !== null) edit('Colour a tone', (own) => colourTone(own, tone, id));
            }}
          />
        ))}
      </div>
      {cabinOf(block) !== null && <p className="quiet">Choose a log in the drawing to give it a cloth of its own.</p>}
    </section>
  );
};
