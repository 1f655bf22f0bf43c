// Finish: what goes round the quilt, and what lies under it, part by part: its drawing, its fields and what it takes beside it, and how it
// is made, in the words of the printed pages.
import { useEffect } from 'react';
import type { FinishTopic, WorkroomNote } from '#workroom/compute';
import { useLook, useQuilt, type Within } from '#workroom/room';
import { FinishSum } from './finish-sum.tsx';
import { headingId, Topic } from './finish-topic.tsx';
import { topics } from './part-names.ts';
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
  const isStuck = problems.length > 0;
  // what is wrong may be mended here before there was ever a plan
  const told = seen?.topics ?? (isStuck ? untold : null);
  useFinishCommands();
  useTopicInSight(topic, told !== null);
  return (
    <div className="finish">
      <div className="finish-inner">
        {seen === null && (
          <p className="empty" role="status">
            {isStuck
              ? 'Sizes, drawings and what it takes are told when what stands above is mended.'
              : 'Working it out …'}
          </p>
        )}
        {seen !== null && <FinishSum seen={seen} prices={prices} />}
        {told?.map((one) => (
          <Topic
            key={one.topic}
            topic={one.topic}
            parts={one.parts}
            notes={notesOf(one.topic, answer?.notes ?? [])}
            fields={{ figures: seen?.figures ?? null, prices }}
          />
        ))}
        {seen !== null && (
          <>
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

const untold = topics.map((topic) => ({ topic, parts: [] }));

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
