// What is chosen in the quilt: how it lies, and what else could lie there.
import type { BlockPicture } from '#workroom/compute';
import type { Scene } from '#workroom/drawing';
import { ChoiceKeys } from '#workroom/fields';
import { quiltAddress, useQuilt } from '#workroom/room';
import { type Cell, changeCell, isBlock, mirrored, type Turn, turned } from './top-edits.ts';

export interface ChosenBlockOf {
  readonly chosen: string | null;
  readonly scene: Scene | null;
  readonly cell: readonly [number, number] | null;
  readonly own: Cell | undefined;
}

const turns: readonly Turn[] = [0, 90, 180, 270];

export const ChosenBlock = ({ chosen, scene, cell, own }: ChosenBlockOf) => {
  const { document, answer, words, edit, id } = useQuilt();
  const picture = answer?.picture ?? null;
  const thing = scene?.things.find(({ key }) => key === chosen);
  if (thing === undefined) {
    return (
      <section>
        <h2>Nothing is chosen</h2>
        <p className="quiet">Choose a block in the quilt to turn it, mirror it or put another in its place.</p>
      </section>
    );
  }
  if (cell === null || !isBlock(own)) {
    return (
      <section>
        <h2>{thing.name}</h2>
        {cell === null && (
          <p className="quiet">
            {thing.inside === null
              ? 'It is changed in the fields below.'
              : 'Blocks in this kind of set are placed in the document’s file; here they can be looked at.'}
          </p>
        )}
      </section>
    );
  }
  const entry = picture?.entries.find((one) => one.id === own.block) as BlockPicture | undefined;
  const place = (change: (was: Cell) => Cell, what: string) =>
    edit(what, (draft) => changeCell(draft.top, { at: cell, picture, change }));
  return (
    <section>
      <h2>
        {entry?.title ?? own.block}, row {cell[0] + 1}, place {cell[1] + 1}
      </h2>
      <ChoiceKeys
        label="Turned clockwise"
        isLabelSeen
        choices={turns.map((value) => ({ value, words: `${value}°` }))}
        value={own.turn ?? 0}
        onChoose={(turn) => place(turned(turn), 'Turn the block')}
      />
      <label className="check">
        <input type="checkbox" checked={own.mirror === true} onChange={() => place(mirrored, 'Mirror the block')} />
        Mirrored
      </label>
      <label className="field">
        <span>What lies here</span>
        <select
          value={`block ${own.block}`}
          onChange={(event) => {
            const [kind, ...rest] = event.target.value.split(' ');
            const name = rest.join(' ');
            place(() => (kind === 'block' ? { block: name } : { plain: name }), 'Put another block here');
          }}
        >
          <optgroup label="Blocks">
            {document.blocks.map((block) => (
              <option key={block.id} value={`block ${block.id}`}>
                {block.title || block.id}
              </option>
            ))}
          </optgroup>
          <optgroup label="A plain square of">
            {document.fabrics.map((fabric) => (
              <option key={fabric.id} value={`plain ${fabric.id}`}>
                {fabric.name || fabric.id}
              </option>
            ))}
          </optgroup>
        </select>
      </label>
      {entry !== undefined && (
        <dl className="facts">
          <dt>Finished</dt>
          <dd>{words.size(entry.size)}</dd>
          <dt>Pieces</dt>
          <dd>{entry.patches.length}</dd>
        </dl>
      )}
      <a href={quiltAddress(id, 'draft', own.block)}>Draft this block</a>
    </section>
  );
};
