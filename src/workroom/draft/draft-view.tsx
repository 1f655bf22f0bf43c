// Draft: one block in the middle, how it is given at the right, all blocks of the quilt below.
import { useCallback, useEffect, useMemo, useState } from 'react';
import type { QuiltDocument } from '#craft/design';
import { parseLength } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { type Command, useCommands } from '#workroom/commands';
import type { BlockAnswer, DrawnAnswer } from '#workroom/compute';
import { DrawingView, sceneOfBlock } from '#workroom/drawing';
import { NameField } from '#workroom/fields';
import { go, Problems, quiltAddress, useBlockName, useQuilt, useRoom } from '#workroom/room';
import { AnotherBlock } from './another-block.tsx';
import { addBlock, type Block, blankBlock, cabinOf, freeId, usesOf } from './block-edits.ts';
import { BlockStrip } from './block-strip.tsx';
import { firstCabin } from './cabin-edits.ts';
import { CabinFields } from './cabin-fields.tsx';
import { ChosenPatch } from './chosen-patch.tsx';
import { DraftingTable } from './drafting-table.tsx';
import { Faults } from './faults.tsx';
import { LooseSeams } from './loose-seams.tsx';
import { MakeDrawing } from './make-drawing.tsx';
import { SizeFields } from './size-fields.tsx';
import { TableTools } from './table-tools.tsx';
import { ToneFields } from './tone-fields.tsx';
import { useAdvice } from './use-advice.ts';
import { useBlockEdit } from './use-block-edit.ts';
import { useAsked, useBlocks } from './use-blocks.ts';
import { useCarrying } from './use-carrying.ts';
import { useTable } from './use-table.ts';
import { useTableCommands } from './use-table-commands.ts';
import { Verdict } from './verdict.tsx';

