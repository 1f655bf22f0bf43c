// Minutes in words, and whose they are: a table of our own estimate stands behind them, or what the quilt has in its place.
import { usualMinutes } from '#craft/minutes';
import { inWords } from './in-words.ts';
import { counted } from './named.ts';

/** "45 minutes", "9 hours"; nothing is done in no time. */
export const longTimeText = (minutes: number): string =>
  minutes < 90 ? counted(Math.max(1, Math.round(minutes)), 'minute') : `${Math.round(minutes / 60)} hours`;

/** "50 minutes to cut, 8 hours to sew and 5 hours to finish"; what is not done is left out. */
export const timeParts = (time: {
  readonly cutting: number;
  readonly sewing: number;
  readonly finishing: number;
}): string =>
  inWords(
    (
      [
        [time.cutting, 'cut'],
        [time.sewing, 'sew'],
        [time.finishing, 'finish'],
      ] as const
    ).flatMap(([minutes, what]) => (minutes > 0 ? [`${longTimeText(minutes)} to ${what}`] : [])),
  );

/** "our own estimate"; where the quilt has a table, that, and what is left of ours. */
export const estimateText = ({ minutes }: { readonly minutes?: object | undefined }): string => {
  const own = Object.keys(minutes ?? {}).length;
  if (own === 0) return 'our own estimate';
  return own === Object.keys(usualMinutes).length
    ? 'by the minutes of this quilt'
    : 'by the minutes of this quilt, the rest our own estimate';
};
