// One print as it is wished for now: how many pages, how long it took, or why there is none. The newest wish is asked for, one that it has
// overtaken is given up; until there is an answer the last pages stand.
import { useCallback, useEffect, useRef, useState } from 'react';
import type { PagesTold } from '#wire';
import { askPages, type Not, type Order } from './shop.ts';

/** Pages that are there to be seen. */
export interface Print {
  readonly order: Order;
  readonly told: PagesTold;
  readonly tookMs: number;
}

export interface Printing {
  readonly print: Print | null;
  /** Since when it has been waited for; null where nothing is. */
  readonly waitingSinceMs: number | null;
  readonly trouble: Not | null;
  readonly isStopped: boolean;
  readonly again: () => void;
  readonly stop: () => void;
}

/** While one types a length or ticks several chapters nothing is asked. */
const restMs = 300;

/** @param order null: nothing can be printed now */
export const usePrint = (order: Order | null): Printing => {
  const [print, setPrint] = useState<Print | null>(null);
  const [waitingSinceMs, setWaiting] = useState<number | null>(null);
  const [trouble, setTrouble] = useState<Not | null>(null);
  const [isStopped, setStopped] = useState(false);
  const [attempt, setAttempt] = useState(0);
  const stopping = useRef<AbortController | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another attempt asks for the same again
  useEffect(() => {
    setTrouble(null);
    setStopped(false);
    setWaiting(null);
    if (order === null) return;
    const begunMs = performance.now();
    setWaiting(begunMs);
    const giveUp = new AbortController();
    stopping.current = giveUp;
    const rest = setTimeout(() => {
      askPages(order, giveUp.signal).then(
        (told) => {
          if (giveUp.signal.aborted) return;
          setWaiting(null);
          if (told.had === 'yes') setPrint({ order, told: told.value, tookMs: performance.now() - begunMs });
          else setTrouble(told);
        },
        () => undefined, // it was given up
      );
    }, restMs);
    return () => {
      clearTimeout(rest);
      giveUp.abort();
    };
  }, [order, attempt]);
  return {
    print,
    waitingSinceMs,
    trouble,
    isStopped,
    again: useCallback(() => setAttempt((before) => before + 1), []),
    stop: useCallback(() => {
      stopping.current?.abort();
      setWaiting(null);
      setStopped(true);
    }, []),
  };
};
