// The whole of the sewing: where to begin or go on, and every block and the top by its picture.
import { useMemo, useState } from 'react';
import { estimateText, timeParts } from '#paper/words';
import { type Command, useCommands } from '#workroom/commands';
import { SmallPicture, sceneOfBlock, sceneOfQuilt } from '#workroom/drawing';
import { countWords, quiltAddress, seamWords, timeWords, useQuilt } from '#workroom/room';
import { waysPlace } from '#workroom/ways';
import { MinutesSheet } from './minutes-sheet.tsx';
import { chainsEntry } from './sew-address.ts';
import { firstOpen, type Sewing, type StepPlace } from './use-sewing.ts';

const picturePx = 132;

export const Overview = ({ sewing }: { readonly sewing: Sewing }) => {
  const { id, answer, words, document } = useQuilt();
  const [isTiming, setTiming] = useState(false);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'how long', part: 'Sew', words: 'How long things take', run: () => setTiming(true) },
      ],
      [],
    ),
  );
  const [sewn, all] = sewing.seams;
  const open = placeOf(sewing) ?? firstOpen(sewing, sewing.entries);
  const chained = batchOf(sewing);
  const picture = answer?.picture ?? null;
  const scenes = useMemo(
    () =>
      picture === null
        ? []
        : [
            ...picture.entries.map((entry) =>
              sceneOfBlock({ picture: entry, cloths: picture.cloths, sizeWords: words.size }),
            ),
            sceneOfQuilt(picture, words.nearSize),
          ],
    [picture, words],
  );
  return (
    <div className="sew-overview">
      <div className="sew-begin">
        <p>
          {all === 0 ? 'No seams: nothing is to be sewn.' : seamWords(all)}
          {answer === null || all === 0 ? '' : `, about ${timeWords(answer.figures.sewing)}`}
          {sewn > 0 ? ` · ${sewn} sewn` : ''}
        </p>
        {all > 0 && <progress aria-label="Seams sewn" max={all} value={sewn} />}
        {chained !== null && (
          <a
            className="main-key sew-next"
            href={sewing.addressOf({ entry: chainsEntry, step: chained, sight: 'both', type: 'usual' })}
          >
            Go on: in chains, batch {chained}
          </a>
        )}
        {chained === null && open !== null && (
          <a
            className="main-key sew-next"
            href={sewing.addressOf({ entry: open.entry.key, step: open.step.number, sight: 'both', type: 'usual' })}
          >
            {sewing.last() === null ? 'Begin' : 'Go on'}: {open.entry.title}, step {open.step.number}
          </a>
        )}
        {sewing.entries.some(({ kind, steps }) => kind === 'block' && steps.length > 0) && (
          <a
            className="lone-link"
            href={sewing.addressOf({ entry: chainsEntry, step: null, sight: 'both', type: 'usual' })}
          >
            In chains: the same unit for all blocks at once
          </a>
        )}
        {all > 0 && (
          <a className="lone-link" href={quiltAddress(id, 'cut', waysPlace)}>
            Ways to make the units of this quilt
          </a>
        )}
        {answer !== null && (
          <p>
            The whole quilt takes about {timeWords(answer.figures.minutes)}: {timeParts(answer.figures)};{' '}
            {estimateText(document)}.{' '}
            <button type="button" onClick={() => setTiming(true)}>
              How long things take
            </button>
          </p>
        )}
        {isTiming && <MinutesSheet onClose={() => setTiming(false)} />}
        {all > 0 && (
          <p className="quiet">
            Large type, at each step, fills a tablet beside the machine. Where its screen goes dark, set it to stay on
            longer.
          </p>
        )}
      </div>
      <ol className="sew-cards">
        {sewing.entries.map((entry, i) => (
          <li key={entry.key}>
            <a
              className="sew-card"
              href={sewing.addressOf({ entry: entry.key, step: null, sight: 'both', type: 'usual' })}
            >
              <span className="sew-card-picture">
                {scenes[i] !== undefined && <SmallPicture scene={scenes[i]} sidePx={picturePx} alt="" />}
              </span>
              <span className="sew-entry-name">{entry.title}</span>
              <span className="quiet">{linesOf(entry).join(' · ')}</span>
              <span className="quiet">{sewing.sumOf(entry.steps) > 0 ? doneWords(sewing, entry) : ''}</span>
            </a>
          </li>
        ))}
      </ol>
    </div>
  );
};

const placeOf = ({ last, entries }: Sewing): StepPlace | null => {
  const [key, number] = last() ?? [];
  const entry = entries.find((one) => one.key === key);
  const step = entry?.steps.find((one) => one.number === number);
  return entry === undefined || step === undefined ? null : { entry, step };
};

/** The batch that was looked at last. */
const batchOf = ({ last, chains }: Sewing): number | null => {
  const [key, number] = last() ?? [];
  const batch = chains?.rounds.flatMap(({ batches }) => batches).find((one) => one.number === number);
  return key === chainsEntry ? (batch?.number ?? null) : null;
};

const linesOf = ({ kind, count, steps, seams }: Sewing['entries'][number]): readonly string[] => [
  ...(kind === 'block' ? [`${count} to make`] : []),
  ...(steps.length === 0
    ? ['no seams']
    : [
        countWords(steps.length, 'step', 'steps'),
        seamWords(seams),
        `about ${timeWords(steps.reduce((all, { minutes }) => all + minutes, 0))}`,
      ]),
];

const doneWords = (sewing: Sewing, { steps, seams }: Sewing['entries'][number]): string => {
  const done = sewing.sumOf(steps);
  return done === seams ? 'all sewn' : `${done} of ${seams} sewn`;
};
