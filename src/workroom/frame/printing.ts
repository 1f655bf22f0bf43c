// The printed pattern, from the shop's server.

import { isRefusal, type PrintPaper, paperKey, patternPath, type Refusal } from '#wire';
import type { JsonObject } from '#workroom/editing';

export type Printed =
  | { readonly outcome: 'printed'; readonly pdf: Blob }
  | { readonly outcome: 'refused'; readonly refusal: Refusal };

const unreachable: Refusal = {
  problems: [
    {
      where: 'printing',
      what: 'The printer of patterns did not answer.',
      mend: 'See whether the program that opened the workroom still runs, and print again.',
    },
  ],
  more: 0,
};

/** Rejects only where it was cancelled. */
export const printPattern = async (
  document: JsonObject,
  of: { readonly paper: PrintPaper; readonly signal: AbortSignal },
): Promise<Printed> => {
  try {
    const answer = await fetch(`${patternPath}?${paperKey}=${of.paper}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(document),
      signal: of.signal,
    });
    if (answer.ok) return { outcome: 'printed', pdf: await answer.blob() };
    const told: unknown = await answer.json();
    return { outcome: 'refused', refusal: isRefusal(told) ? told : unreachable };
  } catch (error) {
    if (of.signal.aborted) throw error;
    return { outcome: 'refused', refusal: unreachable };
  }
};
