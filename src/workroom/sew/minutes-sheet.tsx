// How long things take: our own estimate, and what a shop has measured in its place. Every figure is one edit of the quilt.
import { usualMinutes } from '#craft/minutes';
import { timeParts } from '#paper/words';
import { WrittenField } from '#workroom/fields';
import { Sheet, useQuilt } from '#workroom/room';
import { minutesShown, minutesTaken, resetMinutes, takeMinutes } from './minutes-edits.ts';
import { minuteParts } from './minutes-words.ts';

export const MinutesSheet = ({ onClose }: { readonly onClose: () => void }) => {
  const { document, answer, edit } = useQuilt();
  const own = document.minutes ?? {};
  const written = Object.keys(own).length;
  return (
    <Sheet title="How long things take" isWide onClose={onClose}>
      <p>
        In minutes, or in seconds as “24 s”. Where nothing is written our own estimate counts: it is not measured, so
        put in what your shop takes. The figures go with this quilt.
      </p>
      {answer !== null && (
        <p role="status">
          <strong>This quilt takes about {timeParts(answer.figures)}.</strong>
        </p>
      )}
      {minuteParts.map(({ title, lines }) => (
        <section key={title} aria-label={title}>
          <h3>{title}</h3>
          <div className="minutes-list">
            {lines.map(([key, words]) => (
              <WrittenField
                key={key}
                label={words}
                unit={`ours ${usualMinutes[key]}`}
                own={minutesShown(own[key])}
                wanted="Write minutes from 0 to 60 like 0.4, or seconds like 24 s; empty for ours."
                onTake={(text) => {
                  const minutes = minutesTaken(text);
                  if (minutes !== undefined && minutes !== (own[key] ?? null))
                    edit(whatChanges(words, minutes), (draft) => takeMinutes(draft, { key, minutes }));
                  return minutes !== undefined;
                }}
              />
            ))}
          </div>
        </section>
      ))}
      <p>
        <button type="button" disabled={written === 0} onClick={() => edit('Back to our own minutes', resetMinutes)}>
          Back to our own estimate
        </button>
      </p>
    </Sheet>
  );
};

const whatChanges = (words: string, minutes: number | null): string =>
  minutes === null ? `Take our own minutes: ${words.toLowerCase()}` : `Change the minutes: ${words.toLowerCase()}`;
