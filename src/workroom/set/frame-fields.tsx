// Frames: round the chosen block, and round all smaller ones so that they reach the common size.
import { memo } from 'react';
import type { QuiltDocument } from '#craft/design';
import type { Measured } from '#workroom/compute';
import { ClothField, LengthField } from '#workroom/fields';
import { countWords, useBlockName, useQuilt, useRoom } from '#workroom/room';
import { usualPlain } from './cloths.ts';
import { addFrame, framesFor, framesForAll, takeFrameOut } from './frame-edits.ts';
import { writtenLength } from './written-length.ts';

type Block = QuiltDocument['blocks'][number];

/** Keys for sizes of other blocks. */
const shown = 3;

/** Round one block, wherever it lies in the quilt. */
export const FrameFields = memo(({ block: id, measured }: { readonly block: string; readonly measured: Measured }) => {
  const { document, edit, words } = useQuilt();
  const { say } = useRoom();
  const nameOf = useBlockName();
  const { blocks, fabrics, unit } = document;
  const block = blocks.find((one) => one.id === id);
  const own = measured.blocks.find((one) => one.id === id);
  if (block === undefined || block.made !== undefined) return null;
  const frames = block.frame ?? [];
  const first = usualPlain(document);
  const choices = own === undefined ? [] : framesFor(own, measured.blocks).slice(0, shown);
  const change = (what: string, to: (draft: Block) => void) =>
    edit(what, (draft) => {
      const found = draft.blocks.find((one) => one.id === id);
      if (found !== undefined) to(found);
    });
  return (
    <section>
      <h2>Frame round {nameOf(id)}</h2>
      {frames.length === 0 && <p className="quiet">None. A frame goes round this block wherever it lies.</p>}
      <ol className="borders">
        {frames.map((frame, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a frame is known by its place
          <li key={at}>
            <LengthField
              label={frames.length === 1 ? 'Width' : `Width ${at + 1}, from the inside`}
              value={frame.width}
              unit={unit}
              onChange={(written) =>
                change('Change the frame', (draft) => void Object.assign(draft.frame?.[at] ?? {}, { width: written }))
              }
            />
            <ClothField
              label="Cloth"
              fabrics={fabrics}
              value={frame.fabric}
              onChange={(cloth) =>
                change(
                  'Change the frame',
                  (draft) => void Object.assign(draft.frame?.[at] ?? {}, { fabric: cloth ?? first }),
                )
              }
            />
            <button
              type="button"
              className="word-key"
              aria-label={`Take the frame out${frames.length === 1 ? '' : `, number ${at + 1}`}`}
              onClick={() => change('Take the frame out', (draft) => takeFrameOut(draft, at))}
            >
              Take out
            </button>
          </li>
        ))}
      </ol>
      <fieldset className="choose-keys">
        <legend className="unseen">Add a frame</legend>
        {choices.map(({ size, width }) => (
          <button
            key={width}
            type="button"
            onClick={() => {
              change('Frame the block', (draft) => addFrame(draft, { width, cloth: first }));
              say(`A frame of ${words.length(width)} is round it`);
            }}
          >
            Up to {words.size(size)}: {words.length(width)} wide
          </button>
        ))}
        <button
          type="button"
          onClick={() => {
            const width = unit === 'in' ? '1' : '2.5';
            change('Frame the block', (draft) => addFrame(draft, { width, cloth: first }));
            say('A frame is round it');
          }}
        >
          {frames.length === 0 ? 'Add a frame' : 'One more'}
        </button>
      </fieldset>
    </section>
  );
});

/** One key where blocks of several sizes lie in rows that want one. */
export const FrameAll = ({ measured }: { readonly measured: Measured }) => {
  const { document, edit, words } = useQuilt();
  const { say } = useRoom();
  const nameOf = useBlockName();
  const { top } = document;
  if (top.set === 'sections') return null;
  const cells = JSON.stringify([top.rows, top.between, top.arrangement]);
  const placed = measured.blocks.filter(({ id }) => cells.includes(`"block":${JSON.stringify(id)}`));
  const frames = framesForAll(placed);
  const [[, first] = []] = frames;
  if (first === undefined) return null;
  const cloth = usualPlain(document);
  const names = [...frames].map(([id, { width }]) => `${nameOf(id)} ${words.length(width)}`);
  const count = countWords(frames.size, 'smaller block', 'smaller blocks');
  return (
    <>
      <p className="quiet">
        The blocks differ in size. A frame brings the smaller ones to the largest: {names.join(', ')} wide.
      </p>
      <button
        type="button"
        onClick={() => {
          edit('Frame the smaller blocks', (draft) => {
            for (const block of draft.blocks) {
              const frame = frames.get(block.id);
              if (frame !== undefined) addFrame(block, { width: writtenLength(frame.width), cloth });
            }
          });
          say(`All are ${words.size(first.size)} now`);
        }}
      >
        Frame the {count} up to {words.size(first.size)}
      </button>
    </>
  );
};
