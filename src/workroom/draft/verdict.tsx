// How the block is sewn, in one sentence, and what its maker should know.
import type { QuiltDocument } from '#craft/design';
import type { BlockAnswer } from '#workroom/compute';
import { countWords, useQuilt } from '#workroom/room';
import type { Advised } from './use-advice.ts';

const joiningWords: Readonly<Record<BlockAnswer['joining'], string>> = {
  straight: 'Sews in straight seams.',
  curved: 'Has curved seams, each in one run.',
  partial: 'Sews in straight seams, one of them part-way first.',
  'set-in': 'Has corners to set in.',
};

export interface VerdictOf {
  readonly answer: BlockAnswer | null;
  readonly block: QuiltDocument['blocks'][number];
  readonly uses: number;
  /** Lines that would make it straight; null where there are none, or nothing is drawn on. */
  readonly advised: Advised | null;
}

export const Verdict = ({ answer, block, uses, advised }: VerdictOf) => {
  const { words, edit } = useQuilt();
  if (answer === null) return null;
  const { picture, unfinished, joining, foundations, pieces, steps, notes } = answer;
  // on the drafting table the lines are seen, and need no figures
  const told = notes.filter(({ code }) => advised === null || code !== 'piecing/lines-to-add');
  return (
    <>
      <p role="status">{joiningWords[joining]}</p>
      <dl className="facts">
        <dt>Finished</dt>
        <dd>{words.size(picture.size)}</dd>
        <dt>With its seams</dt>
        <dd>{words.size(unfinished)}</dd>
        <dt>Pieces</dt>
        <dd>
          {pieces}, {countWords(steps, 'seam', 'seams')}
        </dd>
        {foundations !== null && (
          <>
            <dt>On foundations</dt>
            <dd>{foundations === 1 ? 'in one' : `in ${foundations} parts`}</dd>
          </>
        )}
        <dt>In the quilt</dt>
        <dd>{uses === 0 ? 'not yet' : `${uses} ×`}</dd>
      </dl>
      {(foundations !== null || block.piecing !== undefined) && (
        <label className="check">
          <input
            type="checkbox"
            checked={block.piecing === 'foundation'}
            onChange={({ target }) =>
              edit(target.checked ? 'Piece it on foundations' : 'Piece it without foundations', (draft) => {
                const written = draft.blocks.find(({ id }) => id === block.id);
                if (written === undefined) return;
                if (target.checked) written.piecing = 'foundation';
                else delete written.piecing;
              })
            }
          />
          <span>Pieced on foundations: pieces are cut with room, sheets are printed</span>
        </label>
      )}
      {advised !== null && (
        <>
          <p>{advised.words}</p>
          <button type="button" onClick={advised.take}>
            {advised.runs.length === 1 ? 'Add the line' : 'Add the lines'}
          </button>
        </>
      )}
      {told.length > 0 && (
        <ul className="notes">
          {told.map(({ text, level }) => (
            <li key={text} className={level === 'warning' ? 'note is-warning' : 'note'}>
              {text}
            </li>
          ))}
        </ul>
      )}
    </>
  );
};
