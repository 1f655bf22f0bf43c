// The whole page: which view is at this address, and what stands whatever the view.
import { lazy, type ReactNode, Suspense, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { ColourView } from '#workroom/colour';
import { type Command, CommandsProvider, commandBook, useCommands, useShortcuts } from '#workroom/commands';
import type { Planner } from '#workroom/compute';
import { DraftView } from '#workroom/draft';
import {
  goInPlace,
  quiltAddress,
  type Room,
  RoomProvider,
  type Stop,
  useAddress,
  usePreferences,
  useRoom,
  type Within,
} from '#workroom/room';
import { SetView } from '#workroom/set';
import { demoIn } from './beginning.ts';
import { FindCommand, KeySheet } from './finding.tsx';
import { Home } from './home.tsx';
import { Likings } from './likings.tsx';
import { OpeningProvider } from './opening.tsx';
import { QuiltFrame } from './quilt-frame.tsx';
import { useDesk } from './use-desk.ts';

export interface AppOf {
  readonly store: Room['store'];
  readonly planner: Planner;
  readonly preferences: Room['preferences'];
  readonly shelf: Room['shelf'];
}

export const App = ({ store, planner, preferences, shelf }: AppOf) => {
  const [said, say] = useState('');
  const book = useMemo(commandBook, []);
  const kept = useRef(true);
  const room = useMemo(
    () => ({
      store,
      planner,
      preferences,
      shelf,
      say,
      isKept: () => kept.current,
      keepingIs: (is: boolean) => {
        kept.current = is;
      },
    }),
    [store, planner, preferences, shelf],
  );
  return (
    <RoomProvider value={room}>
      <CommandsProvider value={book}>
        <Standing>
          <OpeningProvider>
            <Views />
          </OpeningProvider>
        </Standing>
        <p className="unseen" role="status" aria-live="polite">
          {said}
        </p>
      </CommandsProvider>
    </RoomProvider>
  );
};

type Laid = 'find' | 'keys' | 'likings' | null;

/** Commands and sheets that every view has. */
const Standing = ({ children }: { readonly children: ReactNode }) => {
  const { preferences } = useRoom();
  const { shortcuts } = usePreferences(preferences);
  const [laid, setLaid] = useState<Laid>(null);
  const putAway = useCallback(() => setLaid(null), []);
  useShortcuts(shortcuts);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'find', part: 'Help', words: 'Find something to do', keys: ['Mod+K'], run: () => setLaid('find') },
        { id: 'keys', part: 'Help', words: 'Keys', keys: ['?'], run: () => setLaid('keys') },
        { id: 'likings', part: 'Help', words: 'How you like it', run: () => setLaid('likings') },
      ],
      [],
    ),
  );
  return (
    <>
      {children}
      {laid === 'find' && <FindCommand onClose={putAway} />}
      {laid === 'keys' && (
        <KeySheet shortcuts={shortcuts} onSwitch={(to) => preferences.prefer({ shortcuts: to })} onClose={putAway} />
      )}
      {laid === 'likings' && <Likings onClose={putAway} />}
    </>
  );
};

const Views = () => {
  const address = useAddress();
  switch (address.at) {
    case 'home':
      return <Home />;
    case 'quilt':
      return <OpenQuilt key={address.id} id={address.id} stop={address.stop} within={address.within} />;
    case 'demo':
      return <OpenDemo key={address.file} file={address.file} />;
    case 'nowhere':
      return <Lost words="There is nothing at this address." />;
  }
};

const OpenQuilt = ({ id, stop, within }: { readonly id: string; readonly stop: Stop; readonly within: Within }) => {
  const opened = useDesk(id);
  switch (opened.state) {
    case 'opening':
      return <Lost words="Opening the quilt …" />;
    case 'missing':
      return <Lost words="This browser has no such quilt. It may have been removed, or lie in another browser." />;
    case 'failed':
      return <Lost words="The browser did not give the quilt. Close other tabs of it, and load this page again." />;
    case 'open':
      return (
        <QuiltFrame
          desk={opened.desk}
          points={opened.points}
          stop={stop}
          isAlone={stop === 'sew' && within.includes('large')}
        >
          <Suspense fallback={<p className="empty">Opening …</p>}>
            <StopView stop={stop} within={within} />
          </Suspense>
        </QuiltFrame>
      );
  }
};

const OpenDemo = ({ file }: { readonly file: string }) => {
  const { store } = useRoom();
  const [words, setWords] = useState('Opening the demo …');
  useEffect(() => {
    demoIn(store, file).then(
      (id) => {
        if (id === null) setWords('There is no such demo.');
        else goInPlace(quiltAddress(id, 'set'));
      },
      () => setWords('The demo did not come. Is the workroom still open where it was started?'),
    );
  }, [store, file]);
  return <Lost words={words} />;
};

// what is not seen at first comes when it is gone to
const CutView = lazy(async () => ({ default: (await import('#workroom/cut')).CutView }));
const SewView = lazy(async () => ({ default: (await import('#workroom/sew')).SewView }));
const FinishView = lazy(async () => ({ default: (await import('#workroom/finish')).FinishView }));
const PrintView = lazy(async () => ({ default: (await import('#workroom/print')).PrintView }));
const CompareView = lazy(async () => ({ default: (await import('#workroom/compare')).CompareView }));

const StopView = ({ stop, within }: { readonly stop: Stop; readonly within: Within }) => {
  switch (stop) {
    case 'draft':
      return <DraftView block={within[0] ?? null} />;
    case 'set':
      return <SetView />;
    case 'colour':
      return <ColourView />;
    case 'cut':
      return <CutView within={within} />;
    case 'sew':
      return <SewView within={within} />;
    case 'finish':
      return <FinishView within={within} />;
    case 'print':
      return <PrintView within={within} />;
    case 'compare':
      return <CompareView within={within} />;
  }
};

const Lost = ({ words }: { readonly words: string }) => (
  <main className="lost">
    <h1 className="brand">Seamstead</h1>
    <p role="status">{words}</p>
    <a href="#/">To all quilts</a>
  </main>
);
