// What each way of finishing takes, asked anew when the quilt has changed. Until it is answered the last answer stands; what was overtaken
// meanwhile is not asked at all.
import { useEffect, useMemo, useRef, useState } from 'react';
import type { FinishPrices, WayPrice } from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import { useQuilt, useRoom } from '#workroom/room';
import { waysFrom } from './finish-ways.ts';
import { moreWords, type PriceWords, takenWords } from './price-words.ts';

export interface Prices {
  /** Against how the quilt stands; empty while it is not known. */
  readonly more: (key: string) => string;
  /** Of what stands, by the way that is without it; empty while it is not known. */
  readonly taken: (key: string) => string;
}

/** Typing goes before, and the first layouts: what is asked in one go is asked once. */
const restMs = 400;

export const usePrices = (): Prices => {
  const { document, problems } = useQuilt();
  const { planner } = useRoom();
  const [prices, setPrices] = useState<FinishPrices | null>(null);
  const wanted = useRef<typeof document | null>(null);
  const isAsking = useRef(false);
  // a new name alters nothing that is cut
  const { title: _, ...cut } = document;
  const asked = useSame(cut);
  const isFaulty = problems.length > 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: `asked` is the document as far as it is cut
  useEffect(() => {
    if (isFaulty) return;
    const askAll = async () => {
      if (isAsking.current) return;
      isAsking.current = true;
      try {
        while (wanted.current !== null) {
          const next = wanted.current;
          wanted.current = null;
          const reply = await planner.finishWays(next as unknown as JsonObject, waysFrom(next));
          if (reply.ok) setPrices(reply.value);
        }
      } finally {
        isAsking.current = false;
      }
    };
    const rest = setTimeout(() => {
      wanted.current = document;
      void askAll();
    }, restMs);
    return () => clearTimeout(rest);
  }, [planner, asked, isFaulty]);
  const { fabrics } = document;
  return useMemo(() => {
    const byKey = new Map((prices?.ways ?? []).map((way) => [way.key, way]));
    const of: PriceWords = {
      nameOf: (cloth) => fabrics.find(({ id }) => id === cloth)?.name || cloth,
      currency: prices?.currency ?? '',
    };
    const said = (say: typeof moreWords) => (key: string) => {
      const way: WayPrice | undefined = byKey.get(key);
      return way === undefined ? '' : say(way, of);
    };
    return { more: said(moreWords), taken: said(takenWords) };
  }, [prices, fabrics]);
};

/** The same value while each of its parts is. */
const useSame = <T extends object>(value: T): T => {
  const last = useRef(value);
  const keys = Object.keys(value) as (keyof T)[];
  const isSame =
    keys.length === Object.keys(last.current).length && keys.every((key) => value[key] === last.current[key]);
  if (!isSame) last.current = value;
  return last.current;
};
