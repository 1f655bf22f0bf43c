// All quilts of this browser, the last one worked at first; and what a new one begins from.
import { useCallback, useEffect, useMemo, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { type Scene, SmallPicture, sceneOfQuilt } from '#workroom/drawing';
import type { JsonObject } from '#workroom/editing';
import {
  clockWords,
  forgetBeside,
  go,
  lengthWordsFor,
  Problems,
  quiltAddress,
  Sheet,
  type Stop,
  useRoom,
} from '#workroom/room';
import type { QuiltLine } from '#workroom/store';
import { beginQuilt } from './beginning.ts';
import { blankQuilt, demoQuilts, demoText } from './beginnings.ts';
import { HomeBlocks } from './home-blocks.tsx';
import { MoreMenu } from './more-menu.tsx';
import { useOpening } from './opening.tsx';
import { ToMend } from './to-mend.tsx';

export const Home = () => {
  const { store, say } = useRoom();
  const [quilts, setQuilts] = useState<readonly QuiltLine[] | null>(null);
  const opening = useOpening();
  /** A demo that did not come. */
  const [missing, setMissing] = useState<string | null>(null);
  const [removing, setRemoving] = useState<QuiltLine | null>(null);

  const look = useCallback(() => {
    store.list().then(setQuilts, () => setQuilts([]));
  }, [store]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was opened from files is in the list too
  useEffect(() => {
    look();
    return store.watch(look);
  }, [store, look, opening.count]);

  const begin = useCallback(
    async (document: JsonObject, stop: Stop = 'set') => go(quiltAddress(await beginQuilt(store, document), stop)),
    [store],
  );
  const fromDemo = useCallback(
    async (file: string) => {
      const document = await demoText(file).then(
        (text) => JSON.parse(text) as JsonObject,
        () => null,
      );
      if (document === null) setMissing(file);
      else await begin(document);
    },
    [begin],
  );

  useCommands(
    useMemo(
      (): readonly Command[] => [
        ...(quilts ?? []).map(
          ({ id, title }): Command => ({
            id: `open ${id}`,
            part: 'Quilt',
            words: `Open ${title || 'the quilt without a name'}`,
            run: () => go(quiltAddress(id, 'set')),
          }),
        ),
        {
          id: 'begin inches',
          part: 'Begin',
          words: 'A new quilt in inches',
          keys: ['N'],
          run: () => void begin(blankQuilt('in'), 'draft'),
        },
        {
          id: 'begin centimetres',
          part: 'Begin',
          words: 'A new quilt in centimetres',
          run: () => void begin(blankQuilt('cm'), 'draft'),
        },
        ...demoQuilts.map(
          ({ file, title }): Command => ({
            id: `begin ${file}`,
            part: 'Begin',
            words: `From the demo ${title}`,
            run: () => void fromDemo(file),
          }),
        ),
      ],
      [begin, fromDemo, quilts],
    ),
  );

  return (
    <div className="home">
      <header className="head">
        <span className="brand">Seamstead</span>
        <div className="head-keys">
          <MoreMenu />
        </div>
      </header>
      <main className="home-main">
        <h1>Your quilts</h1>
        {quilts === null ? (
          <p role="status">Opening the cupboard …</p>
        ) : quilts.length === 0 ? (
          <p className="empty">
            None yet in this browser. Begin with a demo below: each is a whole quilt, and yours to change.
          </p>
        ) : (
          <ul className="quilt-list">
            {quilts.map((line) => (
              <li key={line.id}>
                <a href={quiltAddress(line.id, 'set')}>
                  <QuiltThumb id={line.id} revision={line.revision} />
                  <span className="quilt-name">{line.title || 'A quilt without a name'}</span>
                  <span className="quiet">{clockWords(line.changedMs, Date.now())}</span>
                </a>
                <button
                  type="button"
                  className="word-key"
                  aria-label={`Remove ${line.title || 'the quilt without a name'}`}
                  onClick={() => setRemoving(line)}
                >
                  Remove
                </button>
              </li>
            ))}
          </ul>
        )}
        <h2>{quilts?.length === 0 ? 'Begin a quilt' : 'Begin another'}</h2>
        <div className="row">
          <button type="button" onClick={() => void begin(blankQuilt('in'), 'draft')}>
            Blank, in inches
          </button>
          <button type="button" onClick={() => void begin(blankQuilt('cm'), 'draft')}>
            Blank, in centimetres
          </button>
          <button type="button" onClick={opening.pick}>
            From a file
          </button>
        </div>
        {quilts !== null && <HomeBlocks quilts={quilts} onBegin={(document) => void begin(document)} />}
        <h2>Begin with a demo</h2>
        <ul className="quilt-list">
          {demoQuilts.map(({ file, title, words }) => (
            <li key={file}>
              <button type="button" className="quilt-key" onClick={() => void fromDemo(file)}>
                <DemoThumb file={file} />
                <span className="quilt-name">{title}</span>
                <span className="quiet">{words}</span>
              </button>
            </li>
          ))}
        </ul>
      </main>
      {missing !== null && (
        <Sheet title={`${missing} cannot be opened`} onClose={() => setMissing(null)}>
          <Problems
            problems={[
              {
                where: missing,
                what: 'The demo did not come.',
                mend: 'See whether the program that opened the workroom still runs, and try again.',
              },
            ]}
          />
        </Sheet>
      )}
      {removing !== null && (
        <Sheet title={`Remove ${removing.title || 'this quilt'}?`} onClose={() => setRemoving(null)}>
          <p>It is gone from this browser for good, its restore points with it. A file of it that you saved stays.</p>
          <div className="row">
            <button
              type="button"
              className="main-key"
              onClick={() => {
                void store.remove(removing.id).then(() => {
                  forgetBeside(removing.id);
                  say(`${removing.title || 'The quilt'} is removed.`);
                  setRemoving(null);
                  look();
                });
              }}
            >
              Remove it
            </button>
            <button type="button" onClick={() => setRemoving(null)}>
              Keep it
            </button>
          </div>
        </Sheet>
      )}
    </div>
  );
};

const thumbPx = 132;

const QuiltThumb = ({ id, revision }: { readonly id: string; readonly revision: number }) => {
  const { store } = useRoom();
  // a later revision is another picture
  const read = useCallback(
    async () => (revision > 0 ? ((await store.read(id))?.editing.document ?? null) : null),
    [store, id, revision],
  );
  return <Thumb read={read} />;
};

const DemoThumb = ({ file }: { readonly file: string }) => {
  const read = useCallback(async () => JSON.parse(await demoText(file)) as JsonObject, [file]);
  return <Thumb read={read} />;
};

const Thumb = ({ read }: { readonly read: () => Promise<JsonObject | null> }) => {
  const { planner } = useRoom();
  const [scene, setScene] = useState<Scene | 'faulty' | null>(null);
  useEffect(() => {
    let isLeft = false;
    const draw = async () => {
      const document = await read();
      const reply = document === null ? null : await planner.picture(document);
      if (isLeft || reply === null) return;
      if (!reply.ok) setScene('faulty');
      else setScene(sceneOfQuilt(reply.value.picture, lengthWordsFor({ unit: reply.value.unit }, 'written').nearSize));
    };
    // one that does not come has no picture and still has a name
    draw().catch(() => undefined);
    return () => {
      isLeft = true;
    };
  }, [planner, read]);
  return (
    <span className="thumb">
      {scene === 'faulty' ? <ToMend /> : scene !== null && <SmallPicture scene={scene} sidePx={thumbPx} alt="" />}
    </span>
  );
};
