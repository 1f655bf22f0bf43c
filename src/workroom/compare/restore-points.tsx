// The restore points of the quilt: renamed, gone back to, removed, and brought back.
import { useSyncExternalStore } from 'react';
import { limits } from '#craft/limits';
import { WrittenField } from '#workroom/fields';
import { clockWords, focusSoon, pointFaultWords, useQuilt, useRoom } from '#workroom/room';
import { becomeDocument, named } from './versions.ts';

export const RestorePoints = ({ onWeigh }: { readonly onWeigh: (point: string) => void }) => {
  const { points: book, keepPoint, edit, copyOut, document } = useQuilt();
  const { say } = useRoom();
  const { points, removed, fault } = useSyncExternalStore(book.subscribe, book.state);
  const goBack = async (id: string) => {
    const point = await book.read(id);
    if (point === null) return;
    edit(`Go back to ${point.name}`, (draft) => becomeDocument(draft, point.document));
    say(`The quilt is again as in ${point.name}. Undo brings back what was.`);
  };
  const copy = async (id: string) => {
    const point = await book.read(id);
    if (point !== null) copyOut(named(point.document, { quilt: document.title, version: point.name }));
  };
  return (
    <section className="points" aria-labelledby="points-head">
      <h2 id="points-head" tabIndex={-1}>
        Restore points
      </h2>
      <p className="quiet">
        A restore point is the quilt as it stands, kept by a name. Keep one before a choice, and weigh what came of it
        against it.
      </p>
      <div className="row">
        <button type="button" onClick={() => void keepPoint()}>
          Keep a restore point
        </button>
      </div>
      {fault !== null && (
        <p className="field-problem" role="alert">
          ◆ {pointFaultWords(fault)}.
        </p>
      )}
      {removed !== null && (
        <p>
          “{removed.name}” is removed.{' '}
          <button
            type="button"
            id="bring-back"
            className="word-key"
            onClick={() => void book.bringBack().then(() => focusSoon('points-head'))}
          >
            Bring it back
          </button>
        </p>
      )}
      {points !== null && points.length > 0 && (
        <ol className="point-list">
          {points.map(({ id, name, madeMs }) => (
            <li key={id}>
              <WrittenField
                label={`Kept ${clockWords(madeMs, Date.now())}`}
                unit=""
                own={name}
                wanted={`A name is wanted, of at most ${limits.titleCharacters} characters.`}
                onTake={(written) => {
                  const isName = written !== '' && written.length <= limits.titleCharacters;
                  if (isName) void book.rename(id, written).then(() => say(`It is called ${written} now`));
                  return isName;
                }}
              />
              <div className="row">
                <button type="button" aria-label={`Weigh ${name} against now`} onClick={() => onWeigh(id)}>
                  Weigh against now
                </button>
                <button type="button" aria-label={`Go back to ${name}`} onClick={() => void goBack(id)}>
                  Go back to it
                </button>
                <button
                  type="button"
                  className="word-key"
                  aria-label={`A quilt of its own: ${name}`}
                  onClick={() => void copy(id)}
                >
                  A quilt of its own
                </button>
                <button
                  type="button"
                  className="word-key"
                  aria-label={`Remove ${name}`}
                  onClick={() => {
                    say(`${name} is removed`);
                    void book.remove(id).then(() => focusSoon('bring-back'));
                  }}
                >
                  Remove
                </button>
              </div>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
};
