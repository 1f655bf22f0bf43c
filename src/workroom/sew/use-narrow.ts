// Whether the page is as narrow as a phone.
import { useSyncExternalStore } from 'react';

const width = '(max-width: 700px)';

export const useNarrow = (): boolean => useSyncExternalStore(onTurn, () => matchMedia(width).matches);

const onTurn = (see: () => void): (() => void) => {
  const narrow = matchMedia(width);
  narrow.addEventListener('change', see);
  return () => narrow.removeEventListener('change', see);
};
