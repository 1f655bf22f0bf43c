// The patch that is chosen in the drawing: its piece, and its cloth.
import type { BlockAnswer } from '#workroom/compute';
import { patchOfKey } from '#workroom/drawing';
import { ClothField } from '#workroom/fields';
import { useQuilt } from '#workroom/room';
import { type Block, colourTone } from './block-edits.ts';
import { colourLog, logOfPatch } from './cabin-edits.ts';
import { useBlockEdit } from './use-block-edit.ts';

export const ChosenPatch = (of: {
  readonly block: Block;
  readonly answer: BlockAnswer | null;
  readonly chosen: string | null;
}) => {
  const { block, answer, chosen } = of;
  const { document, words } = useQuilt();
  const edit = useBlockEdit(block.id);
  const number = patchOfKey(chosen ?? '');
  const patch = answer?.picture.patches[number];
  if (patch === undefined) return null;
  const log = logOfPatch(block, { patch: number, patches: answer?.picture.patches.length ?? 0 });
  return (
    <section>
      <h2>
        Piece {patch.label}, tone {patch.tone}
      </h2>
      <dl className="facts">
        <dt>Cut</dt>
        <dd>{words.size(patch.cut)}</dd>
      </dl>
      {log !== null ? (
        <ClothField
          label="This log alone"
          fabrics={document.fabrics}
          value={patch.fabric}
          onChange={(cloth) => {
            if (cloth !== null) edit('Colour one log', (own) => colourLog(own, { at: log, cloth }));
          }}
        />
      ) : (
        patch.tone !== '' && (
          <ClothField
            label={`All of the tone ${patch.tone}`}
            fabrics={document.fabrics}
            value={patch.fabric}
            onChange={(cloth) => {
              if (cloth !== null) edit('Colour a tone', (own) => colourTone(own, patch.tone, cloth));
            }}
          />
        )
      )}
    </section>
  );
};
