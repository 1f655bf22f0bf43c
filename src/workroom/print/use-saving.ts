// Files from the printer to the maker's downloads, one at a time; and what is told while one is made, or where it was not.
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { PrintWishes } from '#wire';
import { saveFile, useRoom } from '#workroom/room';
import { askFile, type Had, type Not } from './shop.ts';

export interface Saving {
  /** @param name as the command line names the file */
  readonly save: (name: string) => void;
  /** In a window of its own, where the browser prints it. */
  readonly open: (name: string) => void;
  readonly state: SavingState;
  /** Gives up what is being made; takes away what is told. */
  readonly stop: () => void;
}

export type SavingState =
  | { readonly at: 'rest' }
  | { readonly at: 'making'; readonly name: string }
  | { readonly at: 'done'; readonly words: string }
  | { readonly at: 'trouble'; readonly name: string; readonly not: Not };

const rest: SavingState = { at: 'rest' };

/** How long one is told that it is done. */
const toldMs = 8000;

/** @param of.base what the quilt's files are called, before their own names */
export const useSaving = (of: {
  readonly text: string;
  readonly wishes: PrintWishes;
  readonly base: string;
}): Saving => {
  const { text, wishes, base } = of;
  const { say } = useRoom();
  const [state, setState] = useState<SavingState>(rest);
  const giveUp = useRef<AbortController | null>(null);
  useEffect(() => () => giveUp.current?.abort(), []);
  useEffect(() => {
    if (state.at !== 'done') return;
    const clock = setTimeout(() => setState(rest), toldMs);
    return () => clearTimeout(clock);
  }, [state]);

  const had = useCallback(
    async (name: string): Promise<Had<Blob> | null> => {
      giveUp.current?.abort();
      const mine = new AbortController();
      giveUp.current = mine;
      setState({ at: 'making', name });
      const file = await askFile({ text, name, wishes }, mine.signal).catch(() => null);
      return mine.signal.aborted ? null : file;
    },
    [text, wishes],
  );
  const end = useCallback(
    (name: string, words: string, file: Had<Blob>) => {
      if (file.had === 'no') setState({ at: 'trouble', name, not: file });
      else {
        setState({ at: 'done', words });
        say(words);
      }
    },
    [say],
  );
  const save = useCallback(
    async (name: string) => {
      const file = await had(name);
      if (file === null) return;
      const own = savedName(base, name);
      if (file.had === 'yes') saveFile(own, file.value);
      end(name, `${own} lies with your downloads.`, file);
    },
    [had, end, base],
  );
  const open = useCallback(
    async (name: string) => {
      // at once, while the browser knows that it was wished for
      const page = window.open('', '_blank');
      const file = await had(name);
      if (file === null || file.had === 'no') page?.close();
      if (file === null) return;
      if (file.had === 'yes') {
        const url = URL.createObjectURL(file.value);
        // the other window has taken it over long before
        setTimeout(() => URL.revokeObjectURL(url), 600_000);
        if (page === null) saveFile(savedName(base, name), file.value);
        else page.location.href = url;
      }
      const words =
        page === null
          ? `The browser opened no window: ${savedName(base, name)} lies with your downloads.`
          : `${savedName(base, name)} is open in another window.`;
      end(name, words, file);
    },
    [had, end, base],
  );
  const stop = useCallback(() => {
    giveUp.current?.abort();
    setState(rest);
  }, []);
  return useMemo(
    () => ({ save: (name) => void save(name), open: (name) => void open(name), state, stop }),
    [save, open, state, stop],
  );
};

/** "harvest-home.pdf", "harvest-home-cutting.csv". */
const savedName = (base: string, name: string): string => (name === 'pattern.pdf' ? `${base}.pdf` : `${base}-${name}`);
