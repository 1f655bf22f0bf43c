// Finish: what goes round the quilt, and what lies under it, part by part: its drawing, its fields and what it takes beside it, and how it
// is made, in the words of the printed pages.
import { useEffect } from 'react';
import type { FinishTopic, WorkroomNote } from '#workroom/compute';
import { useLook, useQuilt, type Within } from '#workroom/room';
import { FinishSum } from './finish-sum.tsx';
import { headingId, Topic } from './finish-topic.tsx';
import { PriceFields } from './price-fields.tsx';
import { useFinishCommands } from './use-finish-commands.ts';
import { usePrices } from './use-prices.ts';

/** The look takes in all of the finish. */
const all = {};

export const FinishView = ({ within }: { readonly within: Within }) => {
  const { answer, problems } = useQuilt();
  const seen = useLook('finish', all);
  const prices = usePrices();
  const [topic] = within;
  useFinishCommands();
  useTopicInSight(topic, seen !== null);
  return (
    <div className="finish">
      <div className="finish-inner">
        {seen === null ? (
          <p className="empty" role="status">
            {problems.length > 0 ? 'It can be told when the problem above is mended.' : 'Working it out …'}
          </p>
        ) : (
          <>
            <FinishSum seen={seen} prices={prices} />
            {seen.topics.map((one) => (
              <Topic
                key={one.topic}
                topic={one.topic}
                parts={one.parts}
                notes={notesOf(one.topic, answer?.notes ?? [])}
                fields={{ figures: seen.figures, prices }}
              />
            ))}
            <PriceFields />
            <section className="finish-minded" aria-labelledby="finish-minded">
              <h2 id="finish-minded">To mind</h2>
              {seen.cautions.map(({ heading, lines }) => (
                <div key={heading}>
                  <h3>{heading}</h3>
                  {lines.map((line) => (
                    <p key={line}>{line}</p>
                  ))}
                </div>
              ))}
            </section>
          </>
        )}
      </div>
    </div>
  );
};

/** The address of a part leads to it. */
const useTopicInSight = (topic: string | undefined, isThere: boolean): void => {
  useEffect(() => {
    if (topic === undefined || !isThere) return;
    const heading = document.getElementById(headingId(topic));
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  }, [topic, isThere]);
};

const notesOf = (topic: FinishTopic, notes: readonly WorkroomNote[]): readonly WorkroomNote[] =>
  notes.filter(({ path }) => path.startsWith(topic === 'borders' ? '/top/borders' : `/finish/${topic}`));
