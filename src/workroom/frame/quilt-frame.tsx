// The frame round every view of a quilt: its name, whether it is kept, undo and print above, the job line beside it.
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useSyncExternalStore } from 'react';
import type { QuiltDocument } from '#craft/design';
import { limits } from '#craft/limits';
import { type Command, useCommands } from '#workroom/commands';
import type { WorkroomProblem } from '#workroom/compute';
import { ClothPhotos } from '#workroom/drawing';
import { canRedo, canUndo, type JsonObject } from '#workroom/editing';
import {
  documentFile,
  go,
  jobStops,
  lengthWordsFor,
  Problems,
  QuiltProvider,
  quiltAddress,
  type Stop,
  saveFile,
  stops,
  useGesture,
  usePreferences,
  useRoom,
} from '#workroom/room';
import { type Desk, type PointBook, titleOf } from '#workroom/store';
import { beginQuilt } from './beginning.ts';
import { JobLine } from './job-line.tsx';
import { keepingWords, Parted } from './keeping-line.tsx';
import { MoreMenu } from './more-menu.tsx';
import { useDeskState } from './use-desk.ts';
import { useKeepPoint } from './use-keep-point.ts';

export interface QuiltFrameOf {
  readonly desk: Desk;
  readonly points: PointBook;
  readonly stop: Stop;
  /** The view fills the screen: nothing stands round it. */
  readonly isAlone: boolean;
  readonly children: ReactNode;
}

const nameless = 'A quilt without a name';
const stopWords: Readonly<Record<Stop, string>> = {
  draft: 'Draft',
  set: 'Set',
  colour: 'Colour',
  cut: 'Cut',
  sew: 'Sew',
  finish: 'Finish',
  print: 'Print',
  compare: 'Compare',
};

