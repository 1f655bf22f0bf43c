// Which chapters the pattern has, along the job line; the sheets that it has only when they are asked for are marked.
import type { Chapter } from '#paper/pages';
import { chapterTitles } from '#paper/words';
import { chaptersByStop, withChapter } from './wishes.ts';

export interface ChapterChoiceOf {
  /** Null: the usual ones. */
  readonly chosen: readonly Chapter[] | null;
  /** Of this quilt. */
  readonly usual: readonly Chapter[];
  readonly onChoose: (chapters: readonly Chapter[] | null) => void;
}

export const ChapterChoice = ({ chosen, usual, onChoose }: ChapterChoiceOf) => {
  const now = chosen ?? usual;
  return (
    <section aria-labelledby="print-chapters">
      <div className="print-head">
        <h2 id="print-chapters">Chapters</h2>
        <button type="button" className="word-key" disabled={chosen === null} onClick={() => onChoose(null)}>
          The usual ones
        </button>
      </div>
      {chaptersByStop.map(({ stop, chapters }) => (
        <fieldset key={stop} className="print-stop">
          <legend>{stop}</legend>
          {chapters.map((chapter) => (
            <label key={chapter} className="check">
              <input
                type="checkbox"
                checked={now.includes(chapter)}
                disabled={now.length === 1 && now.includes(chapter)}
                onChange={(event) => onChoose(withChapter(chosen, chapter, event.target.checked ? 'in' : 'out', usual))}
              />
              <span>
                {chapterTitles[chapter]}
                {usual.includes(chapter) && <span className="quiet"> · usual</span>}
              </span>
            </label>
          ))}
        </fieldset>
      ))}
    </section>
  );
};
