// The blocks of all quilts of this browser, as pictures: to open, to copy, to begin a quilt with.
import { useCallback, useEffect, useState } from 'react';
import type { QuiltDocument } from '#craft/design';
import { carriedFrom, quiltOf } from '#workroom/draft';
import { type Scene, SmallPicture, sceneOfBlock } from '#workroom/drawing';
import type { JsonObject } from '#workroom/editing';
import { lengthWordsFor, quiltAddress, useRoom } from '#workroom/room';
import type { QuiltLine } from '#workroom/store';
import { ToMend } from './to-mend.tsx';

interface KnownBlock {
  readonly quilt: QuiltLine;
  readonly document: JsonObject;
  readonly id: string;
  readonly title: string;
}

const picturePx = 96;
/** So many are shown at first; the rest are asked for. */
const firstShown = 12;

export const HomeBlocks = (of: {
  readonly quilts: readonly QuiltLine[];
  readonly onBegin: (document: JsonObject) => void;
}) => {
  const blocks = useAllBlocks(of.quilts);
  const { shelf, say } = useRoom();
  const [name, setName] = useState('');
  const [isWhole, setWhole] = useState(false);
  if (blocks.length === 0) return null;
  const wanted = name.trim().toLowerCase();
  const found = blocks.filter(({ title, quilt }) => `${title} ${quilt.title}`.toLowerCase().includes(wanted));
  const shown = isWhole || wanted !== '' ? found : found.slice(0, firstShown);
  const carry = (block: KnownBlock) => carriedFrom(block.document as unknown as QuiltDocument, block.id);
  return (
    <section className="home-blocks" aria-label="Your blocks">
      <h2>Your blocks</h2>
      <label className="field home-search">
        <span>By name, of the block or its quilt</span>
        <input type="search" value={name} onChange={(event) => setName(event.target.value)} />
      </label>
      {found.length === 0 && <p role="status">No block is called that. Try a part of its name.</p>}
      <ul className="block-list">
        {shown.map((block) => (
          <li key={`${block.quilt.id} ${block.id}`}>
            <a href={quiltAddress(block.quilt.id, 'draft', block.id)}>
              <BlockPicture block={block} />
              <span className="quilt-name">{block.title}</span>
            </a>
            <p className="quiet">in {block.quilt.title || 'a quilt without a name'}</p>
            <div className="row">
              <button
                type="button"
                className="word-key"
                aria-label={`Begin a quilt with ${block.title}`}
                onClick={() => {
                  const carried = carry(block);
                  if (carried !== null) of.onBegin(quiltOf(carried) as unknown as JsonObject);
                }}
              >
                Begin a quilt
              </button>
              <button
                type="button"
                className="word-key"
                aria-label={`Copy ${block.title}`}
                onClick={() => {
                  shelf.put(carry(block));
                  say(`${block.title} is copied. Open a quilt at Draft to paste it.`);
                }}
              >
                Copy
              </button>
            </div>
          </li>
        ))}
      </ul>
      {shown.length < found.length && (
        <button type="button" onClick={() => setWhole(true)}>
          Show all {found.length}
        </button>
      )}
    </section>
  );
};

/** Of the quilt last worked at first. What is made elsewhere is no block to begin with. */
const useAllBlocks = (quilts: readonly QuiltLine[]): readonly KnownBlock[] => {
  const { store } = useRoom();
  const [blocks, setBlocks] = useState<readonly KnownBlock[]>([]);
  useEffect(() => {
    let isLeft = false;
    const read = async () => {
      const all: KnownBlock[] = [];
      for (const quilt of quilts) {
        const document = (await store.read(quilt.id))?.editing.document;
        if (document !== undefined) all.push(...blocksOf(quilt, document));
      }
      if (!isLeft) setBlocks(all);
    };
    // a quilt that does not come has no blocks to show
    read().catch(() => undefined);
    return () => {
      isLeft = true;
    };
  }, [store, quilts]);
  return blocks;
};

const blocksOf = (quilt: QuiltLine, document: JsonObject): readonly KnownBlock[] =>
  (document as unknown as QuiltDocument).blocks
    .filter(({ made }) => made === undefined)
    .map(({ id, title }) => ({ quilt, document, id, title: title || id }));

const BlockPicture = ({ block }: { readonly block: KnownBlock }) => {
  const { planner } = useRoom();
  const [scene, setScene] = useState<Scene | 'faulty' | null>(null);
  const { document, id } = block;
  const draw = useCallback(async () => {
    const reply = await planner.block(document, id);
    if (!reply.ok) return 'faulty';
    const { picture, cloths, unit } = reply.value;
    return sceneOfBlock({ picture, cloths, sizeWords: lengthWordsFor({ unit }, 'written').size });
  }, [planner, document, id]);
  useEffect(() => {
    let isLeft = false;
    draw().then(
      (made) => {
        if (!isLeft) setScene(made);
      },
      () => undefined, // the page is closing
    );
    return () => {
      isLeft = true;
    };
  }, [draw]);
  return (
    <span className="thumb">
      {scene === 'faulty' ? <ToMend /> : scene !== null && <SmallPicture scene={scene} sidePx={picturePx} alt="" />}
    </span>
  );
};
