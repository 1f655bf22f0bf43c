// Opening files, wherever one is: dropped anywhere on the page, or picked. One that opens is gone to; where several came, or one was
// refused, a sheet says what became of each. What is on the desk stays as it is.
import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { go, Problems, pickFiles, quiltAddress, Sheet, useRoom } from '#workroom/room';
import { type OpenedFile, openedFrom, sourceOf, type TextSource } from './opened-files.ts';

export interface Opening {
  /** Asks for files, and opens them. */
  readonly pick: () => void;
  readonly open: (sources: readonly TextSource[]) => Promise<void>;
  /** How many quilts have been opened so: another number, another list. */
  readonly count: number;
}

const OpeningContext = createContext<Opening | null>(null);

export const useOpening = (): Opening => {
  const opening = useContext(OpeningContext);
  if (opening === null) throw new Error('a view stands where no files are opened');
  return opening;
};

export const OpeningProvider = ({ children }: { readonly children: ReactNode }) => {
  const { store, planner, say, isKept } = useRoom();
  const [told, setTold] = useState<readonly OpenedFile[]>([]);
  const [reading, setReading] = useState<string | null>(null);
  const [count, setCount] = useState(0);
  const turn = useRef(Promise.resolve());

  const openAll = useCallback(
    async (sources: readonly TextSource[]) => {
      const files: OpenedFile[] = [];
      for (const source of sources) {
        setReading(source.name);
        files.push(await openedFrom(source, { store, planner }));
      }
      setReading(null);
      const opened = files.filter((file) => file.outcome === 'opened');
      if (opened.length > 0) setCount((before) => before + opened.length);
      const [only] = files;
      if (files.length === 1 && only?.outcome === 'opened' && isKept()) {
        say(`${only.title || only.from} is open.`);
        go(quiltAddress(only.id, 'set'));
      } else setTold(files);
    },
    [store, planner, say, isKept],
  );
  const open = useCallback(
    (sources: readonly TextSource[]) => {
      if (sources.length === 0) return turn.current;
      turn.current = turn.current.then(() => openAll(sources));
      return turn.current;
    },
    [openAll],
  );
  const pick = useCallback(
    () => void pickFiles('.json,application/json').then((files) => open(files.map(sourceOf))),
    [open],
  );
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'open file', part: 'Quilt', words: 'Open a file', keys: ['Mod+O', 'O'], run: pick },
      ],
      [pick],
    ),
  );
  const opening = useMemo(() => ({ pick, open, count }), [pick, open, count]);
  return (
    <OpeningContext.Provider value={opening}>
      {children}
      <DropPlace onFiles={(files) => void open(files.map(sourceOf))} />
      {reading !== null && (
        <p className="opening-line" role="status">
          Opening {reading} …
        </p>
      )}
      {told.length > 0 && <Told files={told} onClose={() => setTold([])} />}
    </OpeningContext.Provider>
  );
};

/** The whole page takes files, unless something on it has taken them for itself. */
const DropPlace = ({ onFiles }: { readonly onFiles: (files: readonly File[]) => void }) => {
  const [isOver, setOver] = useState(false);
  const take = useRef(onFiles);
  take.current = onFiles;
  useEffect(() => {
    const hasFiles = (event: DragEvent): boolean =>
      !event.defaultPrevented && (event.dataTransfer?.types.includes('Files') ?? false);
    const over = (event: DragEvent): void => {
      if (!hasFiles(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent): void => {
      setOver(false);
      if (!hasFiles(event)) return;
      event.preventDefault();
      take.current([...(event.dataTransfer?.files ?? [])]);
    };
    window.addEventListener('dragover', over);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop);
    };
  }, []);
  return isOver ? (
    <div className="drop-place" aria-hidden="true">
      <p>Let go to open it as a quilt of its own</p>
    </div>
  ) : null;
};

const Told = ({ files, onClose }: { readonly files: readonly OpenedFile[]; readonly onClose: () => void }) => {
  const opened = files.filter((file) => file.outcome === 'opened');
  const refused = files.filter((file) => file.outcome === 'refused');
  const [only] = files;
  const title =
    files.length === 1 && only?.outcome === 'refused'
      ? `${only.from} cannot be opened`
      : `${opened.length} of ${files.length} ${files.length === 1 ? 'file' : 'files'} opened`;
  return (
    <Sheet title={title} onClose={onClose}>
      {opened.length > 0 && (
        <ul className="opened-list">
          {opened.map((file) => (
            <li key={file.id}>
              <a href={quiltAddress(file.id, 'set')} onClick={onClose}>
                {file.title || file.from}
              </a>
              {file.problems.length > 0 && (
                <span className="quiet"> {countOf(file.problems.length + file.more)} still to mend in it</span>
              )}
            </li>
          ))}
        </ul>
      )}
      {refused.map((file, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two files may have one name
        <section key={i}>
          {files.length > 1 && <h3>{file.from} cannot be opened</h3>}
          <Problems problems={file.problems} more={file.more} />
        </section>
      ))}
    </Sheet>
  );
};

const countOf = (problems: number): string => (problems === 1 ? '1 problem' : `${problems} problems`);