export const QuiltFrame = ({ desk, points, stop, isAlone, children }: QuiltFrameOf) => {
  const { planner, preferences, say, store, keepingIs } = useRoom();
  const liked = usePreferences(preferences);
  const { editing, keeping, takenIn } = useDeskState(desk);
  const plan = useSyncExternalStore(planner.subscribe, planner.state);
  const document = editing.document as unknown as QuiltDocument;
  const name = document.title || nameless;
  const naming = useGesture();

  useEffect(() => planner.ask(editing.document), [planner, editing.document]);
  useEffect(() => {
    const page = globalThis.document;
    page.title = `${name} · Seamstead`;
    return () => {
      page.title = 'Seamstead';
    };
  }, [name]);
  useEffect(() => {
    keepingIs(keeping.state === 'kept' || keeping.state === 'keeping');
    return () => keepingIs(true);
  }, [keepingIs, keeping.state]);
  const seen = useRef(takenIn);
  useEffect(() => {
    if (takenIn > seen.current) say('Another tab changed this quilt; it is shown here too.');
    seen.current = takenIn;
  }, [takenIn, say]);

  const { unit, ruler } = document;
  const words = useMemo(
    () => lengthWordsFor(ruler === undefined ? { unit } : { unit, ruler }, liked.unit),
    [unit, ruler, liked.unit],
  );
  const edit = useCallback(
    (what: string, change: (draft: QuiltDocument) => void, gesture?: string) =>
      desk.edit({
        what,
        change: (draft) => change(draft as unknown as QuiltDocument),
        ...(gesture === undefined ? {} : { gesture }),
      }),
    [desk],
  );
  const problems: readonly WorkroomProblem[] = plan.reply?.ok === false ? plan.reply.problems : noProblems;
  const copyOut = useCallback(
    (copy: JsonObject) => {
      // where it cannot be kept, the line above says so of this quilt too
      void beginQuilt(store, copy).then(
        (made) => go(quiltAddress(made, 'set')),
        () => say('The copy could not be kept'),
      );
    },
    [store, say],
  );
  const keepPoint = useKeepPoint(desk, points);
  useEffect(() => {
    if (isAlone && keepPoint.told !== null) say(keepPoint.told);
  }, [isAlone, keepPoint.told, say]);
  const quilt = useMemo(
    () => ({
      id: desk.id,
      document,
      editing,
      edit,
      answer: plan.lastGood,
      problems,
      words,
      points,
      keepPoint: keepPoint.keep,
      copyOut,
    }),
    [desk.id, document, editing, edit, plan.lastGood, problems, words, points, keepPoint.keep, copyOut],
  );

  // at Draft what is wrong with a block is told beside it, and lit in its drawing
  const loud = stop === 'draft' ? problems.filter(({ where }) => blockAt(where, document) === undefined) : problems;
  const quiet = useMemo(
    () => (stop === 'draft' ? [...new Set(problems.flatMap(({ where }) => blockAt(where, document) ?? []))] : []),
    [stop, problems, document],
  );
  const first = problems[0]?.what;
  useEffect(() => {
    if (first !== undefined) say(first);
  }, [first, say]);

  const undoing = editing.steps[editing.done - 1]?.what;
  const redoing = editing.steps[editing.done]?.what;
  const undo = useCallback(() => {
    if (undoing !== undefined) say(`Undone: ${undoing}`);
    desk.undo();
  }, [desk, undoing, say]);
  const redo = useCallback(() => {
    if (redoing !== undefined) say(`Done again: ${redoing}`);
    desk.redo();
  }, [desk, redoing, say]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        {
          id: 'undo',
          part: 'Edit',
          words: undoing === undefined ? 'Undo' : `Undo: ${undoing}`,
          keys: ['Mod+Z'],
          isOff: !canUndo(editing),
          run: undo,
        },
        {
          id: 'redo',
          part: 'Edit',
          words: redoing === undefined ? 'Redo' : `Redo: ${redoing}`,
          keys: ['Mod+Shift+Z', 'Mod+Y'],
          isOff: !canRedo(editing),
          run: redo,
        },
        ...stops.map(
          (to, index): Command => ({
            id: `go ${to}`,
            part: 'Go',
            words: `To ${stopWords[to]}`,
            ...(index < jobStops.length ? { keys: [String(index + 1)] } : {}),
            run: () => go(quiltAddress(desk.id, to)),
          }),
        ),
        { id: 'go home', part: 'Go', words: 'To all quilts', keys: ['H'], run: () => go('#/') },
        {
          id: 'save file',
          part: 'Quilt',
          words: 'Save to a file',
          keys: ['Mod+S'],
          run: () => {
            const { name, content } = documentFile(desk.state().editing.document);
            saveFile(name, content);
          },
        },
        {
          id: 'copy quilt',
          part: 'Quilt',
          words: 'Make a copy of the quilt',
          run: () => {
            const { document: own } = desk.state().editing;
            copyOut({ ...own, title: `${titleOf(own) || nameless}, a copy` });
          },
        },
        // there the same keys print
        ...(stop === 'print' ? [] : [printing(desk.id)]),
      ],
      [desk, stop, editing, undoing, redoing, undo, redo, copyOut],
    ),
  );

  return (
    <QuiltProvider value={quilt}>
      <div className={isAlone ? 'quilt-frame is-alone' : 'quilt-frame'}>
        {!isAlone && (
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
              onChange={(event) => {
                const { value } = event.target;
                edit('Name the quilt', (draft) => void Object.assign(draft, { title: value }), naming.named('title'));
              }}
            />
            <span className={`keeping is-${keeping.state}`} role="status">
              {keepPoint.told ?? keepingWords(keeping, store.lasts)}
            </span>
            <div className="head-keys">
              <button type="button" onClick={undo} disabled={!canUndo(editing)} title={undoing}>
                Undo
              </button>
              <button type="button" onClick={redo} disabled={!canRedo(editing)} title={redoing}>
                Redo
              </button>
              <MoreMenu />
              {stop !== 'print' && (
                <button type="button" className="main-key print-key" onClick={printing(desk.id).run}>
                  Print the pattern
                </button>
              )}
            </div>
          </header>
        )}
        {!isAlone && (
          <JobLine
            id={desk.id}
            here={stop}
            figures={plan.lastGood?.figures ?? null}
            words={words}
            isBehind={plan.working === 'first' || problems.length > 0}
          />
        )}
        <main className="view" aria-label={stopWords[stop]}>
          <h1 className="unseen">
            {name}: {stopWords[stop]}
          </h1>
          {keeping.state === 'parted' && <Parted desk={desk} />}
          {loud.length > 0 && (
            // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must be able to scroll it
            <section className="notice" aria-label="Problems" tabIndex={0}>
              <h2>This cannot be sewn as it stands</h2>
              <Problems
                problems={loud}
                more={plan.reply?.ok === false ? plan.reply.more : 0}
                document={document}
                from={{ id: desk.id, stop }}
              />
            </section>
          )}
          <ClothPhotos cloths={document.fabrics} unit={document.unit}>
            {children}
          </ClothPhotos>
          {!isAlone && (
            <p className="search-line" role="status" aria-busy={plan.working !== null}>
              {plan.working === 'best' ? (
                <>
                  Looking for layouts that take less cloth …{' '}
                  <button type="button" className="word-key" onClick={planner.stopSearch}>
                    These will do
                  </button>
                </>
              ) : null}
              {quiet.length > 0 && <StillToMend id={desk.id} blocks={quiet} />}
            </p>
          )}
        </main>
      </div>
    </QuiltProvider>
  );
};

const printing = (id: string): Command => ({
  id: 'print',
  part: 'Quilt',
  words: 'Print the pattern',
  keys: ['Mod+P'],
  run: () => go(quiltAddress(id, 'print')),
});

/** The block in which a problem lies, where it lies in one. */
const blockAt = (where: string, document: QuiltDocument): QuiltDocument['blocks'][number] | undefined =>
  document.blocks[Number(/^\/blocks\/(\d+)/.exec(where)?.[1] ?? Number.NaN)];

const StillToMend = ({
  id,
  blocks,
}: {
  readonly id: string;
  readonly blocks: readonly QuiltDocument['blocks'][number][];
}) => (
  <>
    <span className="problem-mark" aria-hidden="true">
      ◆
    </span>
    Still to mend before the quilt can be sewn:{' '}
    {blocks.map((block) => (
      <a key={block.id} href={quiltAddress(id, 'draft', block.id)}>
        {block.title || block.id}
      </a>
    ))}
  </>
);

const noProblems: readonly WorkroomProblem[] = [];
