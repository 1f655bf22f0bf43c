// Above every view: the name of the quilt, whether it is kept, undo and print.
import type { QuiltDocument } from '#craft/design';
import { limits } from '#craft/limits';
import { go, quiltAddress, type Stop, useGesture, useQuilt, useRoom } from '#workroom/room';
import type { Keeping } from '#workroom/store';
import { keepingWords } from './keeping-line.tsx';
import { MoreMenu } from './more-menu.tsx';
import { nameless } from './stop-words.ts';
import type { Undoing } from './use-undoing.ts';

export interface FrameHeadOf {
  readonly stop: Stop;
  readonly undoing: Undoing;
  readonly keeping: Keeping;
  /** What became of the last restore point, for as long as it is read. */
  readonly told: string | null;
}

export const FrameHead = ({ stop, undoing, keeping, told }: FrameHeadOf) => {
  const { id, document, edit } = useQuilt();
  const { store } = useRoom();
  const naming = useGesture();
  const rename = (title: string): void =>
    edit('Name the quilt', (draft: QuiltDocument) => void Object.assign(draft, { title }), naming.named('title'));
  return (
    <header className="head">
      <a className="brand" href="#/">
        Seamstead
      </a>
      <input
        className="head-title"
        aria-label="Name of the quilt"
        value={document.title ?? ''}
        placeholder={nameless}
        maxLength={limits.titleCharacters}
        onFocus={naming.begin}
        onChange={(event) => rename(event.target.value)}
      />
      <span className={`keeping is-${keeping.state}`} role="status">
        {told ?? keepingWords(keeping, store.lasts)}
      </span>
      <div className="head-keys">
        <button type="button" onClick={undoing.undo} disabled={!undoing.canUndo} title={undoing.last}>
          Undo
        </button>
        <button type="button" onClick={undoing.redo} disabled={!undoing.canRedo} title={undoing.next}>
          Redo
        </button>
        <MoreMenu />
        {stop !== 'print' && (
          <button type="button" className="main-key print-key" onClick={() => go(quiltAddress(id, 'print'))}>
            Print the pattern
          </button>
        )}
      </div>
    </header>
  );
};
