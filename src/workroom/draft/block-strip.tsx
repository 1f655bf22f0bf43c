// All blocks of the quilt, and ways to another.
import { useMemo } from 'react';
import type { BlockAnswer } from '#workroom/compute';
import { SmallPicture, sceneOfBlock } from '#workroom/drawing';
import { quiltAddress, useBlockName, useHereInSight, useQuilt } from '#workroom/room';
import type { BlockState } from './use-blocks.ts';

const picturePx = 64;

export const BlockStrip = (of: {
  readonly here: string | null;
  readonly states: ReadonlyMap<string, BlockState>;
  readonly onAdd: () => void;
  readonly onAddCabin: () => void;
  readonly onAddBlank: () => void;
}) => {
  const { id, document } = useQuilt();
  const nameOf = useBlockName();
  const list = useHereInSight<HTMLUListElement>(of.here, document.blocks.length);
  return (
    <section className="strip" aria-label="Blocks of this quilt">
      <ul ref={list}>
        {document.blocks.map((block) => (
          <li key={block.id}>
            <a
              className="strip-link"
              href={quiltAddress(id, 'draft', block.id)}
              aria-current={block.id === of.here ? 'true' : undefined}
            >
              <BlockThumb answer={of.states.get(block.id)?.good ?? null} />
              {nameOf(block.id)}
            </a>
          </li>
        ))}
      </ul>
      <div className="strip-keys">
        <button type="button" onClick={of.onAddBlank}>
          Add a blank block
        </button>
        <button type="button" onClick={of.onAddCabin}>
          Add a log cabin
        </button>
        <button type="button" onClick={of.onAdd}>
          Add from the collection
        </button>
      </div>
    </section>
  );
};

const BlockThumb = ({ answer }: { readonly answer: BlockAnswer | null }) => {
  const { words } = useQuilt();
  const scene = useMemo(
    () =>
      answer === null ? null : sceneOfBlock({ picture: answer.picture, cloths: answer.cloths, sizeWords: words.size }),
    [answer, words],
  );
  return (
    <span className="strip-picture">{scene !== null && <SmallPicture scene={scene} sidePx={picturePx} alt="" />}</span>
  );
};
