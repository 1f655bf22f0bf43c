// How long hands take for one thing, as a shop has measured it: written in minutes or seconds, kept in the quilt, ours where nothing is
// written.
import type { QuiltDocument } from '#craft/design';
import { limits } from '#craft/limits';
import type { MinutesTable } from '#craft/minutes';

export type MinutesKey = keyof MinutesTable;

/** "0.4", "0,4", "24 s"; null: ours; undefined: it cannot be read. */
export const minutesTaken = (written: string): number | null | undefined => {
  const text = written.trim();
  if (text === '') return null;
  const [, figure, seconds] = /^(\d{1,4}(?:[.,]\d{1,3})?)\s*(?:(s|sec)|m|min)?$/i.exec(text) ?? [];
  if (figure === undefined) return undefined;
  const minutes = Number(figure.replace(',', '.')) / (seconds === undefined ? 1 : 60);
  return minutes <= limits.minutes ? Math.round(minutes * 1e4) / 1e4 : undefined;
};

export const minutesShown = (minutes: number | undefined): string => (minutes === undefined ? '' : String(minutes));

/** Null: our own estimate. */
export const takeMinutes = (
  draft: Pick<QuiltDocument, 'minutes'>,
  of: { readonly key: MinutesKey; readonly minutes: number | null },
): void => {
  if (of.minutes !== null) {
    draft.minutes = { ...draft.minutes, [of.key]: of.minutes };
    return;
  }
  if (draft.minutes === undefined) return;
  delete draft.minutes[of.key];
  if (Object.keys(draft.minutes).length === 0) delete draft.minutes;
};

export const resetMinutes = (draft: Pick<QuiltDocument, 'minutes'>): void => {
  delete draft.minutes;
};