export const DraftView = ({ block: wanted }: { readonly block: string | null }) => {
  const { id, document, words, edit } = useQuilt();
  const { say } = useRoom();
  const nameOf = useBlockName();
  const asked = useAsked();
  const states = useBlocks(asked);
  const [chosen, setChosen] = useState<string | null>(null);
  const [isAdding, setAdding] = useState(false);
  const block = document.blocks.find((one) => one.id === wanted) ?? document.blocks[0];
  const state = block === undefined ? undefined : states.get(block.id);
  const good = state?.good ?? null;
  const scene = useMemo(
    () => (good === null ? null : sceneOfBlock({ picture: good.picture, cloths: good.cloths, sizeWords: words.size })),
    [good, words],
  );
  const table = useTable(block !== undefined && isDrawn(block) ? block : undefined, asked);
  useTableCommands(table);
  const carrying = useCarrying(block);
  const change = useBlockEdit(block?.id);
  const size = useMemo(() => (block === undefined ? null : writtenSize(block, document.unit)), [block, document.unit]);
  const answer = state?.reply?.ok === true ? state.reply.value : null;
  const advised = useAdvice({ table, answer, size });
  const here = block?.id;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is chosen belongs to the block that was left
  useEffect(() => setChosen(null), [here]);

  const add = useCallback(
    (make: (draft: typeof document) => Block, what: string) => {
      const made = make(document);
      edit(what, (draft) => addBlock(draft, made));
      go(quiltAddress(id, 'draft', made.id));
      say(`${made.title ?? made.id} is added`);
    },
    [document, edit, id, say],
  );
  const addBlank = useCallback(() => add(blankBlock, 'Add a blank block'), [add]);
  const addCabin = useCallback(() => add(firstCabin, 'Add a log cabin'), [add]);
  const copy = useCallback(() => {
    if (block === undefined) return;
    add((draft) => copyOf(block, { taken: draft.blocks, name: nameOf(block.id) }), 'Copy the block');
  }, [add, block, nameOf]);
  const canRemove = block !== undefined && document.blocks.length > 1 && usesOf(document, block.id) === 0;
  const remove = useCallback(() => {
    if (block === undefined) return;
    edit('Remove the block', (draft) => {
      draft.blocks = draft.blocks.filter((one) => one.id !== block.id);
    });
    go(quiltAddress(id, 'draft'));
    say(`${nameOf(block.id)} is removed`);
  }, [block, edit, id, nameOf, say]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'add cabin', part: 'Draft', words: 'Add a log cabin', keys: ['L'], run: addCabin },
        { id: 'add blank', part: 'Draft', words: 'Add a blank block to draw on', keys: ['B'], run: addBlank },
        {
          id: 'add block',
          part: 'Draft',
          words: 'Add a block of the collection',
          keys: ['A'],
          run: () => setAdding(true),
        },
        { id: 'copy block', part: 'Draft', words: 'Make a copy of this block', isOff: block === undefined, run: copy },
        { id: 'remove block', part: 'Draft', words: 'Remove this block', isOff: !canRemove, run: remove },
      ],
      [addBlank, addCabin, copy, remove, canRemove, block],
    ),
  );

  return (
    <div className="view-parts">
      <div className="stage">
        {block !== undefined && size !== null && table.drawn !== null ? (
          <DraftingTable block={block} table={table} size={size} answer={answer} advised={advised?.runs ?? []} />
        ) : scene === null ? (
          <p className="empty" role="status">
            {state?.reply?.ok === false
              ? 'It can be drawn when what is wrong with it is mended.'
              : 'Drawing the block …'}
          </p>
        ) : (
          <DrawingView
            scene={scene}
            label={`The block ${here === undefined ? '' : nameOf(here)}, ${words.size([scene.width, scene.height])}`}
            chosen={chosen}
            onChoose={setChosen}
          />
        )}
        <BlockStrip
          here={here ?? null}
          states={states}
          onAdd={() => setAdding(true)}
          onAddCabin={addCabin}
          onAddBlank={addBlank}
        />
      </div>
      <aside className="side" aria-label="This block">
        {block !== undefined && (
          <>
            <section>
              <NameField
                label="Name of the block"
                value={block.title}
                otherwise={nameOf(block.id)}
                named={`title ${block.id}`}
                onChange={(title, gesture) =>
                  change('Name the block', (own) => void Object.assign(own, { title }), gesture)
                }
              />
              {table.drawn !== null && hasFaults(table.answer) ? (
                <Faults table={table} />
              ) : state?.reply?.ok === false ? (
                <>
                  <Problems problems={state.reply.problems} more={state.reply.more} document={only(document, block)} />
                  <LooseSeams block={block} problems={state.reply.problems} />
                </>
              ) : (
                <Verdict answer={good} block={block} uses={usesOf(document, block.id)} advised={advised} />
              )}
            </section>
            {table.drawn !== null ? (
              <TableTools block={block} table={table} />
            ) : (
              <ChosenPatch block={block} answer={good} chosen={chosen} />
            )}
            {cabinOf(block) === null ? <SizeFields block={block} answer={good} /> : <CabinFields block={block} />}
            <ToneFields block={block} tones={tonesIn(good)} />
            <section>
              <h2>The block itself</h2>
              {!isDrawn(block) && block.made === undefined && <MakeDrawing block={block} asked={asked} />}
              <div className="row">
                <button type="button" onClick={copy}>
                  Make a copy
                </button>
                <button type="button" onClick={carrying.copy}>
                  Copy for another quilt
                </button>
                {carrying.copied !== null && (
                  <button type="button" onClick={carrying.paste}>
                    Paste {carrying.copied}
                  </button>
                )}
                <button type="button" disabled={!canRemove} onClick={remove}>
                  Remove
                </button>
              </div>
              {usesOf(document, block.id) > 0 && (
                <p className="quiet">It can be removed when the quilt has it no more.</p>
              )}
            </section>
          </>
        )}
      </aside>
      {isAdding && (
        <AnotherBlock
          onClose={() => setAdding(false)}
          onTake={(make, what) => {
            setAdding(false);
            add(make, what);
          }}
          onCabin={() => {
            setAdding(false);
            addCabin();
          }}
        />
      )}
    </div>
  );
};

const hasFaults = (answer: DrawnAnswer | null): boolean =>
  answer !== null && answer.bare.length + answer.double.length > 0;

/** What is drawn on a grid can be drafted on at once; other forms are made into a drawing first. */
const isDrawn = ({ patches, drawing, recipe }: Block): boolean =>
  patches !== undefined || drawing !== undefined || recipe?.kind === 'units';

/** Finished, without a frame; null where it has none of its own, or none that can be read. */
const writtenSize = ({ size }: Block, unit: QuiltDocument['unit']): readonly [number, number] | null => {
  if (size === undefined) return null;
  const [across, down] = (Array.isArray(size) ? size : [size, size]).map((side) => {
    const read = parseLength(String(side), { unit, sign: 'positive' });
    return read.ok ? toNumber(read.value) : null;
  });
  return across == null || down == null ? null : [across, down];
};

/** A block by itself is the first of its document. */
const only = (document: QuiltDocument, block: Block): QuiltDocument => ({ ...document, blocks: [block] });

const copyOf = (block: Block, of: { readonly taken: readonly Block[]; readonly name: string }): Block => ({
  ...structuredClone(block),
  id: freeId(`${block.id}-copy`, of.taken),
  title: `${of.name}, a copy`,
});

const tonesIn = (answer: BlockAnswer | null): readonly string[] => [
  ...new Set(answer?.picture.patches.flatMap(({ tone }) => (tone === '' ? [] : [tone])) ?? []),
];
