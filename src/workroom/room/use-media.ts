// What the page finds of its screen and its maker's system: how wide it is, whether it is dark.
import { useMemo, useSyncExternalStore } from 'react';

/** @param query of a style sheet: "(max-width: 700px)" */
export const useMedia = (query: string): boolean => {
  const media = useMemo(() => {
    const list = matchMedia(query);
    return {
      matches: (): boolean => list.matches,
      subscribe: (see: () => void): (() => void) => {
        list.addEventListener('change', see);
        return () => list.removeEventListener('change', see);
      },
    };
  }, [query]);
  return useSyncExternalStore(media.subscribe, media.matches);
};
