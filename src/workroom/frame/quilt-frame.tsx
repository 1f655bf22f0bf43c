// The frame round every view of a quilt: its name, whether it is kept, undo and print above, the job line beside it.
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useSyncExternalStore } from 'react';
import type { QuiltDocument } from '#craft/design';
import type { WorkroomProblem } from '#workroom/compute';
import { ClothPhotos } from '#workroom/drawing';
import type { JsonObject } from '#workroom/editing';
import { go, lengthWordsFor, QuiltProvider, quiltAddress, type Stop, usePreferences, useRoom } from '#workroom/room';
import type { Desk, Keeping, PointBook } from '#workroom/store';
import { beginQuilt } from './beginning.ts';
import { FrameHead } from './frame-head.tsx';
import { JobLine } from './job-line.tsx';
import { Parted } from './keeping-line.tsx';
import { LoudProblems, StillToMend, useToldProblems } from './quilt-problems.tsx';
import { nameless, stopWords } from './stop-words.ts';
import { useDeskState } from './use-desk.ts';
import { useKeepPoint } from './use-keep-point.ts';
import { useQuiltCommands } from './use-quilt-commands.ts';
import { useUndoing } from './use-undoing.ts';

export interface QuiltFrameOf {
  readonly desk: Desk;
  readonly points: PointBook;
  readonly stop: Stop;
  /** The view fills the screen: nothing stands round it. */
  readonly isAlone: boolean;
  readonly children: ReactNode;
}

export const QuiltFrame = ({ desk, points, stop, isAlone, children }: QuiltFrameOf) => {
  const { planner, say } = useRoom();
  const { editing, keeping, takenIn } = useDeskState(desk);
  const plan = useSyncExternalStore(planner.subscribe, planner.state);
  const document = editing.document as unknown as QuiltDocument;
  const name = document.title || nameless;
  useEffect(() => planner.ask(editing.document), [planner, editing.document]);
  useTitle(name);
  useKeepingTold(keeping, takenIn);

  const words = useWords(document);
  const edit = useEdit(desk);
  const copyOut = useCopyOut();
  const keepPoint = useKeepPoint(desk, points);
  useEffect(() => {
    if (isAlone && keepPoint.told !== null) say(keepPoint.told);
  }, [isAlone, keepPoint.told, say]);
  const undoing = useUndoing(desk, editing);
  useQuiltCommands({ desk, stop, copyOut });
  const problems = plan.reply?.ok === false ? plan.reply.problems : noProblems;
  const more = plan.reply?.ok === false ? plan.reply.more : 0;
  const { loud, quiet } = useToldProblems({ problems, stop, document });
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

  return (
    <QuiltProvider value={quilt}>
      <div className={isAlone ? 'quilt-frame is-alone' : 'quilt-frame'}>
        {!isAlone && <FrameHead {...{ stop, undoing, keeping }} told={keepPoint.told} />}
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
          <LoudProblems problems={loud} more={more} stop={stop} />
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
              <StillToMend blocks={quiet} />
            </p>
          )}
        </main>
      </div>
    </QuiltProvider>
  );
};

const useTitle = (name: string): void =>
  useEffect(() => {
    const page = globalThis.document;
    page.title = `${name} · Seamstead`;
    return () => {
      page.title = 'Seamstead';
    };
  }, [name]);

/** Whether it may be left is for the whole room to know; and what another tab changed is said. */
const useKeepingTold = ({ state }: Keeping, takenIn: number): void => {
  const { say, keepingIs } = useRoom();
  useEffect(() => {
    keepingIs(state === 'kept' || state === 'keeping');
    return () => keepingIs(true);
  }, [keepingIs, state]);
  const seen = useRef(takenIn);
  useEffect(() => {
    if (takenIn > seen.current) say('Another tab changed this quilt; it is shown here too.');
    seen.current = takenIn;
  }, [takenIn, say]);
};

const useWords = ({ unit, ruler }: QuiltDocument) => {
  const { preferences } = useRoom();
  const liked = usePreferences(preferences).unit;
  return useMemo(() => lengthWordsFor(ruler === undefined ? { unit } : { unit, ruler }, liked), [unit, ruler, liked]);
};

const useEdit = (desk: Desk) =>
  useCallback(
    (what: string, change: (draft: QuiltDocument) => void, gesture?: string) =>
      desk.edit({
        what,
        change: (draft) => change(draft as unknown as QuiltDocument),
        ...(gesture === undefined ? {} : { gesture }),
      }),
    [desk],
  );

const useCopyOut = () => {
  const { store, say } = useRoom();
  return useCallback(
    (copy: JsonObject) => {
      // where it cannot be kept, the line above says so of this quilt too
      void beginQuilt(store, copy).then(
        (made) => go(quiltAddress(made, 'set')),
        () => say('The copy could not be kept'),
      );
    },
    [store, say],
  );
};

const noProblems: readonly WorkroomProblem[] = [];
