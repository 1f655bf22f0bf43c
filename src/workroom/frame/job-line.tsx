// The job line: eight stops on a running stitch, each with its figure.
import type { JobFigures } from '#workroom/compute';
import { buyWords, countWords, type LengthWords, quiltAddress, type Stop, seamWords, timeWords } from '#workroom/room';

export interface JobLineOf {
  readonly id: string;
  readonly here: Stop;
  /** Null before the first plan. */
  readonly figures: JobFigures | null;
  readonly words: LengthWords;
  /** The figures are of an earlier state: an answer is awaited, or a problem stands in the way. */
  readonly isBehind: boolean;
}

interface JobStop {
  readonly name: string;
  readonly to: Stop;
  readonly figure: (figures: JobFigures, words: LengthWords) => string;
}

const jobStops: readonly JobStop[] = [
  { name: 'Draft', to: 'draft', figure: ({ blocks }) => countWords(blocks, 'block', 'blocks') },
  { name: 'Set', to: 'set', figure: ({ top }, words) => words.nearSize(top) },
  {
    name: 'Colour',
    to: 'colour',
    figure: ({ cloths, values }) =>
      `${countWords(cloths, 'cloth', 'cloths')} · ${values === 'apart' ? 'values apart' : 'values near'}`,
  },
  {
    name: 'Cut',
    to: 'cut',
    figure: ({ buy, leftOver }) => `${buyWords(buy)} · ${Math.round(leftOver * 100)}\u00a0%\u00a0left`,
  },
  {
    name: 'Sew',
    to: 'sew',
    figure: ({ seams, sewing }) => `${seamWords(seams)}${seams === 0 ? '' : ` · ${timeWords(sewing)}`}`,
  },
  { name: 'Finish', to: 'finish', figure: ({ binding, backing }, words) => finishWords(binding, backing, words) },
];

/** Steps of the job that have no view yet, and no figure. */
const laterStops = ['Teach', 'Kit'] as const;

const finishWords = (binding: number | null, backing: readonly [number, number] | null, words: LengthWords): string => {
  if (backing !== null) return `${words.nearSize(backing)} back`;
  return binding === null ? 'no backing yet' : `${words.near(binding)} binding`;
};

export const JobLine = ({ id, here, figures, words, isBehind }: JobLineOf) => (
  <nav className="job" aria-label="Job">
    <ol className={isBehind ? 'job-stops is-behind' : 'job-stops'}>
      {jobStops.map(({ name, to, figure }) => {
        const inner = (
          <>
            <span className="job-name">{name}</span>
            <span className="job-figure">{figures === null ? '…' : figure(figures, words)}</span>
          </>
        );
        return (
          <li key={name} className={to === here ? 'is-here' : undefined}>
            <a className="job-stop" href={quiltAddress(id, to)} aria-current={to === here ? 'step' : undefined}>
              {inner}
            </a>
          </li>
        );
      })}
      {laterStops.map((name) => (
        <li key={name} className="is-later">
          <div className="job-stop">
            <span className="job-name">{name}</span>
            <span className="job-figure">comes later</span>
          </div>
        </li>
      ))}
    </ol>
  </nav>
);
